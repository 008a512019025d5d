/**
 * Takes out of a lesson's module the variables that mdsvex makes of its metadata: no lesson uses them, and with them
 * every page that shows the lesson would fetch its metadata a second time.
 */
export const leanMetadata = {
  name: 'lean-metadata',
  markup: ({ content, filename = '' }: { content: string; filename?: string }) =>
    filename.endsWith('.md') ? { code: withoutSpread(content) } : undefined,
};

const withoutSpread = (content: string): string =>
  content.replace(/^\s*const \{[^}]*\} = metadata;$/m, '');
