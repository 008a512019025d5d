import { handOver } from '$lib/ui/hand-over';

/** Hands a text to the reader as a file. */
export const download = (name: string, text: string, type: string): void => {
  handOver(new Blob([text], { type }), name);
};

/** A title as the name of a file: `week-three`. */
export const fileName = (title: string): string =>
  title
    .toLowerCase()
    .normalize('NFKD')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '')
    .slice(0, 40) || 'sheet';
