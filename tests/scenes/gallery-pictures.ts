import { PART_NAMES, type CornerLook, type PartName } from '#scenes/corner/corner-scene.ts';
import { lookIn } from './corner/marks-of.ts';

/** A picture of the gallery: a corner, what is set, and how it is looked at. */
export interface Picture {
  /** Of its file: `linnet-left-front-whole`. */
  readonly name: string;
  readonly corner: string;
  /** As in an address: `spacer:20,steer:-5`. */
  readonly set: string;
  readonly look: CornerLook;
}

const ALL_NAMES = Object.keys(PART_NAMES) as readonly PartName[];

const picture = (corner: string, set: string, name: string, look: CornerLook): Picture => ({
  name: `${corner.replace(', ', '-')}-${name}`,
  corner,
  set,
  look,
});

/** Every car in every view as it stands; then what lessons do to it. */
export const PICTURES: readonly Picture[] = [
  ...['linnet, left', 'pelican, left', 'siskin, left', 'bittern, right'].flatMap((corner) => [
    picture(
      corner,
      '',
      'front',
      lookIn('front', { measures: ['inclination', 'scrubRadius'], names: ['upper', 'lower'] }),
    ),
    picture(corner, '', 'side', lookIn('side', { measures: ['caster', 'trail'], names: ['axis'] })),
    picture(
      corner,
      '',
      'top',
      lookIn('top', { measures: ['scrubRadius', 'trail'], names: ['contact', 'ground'] }),
    ),
  ]),
  picture(
    'linnet, left',
    'upperInboard:30',
    'tower-pulled-in',
    lookIn('front', {
      measures: ['inclination'],
      names: ['upper', 'lower'],
      handles: ['upperInboard', 'lowerOutboard'],
      guesses: { inclination: 0.3 },
    }),
  ),
  picture(
    'linnet, left',
    'camberAtTop:-1.5',
    'camber-at-the-top',
    lookIn('front', { measures: ['inclination', 'camber'] }),
  ),
  picture('linnet, right', 'steer:30', 'steered-front', lookIn('front', { measures: ['lift'] })),
  picture(
    'linnet, left',
    'steer:30',
    'steered-top',
    lookIn('top', { names: ['upper', 'lower'], handles: ['steer'], traces: ['contact'] }),
  ),
  picture(
    'siskin, left',
    'spacer:20',
    'spacer-at-the-road',
    lookIn('front', {
      closeness: 'road',
      measures: ['scrubRadius'],
      names: ['ground', 'contact'],
      handles: ['spacer'],
      guesses: { scrubRadius: 0.02 },
    }),
  ),
  picture(
    'siskin, left',
    'inset:15',
    'inset-at-the-road',
    lookIn('front', { closeness: 'road', measures: ['scrubRadius'], names: ['ground', 'contact'] }),
  ),
  picture(
    'siskin, right',
    'upperRearward:20',
    'trail-at-the-road',
    lookIn('side', { closeness: 'road', measures: ['trail'], names: ['ground', 'contact'] }),
  ),
  picture(
    'siskin, left',
    'steer:-25,brake:2500',
    'braking-from-above',
    lookIn('top', { closeness: 'road', measures: ['scrubRadius'], names: ['ground'] }),
  ),
  picture(
    'pelican, left',
    'spacer:25',
    'spacer-at-the-hub',
    lookIn('front', { closeness: 'hub', measures: ['spindleOffset'], names: ['centre'] }),
  ),
  picture(
    'pelican, left',
    'radius:30',
    'taller-tyre',
    lookIn('front', { measures: ['spindleOffset', 'scrubRadius'], handles: ['spacer'] }),
  ),
  picture(
    'pelican, left',
    'upperRearward:40,weight:6900',
    'caster-at-the-hub',
    lookIn('side', { closeness: 'hub', measures: ['casterOffsetAtCentre'], names: ['centre'] }),
  ),
  picture(
    'bittern, left',
    'lowerOutboard:-20,side:2000',
    'everything-named',
    lookIn('front', {
      measures: ['inclination', 'scrubRadius', 'spindleOffset'],
      names: ALL_NAMES,
      units: 'us',
    }),
  ),
];
