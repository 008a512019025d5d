import type { Handle } from '@sveltejs/kit';

/** The faces that every page is set in; italics and Greek come with the pages that have some. */
const FACES = /\/(text|figures)\.[^/]+\.woff2$/;

/** Has a page ask for its faces at once: they come before the first paint or not in this visit, so that nothing shifts. */
export const handle: Handle = ({ event, resolve }) =>
  resolve(event, {
    preload: ({ type, path }) =>
      type === 'js' || type === 'css' || (type === 'font' && FACES.test(path)),
  });
