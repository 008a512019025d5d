import { failure, success, type Fault, type Outcome } from '../fault.ts';
import { FIRST_LOAD_INDEX, LAST_LOAD_INDEX } from './load-index.ts';
import { isSpeedSymbol, SPEED_SYMBOLS_KMH } from './speed-symbol.ts';
import type { Tyre } from './tyre.ts';

export type ServiceDescription = Pick<
  Tyre,
  'loadIndex' | 'twinLoadIndex' | 'speedSymbol' | 'fasterThanSymbol' | 'extraLoad'
>;

const SERVICE =
  /^(?<open>\()?(?:(?<single>\d+)(?:\/(?<twin>\d+))?)? ?(?<speed>[A-Z])?(?<close>\))?(?= |$)/;
const EXTRA_LOAD = /^(?:XL|RF|REINF|REINFORCED|EXTRA LOAD)\b ?/;
/** Tubeless, mud and snow: they stand on many tyres and mean nothing for the sums done here. */
const OTHER_MARKS = /^(?:TL|M[+&]S)$/;

/**
 * Reads what stands behind the size: load index, for twin tyres a second one, speed symbol, and XL or
 * its other names. Every part may be missing.
 *
 * @param text capitals, single spaces: `91V`, `104/102 R`, `(95Y)`, `94W XL`
 * @param path where the text comes from, for the faults
 */
export function parseServiceDescription(text: string, path: string): Outcome<ServiceDescription> {
  const match = SERVICE.exec(text);
  const { open, single, twin, speed, close } = match?.groups ?? {};
  const behind = text.slice(match?.[0].length ?? 0).trim();
  const extraLoad = EXTRA_LOAD.test(behind);
  const others = behind.replace(EXTRA_LOAD, '');
  const faults = [
    ...[single, twin].flatMap((index) => loadIndexFault(index, path)),
    ...speedFault(speed, path),
  ];
  if ((open === undefined) !== (close === undefined)) {
    faults.push({ path, wrong: 'has one bracket without the other', allowed: '(95Y) or 95Y' });
  }
  if (others !== '' && !OTHER_MARKS.test(others)) {
    faults.push({
      path,
      wrong: `has “${others}” behind the size`,
      allowed: 'load index, speed symbol and XL, as in 91V or 94W XL',
    });
  }
  if (faults.length > 0) return failure(...faults);
  return success({
    ...(single !== undefined && { loadIndex: Number(single) }),
    ...(twin !== undefined && { twinLoadIndex: Number(twin) }),
    ...(speed !== undefined && isSpeedSymbol(speed) && { speedSymbol: speed }),
    fasterThanSymbol: open !== undefined && speed !== undefined,
    extraLoad,
  });
}

function loadIndexFault(index: string | undefined, path: string): readonly Fault[] {
  if (index === undefined) return [];
  if (Number(index) >= FIRST_LOAD_INDEX && Number(index) <= LAST_LOAD_INDEX) return [];
  const allowed = `whole numbers from ${FIRST_LOAD_INDEX} to ${LAST_LOAD_INDEX}`;
  return [{ path, wrong: `has the load index ${index}`, allowed }];
}

function speedFault(letter: string | undefined, path: string): readonly Fault[] {
  if (letter === undefined || isSpeedSymbol(letter)) return [];
  const allowed = Object.keys(SPEED_SYMBOLS_KMH).join(', ');
  return [{ path, wrong: `has the speed symbol ${letter}`, allowed }];
}
