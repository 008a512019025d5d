import type { KnipConfig } from 'knip';
import { familiesIn, KIT } from './src/lib/lesson/markdown/kit-imports.ts';

// The entries of npm's scripts, SvelteKit, Vitest and Playwright, Knip finds by itself.
const config: KnipConfig = {
  entry: [
    'lessons/**/*.md',
    'derivations/*.md',
    'tests/exercises/freeze.ts',
    'src/cli/pages/check-pages.ts',
  ],
  project: ['src/**/*.{js,mjs,ts,svelte}', 'lessons/**/*.md', 'derivations/*.md', 'tests/**/*.ts'],
  // Read as files by npm run fonts.
  ignoreDependencies: [
    '@fontsource/stix-two-math',
    '@fontsource-variable/atkinson-hyperlegible-next',
    '@fontsource-variable/source-serif-4',
  ],
  // A type named for its readers may well be used in its own file only.
  ignoreExportsUsedInFile: { interface: true, type: true },
  // A lesson uses the parts of the lesson kit that it embeds, and one step for each heading, without
  // importing them itself.
  compilers: {
    md: (text: string) =>
      [
        ...KIT.filter(
          (name) => (name === 'Step' && text.includes('<Look')) || text.includes(`<${name}`),
        ).map((name) => `import '$lib/lesson/kit/${name}.svelte';`),
        ...familiesIn(text).map((name) => `import '#scenes/values/${name}.ts';`),
      ].join('\n'),
  },
};

export default config;
