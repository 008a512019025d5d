import { builtinModules } from 'node:module';
import { posix } from 'node:path';
import { importsOf } from './imports.ts';
import { layerOf, PURE_LAYERS, RULES, type Layer } from './layers.ts';

/** Names that stand for a folder of the project. */
const ALIASES = {
  '#core/': 'src/core/',
  '#exercises/': 'src/exercises/',
  '#scenes/': 'src/scenes/',
  '$lib/': 'src/lib/',
  '$lessons/': 'lessons/',
  '$seeds/': 'seeds/',
} as const;

/** Every import of a file that breaks a rule, one line each with the reason. */
export function importFaults(path: string, text: string): readonly string[] {
  const layer = layerOf(path);
  if (layer === undefined) return [];
  return importsOf(path, text).flatMap((name) => {
    const fault = faultOf(path, layer, name);
    return fault === undefined ? [] : [`${path} imports ${name}: ${fault}`];
  });
}

function faultOf(path: string, layer: Layer, name: string): string | undefined {
  const target = targetOf(path, name);
  if (target === undefined) return packageFault(layer, name);
  const other = layerOf(target);
  const { layers, reason } = RULES[layer];
  if (other !== undefined && other !== layer && !layers.includes(other))
    return `${layer} must not import ${other}, since ${reason}`;
  return spellingFault(layer, other, name);
}

/** The path of what is imported, from the project's folder; undefined for a package. */
function targetOf(path: string, name: string): string | undefined {
  if (name.startsWith('.')) return posix.join(posix.dirname(path), name);
  if (name.startsWith('/')) return name.slice(1);
  for (const [alias, folder] of Object.entries(ALIASES))
    if (name.startsWith(alias)) return folder + name.slice(alias.length);
  return undefined;
}

function packageFault(layer: Layer, name: string): string | undefined {
  const { packages, reason } = RULES[layer];
  if (packages !== undefined && isBuiltIn(name))
    return `${layer} must not need Node itself, since ${reason}`;
  if (packages !== undefined && !packages.some((one) => isWithin(one, name)))
    return `${layer} may import ${packages.join(', ') || 'no package'}, since ${reason}`;
  if (name === '$app/stores') return 'it has no future in the framework; $app/state has';
  if (isWithin('katex', name) && layer !== 'lesson kit' && layer !== 'tests')
    return 'maths is set when the site is built, and no maths script reaches the reader';
  return undefined;
}

/** Whether the import would be found in plain Node, and is written as everywhere else. */
function spellingFault(layer: Layer, other: Layer | undefined, name: string): string | undefined {
  if (PURE_LAYERS.includes(layer) && posix.extname(name) === '')
    return 'plain Node needs the file’s ending, such as .ts';
  if (
    other !== undefined &&
    other !== layer &&
    PURE_LAYERS.includes(other) &&
    !name.startsWith('#')
  )
    return `another layer is imported by its name, as #${other}/…`;
  return undefined;
}

const isBuiltIn = (name: string): boolean =>
  name.startsWith('node:') || builtinModules.includes(name);

const isWithin = (packageName: string, name: string): boolean =>
  name === packageName || name.startsWith(`${packageName}/`);
