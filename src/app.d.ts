/** Whether the site is built as plain files; set in vite.config.ts. */
declare const __PLAIN_FILES__: boolean;
