import remarkMath from 'remark-math';
import { kitImports } from './kit-imports.ts';
import { maths } from './maths.ts';
import { steps } from './steps.ts';
import { tables } from './tables.ts';

/** How lessons become components: Markdown with maths, tables, steps and the lesson kit. */
export const lessonMarkdown = {
  extensions: ['.md'],
  smartypants: false,
  remarkPlugins: [remarkMath, maths, tables, steps, kitImports],
} satisfies Record<string, unknown>;
