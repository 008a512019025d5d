import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vite';

/** What only some figures, exercises, sheets and the practice below a lesson need stays with them. */
const SCARCE = [
  'core/(?:own-car|judgement|tyre|uncertainty|units|quantity-reader|typical|workshop|document)',
  'lib/(?:bench|figures/[A-Z]|sheets|exercise/(?!Practice)|practice/|lesson/(?:practice-kinds|kit/Typical)|state/(?:practice-[rs]|local-day))',
  'scenes/(?!corner|paper)',
];

/** The arithmetic of quantities that only some lessons speak of: a file for each family, see src/scenes/values/. */
const FAMILIES = {
  axle: ['core/axle\\.ts', 'scenes/axle/axle-(?:values|cases|standing)'],
  bearing: ['core/bearing/', 'scenes/corner/(?:bearing-values|rolling)'],
  fastening: ['core/fastening/(?!fastening-quantities)', 'scenes/corner/fastening-values'],
  swing: ['core/(?:swing(?!-quantities)|angle-for-rod)', 'scenes/corner/swing-values'],
};

/** Modules of ours that most pages and lessons use. */
const SHARED = {
  name: 'shared',
  test: new RegExp(
    `/src/(?!${[SCARCE, ...Object.values(FAMILIES)].flat().join('|')})(?:core|scenes|lib)/`,
  ),
  minShareCount: 3,
};

/** What only the corner's own views need. */
const CORNER = { name: 'corner', test: /\/src\/scenes\/corner\// };

const ofFamilies = Object.entries(FAMILIES).map(([name, places]) => ({
  name,
  test: new RegExp(`/src/(?:${places.join('|')})`),
}));

export default defineConfig({
  plugins: [sveltekit()],
  // Known when the site is built: the same question that svelte.config.js asks.
  define: { __PLAIN_FILES__: JSON.stringify(process.env['KNUCKLEBOOK_BUILD'] === 'static') },
  build: {
    rolldownOptions: {
      // How long each plugin takes is for the profiler, not for everybody's build.
      checks: { bundlerTimings: false },
      // What most pages share comes in one file: a dozen requests instead of forty, and fewer bytes.
      output: { codeSplitting: { groups: [SHARED, ...ofFamilies, CORNER] } },
    },
  },
});
