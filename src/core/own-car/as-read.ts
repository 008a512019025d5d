import { radians } from '../angle.ts';
import { READING_IDS, READINGS, type Readings } from './readings.ts';

/** What tape and protractor are read to: a millimetre, a tenth of a degree. */
const DIVISION = { length: 0.001, angle: radians(0.1) } as const;

/** Readings as somebody would write them down: on the divisions of the tools. Metres and radians. */
export const asRead = (readings: Readings): Readings =>
  Object.fromEntries(
    READING_IDS.map((id) => {
      const division = DIVISION[READINGS[id].kind];
      return [id, Math.round(readings[id] / division) * division];
    }),
  ) as Readings;
