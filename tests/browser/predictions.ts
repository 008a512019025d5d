import { isQuantityId, type QuantityId } from '#core/quantities.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import { PARAMETER_IDS, type ParameterId } from '#scenes/parameters.ts';
import { readSettingText } from '#scenes/setting-text.ts';
import type { Setting } from '#scenes/setting.ts';
import { attributesOf } from '../../src/lib/lesson/markdown/tree.ts';
import { LESSONS, type LessonFile } from './site.ts';
import '../every-value.ts';
import { trainingCar } from '../training-cars.ts';

/** A prediction that a lesson asks for, with what comes out according to the core, in SI. */
export interface Prediction {
  readonly lesson: LessonFile;
  /** Number of its step, from 1. */
  readonly step: number;
  readonly of: QuantityId;
  readonly before: number;
  readonly after: number;
  /** What waits for the prediction. */
  readonly moved: readonly ParameterId[];
}

/** Every prediction of the course, as the lessons' files have them. */
export const PREDICTIONS: readonly Prediction[] = LESSONS.flatMap((lesson) =>
  lesson.steps.flatMap((text, index) => {
    const [tag] = /<Predict [^>]*>/.exec(text) ?? [];
    return tag === undefined ? [] : [predictionOf(lesson, index + 1, attributesOf(tag))];
  }),
);

function predictionOf(
  lesson: LessonFile,
  step: number,
  { of = '', from = '', set = '' }: Readonly<Record<string, string>>,
): Prediction {
  if (!isQuantityId(of)) throw new Error(`${lesson.slug}: no quantity is called ${of}`);
  const model = trainingCar(lesson.car).left;
  const [start, goal] = [settingOf(from), settingOf(set)];
  return {
    lesson,
    step,
    of,
    before: valueOf(of, standing(model, start)),
    after: valueOf(of, standing(model, goal)),
    moved: PARAMETER_IDS.filter((id) => start[id] !== goal[id]),
  };
}

function settingOf(text: string): Setting {
  const read = readSettingText(text);
  if (!read.ok) throw new Error(`not a setting: ${text}`);
  return read.value;
}
