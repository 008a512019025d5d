import adapterNode from '@sveltejs/adapter-node';
import adapterStatic from '@sveltejs/adapter-static';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';
import { mdsvex } from 'mdsvex';
import { leanMetadata } from './src/lib/lesson/markdown/lean-metadata.ts';
import { lessonMarkdown } from './src/lib/lesson/markdown/mdsvex-options.ts';

/** `npm run build:static` asks for a plain folder of files; everything else gets the Node server. */
const toStaticFiles = process.env['KNUCKLEBOOK_BUILD'] === 'static';

/** @type {import('@sveltejs/kit').Config} */
const config = {
  extensions: ['.svelte', '.md'],
  preprocess: [vitePreprocess(), mdsvex(lessonMarkdown), leanMetadata],
  compilerOptions: {
    runes: true,
    // mdsvex writes the old form of a module script into every lesson; nothing else is let through.
    warningFilter: ({ code }) => code !== 'script_context_deprecated',
  },
  kit: {
    adapter: toStaticFiles
      ? adapterStatic({ pages: 'build-static', assets: 'build-static', fallback: '404.html' })
      : adapterNode({ out: 'build', precompress: true }),
    files: { assets: 'src/static' },
    alias: { $lessons: 'lessons', $seeds: 'seeds' },
    paths: { relative: true },
    typescript: {
      // Type checking takes in the scripts, the settings of the tools and the service worker too.
      config: (config) => ({
        ...config,
        include: [...config['include'], '../*.config.js', '../*.config.ts', '../src/**/*.mjs'],
        exclude: ['../node_modules/**'],
      }),
    },
    prerender: {
      handleHttpError: 'fail',
      handleMissingId: 'fail',
      handleUnseenRoutes: 'fail',
    },
    csp: {
      mode: 'auto',
      directives: {
        'default-src': ['self'],
        'script-src': ['self'],
        'style-src': ['self'],
        'style-src-attr': ['unsafe-inline'],
        'img-src': ['self', 'data:', 'blob:'],
        'connect-src': ['self'],
        'object-src': ['none'],
        'base-uri': ['none'],
      },
    },
  },
};

export default config;
