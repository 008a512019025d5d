import { isRecord } from '#core/document/read-members.ts';
import { isBenchRecord, type BenchRecord } from './bench-record';

/** What one tab tells the others about the cars of this browser. */
export type Told =
  | { readonly kind: 'kept'; readonly record: BenchRecord }
  | { readonly kind: 'removed'; readonly id: string };

/** The other tabs of this browser that have the bench open; nobody where the browser has no channels between tabs. */
export interface OtherTabs {
  readonly tell: (told: Told) => void;
  readonly close: () => void;
}

const CHANNEL = 'knucklebook-bench';

export function otherTabs(hear: (told: Told) => void): OtherTabs {
  if (typeof BroadcastChannel === 'undefined') return NOBODY;
  const channel = new BroadcastChannel(CHANNEL);
  // An older copy of the course may say something else.
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (isTold(data)) hear(data);
  };
  return {
    tell: (told) => {
      channel.postMessage(told);
    },
    close: () => {
      channel.close();
    },
  };
}

const NOBODY: OtherTabs = { tell: () => undefined, close: () => undefined };

const isTold = (value: unknown): value is Told =>
  isRecord(value) &&
  ((value['kind'] === 'kept' && isBenchRecord(value['record'])) ||
    (value['kind'] === 'removed' && typeof value['id'] === 'string'));
