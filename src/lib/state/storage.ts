const PREFIX = 'knucklebook:';

/** The key under which the browser has a value of ours. */
export const storageKey = (key: string): string => PREFIX + key;

/** A value remembered in this browser; undefined where there is none, or storage is forbidden. */
export function remembered(key: string): unknown {
  try {
    return parsed(localStorage.getItem(storageKey(key)));
  } catch {
    return undefined;
  }
}

/** Remembers a value in this browser, or forgets it where it is undefined; says whether that could be done. */
export function remember(key: string, value: unknown): boolean {
  try {
    if (value === undefined) localStorage.removeItem(storageKey(key));
    else localStorage.setItem(storageKey(key), JSON.stringify(value));
    return true;
  } catch {
    // Storage may be full or forbidden.
    return false;
  }
}

/** What a stored text says; undefined where it is nonsense. */
export function parsed(text: string | null): unknown {
  if (text === null) return undefined;
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
