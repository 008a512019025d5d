import { KIT } from '../../src/lib/lesson/markdown/kit-imports.ts';
import { attributesOf } from '../../src/lib/lesson/markdown/tree.ts';
import { lineAt, type LessonFile } from './lesson-files.ts';

/** One use of a part of the lesson kit. */
export interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** `lessons/a-axis/01-two-points.md:45`. */
  readonly place: string;
  /** Number of the step that it stands in, from 1. */
  readonly step: number;
}

const TAG = new RegExp(`<(${[...KIT, 'Look'].join('|')})\\b[^>]*>`, 'g');

/** The tags of a lesson, in order. */
export const tagsOf = ({ path, text }: LessonFile): readonly Tag[] =>
  Array.from(text.matchAll(TAG), ({ 0: written, 1: name = '', index }) => ({
    name,
    attributes: attributesOf(written),
    place: `${path}:${lineAt(text, index)}`,
    step: (text.slice(0, index).match(/^## /gm) ?? []).length,
  }));

/** Those of one name. */
export const tagsNamed = (file: LessonFile, name: string): readonly Tag[] =>
  tagsOf(file).filter((tag) => tag.name === name);

/** The words of an attribute, or none. */
export const wordsIn = ({ attributes }: Tag, key: string): readonly string[] =>
  (attributes[key] ?? '').split(/[\s,]+/).filter(Boolean);
