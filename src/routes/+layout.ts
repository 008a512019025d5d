export const prerender = 'auto';

/** As plain files every page gets a folder of its own, so that any server finds it; our own server needs none. */
export const trailingSlash = __PLAIN_FILES__ ? 'always' : 'never';
