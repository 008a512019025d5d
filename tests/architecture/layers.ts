/** Each layer, and where its files are. The first that fits a path counts. */
const PLACES = [
  ['core', 'src/core/'],
  ['exercises', 'src/exercises/'],
  ['scenes', 'src/scenes/'],
  ['server', 'src/lib/server/'],
  ['lesson kit', 'src/lib/lesson/'],
  ['lib', 'src/lib/'],
  ['cli', 'src/cli/'],
  // The routes and what stands beside them: hooks, service worker, page shell.
  ['routes', 'src/'],
  ['lessons', 'lessons/'],
  ['lessons', 'derivations/'],
  ['seeds', 'seeds/'],
  ['tests', 'tests/'],
] as const;

export type Layer = (typeof PLACES)[number][0];

interface Rule {
  /** The layers that it may import besides itself. */
  readonly layers: readonly Layer[];
  /** The packages that it may import, by name; left out where any will do. */
  readonly packages?: readonly string[];
  readonly reason: string;
}

/** Who may import whom, and why no one else. */
export const RULES: Readonly<Record<Layer, Rule>> = {
  core: {
    layers: [],
    packages: [],
    reason: 'the calculation stands alone, so that it runs and is checked anywhere',
  },
  exercises: {
    layers: ['core'],
    // Of ts-fsrs the arithmetic of forgetting only, which asks no clock.
    packages: ['pure-rand', '@noble/hashes', 'ts-fsrs'],
    reason: 'an exercise is a calculation drawn by a seeded generator; it names a scene by id only',
  },
  scenes: {
    layers: ['core'],
    packages: ['d3', 'd3-array', 'd3-scale', 'd3-shape'],
    reason: 'a scene is a record made from numbers; of d3 it takes the mathematics only',
  },
  server: {
    layers: ['core', 'exercises', 'seeds'],
    reason: 'the server grades and keeps; what is shown belongs to the components',
  },
  'lesson kit': {
    layers: ['lib', 'core', 'exercises', 'scenes', 'lessons', 'seeds'],
    reason: 'the lesson kit is made of components, and they reach the server by its routes only',
  },
  lib: {
    layers: ['lesson kit', 'core', 'exercises', 'scenes', 'seeds'],
    reason: 'components join the pure layers, and reach the server by its routes only',
  },
  cli: {
    layers: ['core', 'exercises', 'seeds'],
    reason: 'the commands run in plain Node, without anything of Svelte',
  },
  routes: {
    layers: ['core', 'exercises', 'scenes', 'server', 'lesson kit', 'lib', 'lessons', 'seeds'],
    reason: 'the routes put the site together; the commands and the tests are no part of it',
  },
  lessons: {
    layers: ['lesson kit'],
    packages: [],
    reason: 'a lesson is prose, and embeds figures and exercises by id through the lesson kit',
  },
  seeds: { layers: [], packages: [], reason: 'seeds are data' },
  tests: {
    layers: [
      'core',
      'exercises',
      'scenes',
      'server',
      'lesson kit',
      'lib',
      'cli',
      'routes',
      'lessons',
      'seeds',
    ],
    reason: 'tests may look at everything',
  },
};

/** The layers that must run in plain Node, without input, output, clock or chance. */
export const PURE_LAYERS: readonly Layer[] = ['core', 'exercises', 'scenes'];

/** The layer of a path from the project's folder; undefined for the settings of the tools. */
export const layerOf = (path: string): Layer | undefined =>
  PLACES.find(([, folder]) => path.startsWith(folder))?.[0];
