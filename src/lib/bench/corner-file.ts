import { isRecord } from '#core/document/read-members.ts';

/** Whether a file is a corner document rather than a bench: it has an axis of its own. */
export const isCornerFile = (value: unknown): boolean =>
  isRecord(value) && 'axis' in value && 'wheel' in value;
