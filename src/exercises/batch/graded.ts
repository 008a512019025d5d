import { note, refuse, type Place } from '#core/document/place.ts';
import { readList } from '#core/document/read-list.ts';
import { failure, faultLine, success, type Outcome } from '#core/fault.ts';
import { toSI } from '#core/units/convert.ts';
import type { DrawnPart, Exercise } from '../exercise.ts';
import { isList } from '../forms/form.ts';
import { askedOfList, isEntryOf, readListEntry } from '../forms/read-list-entry.ts';
import { grade } from '../grade.ts';
import type { Entry } from '../own-road.ts';
import { plain } from '../phrase.ts';
import { readEntry } from '../read-entry.ts';
import { respond } from '../respond.ts';
import { collect } from '../sheet/collect.ts';
import { fingerprintOf } from '../sheet/fingerprint.ts';
import { piecesOf } from '../sheet/pieces.ts';
import type { Task } from './task.ts';

/** Marks and words for the entries of an exercise, or marks for what was handed in on a sheet. */
export const gradedTask = (task: Task): Outcome<object> =>
  task.of === 'exercise'
    ? gradedExercise(task.kind.exercise(task.seed), task.entries)
    : gradedSheet(task);

function gradedExercise(exercise: Exercise, place: Place): Outcome<object> {
  const { faults } = place;
  const { parts, kind, version, seed } = exercise;
  let index = 0;
  const entries = readList(place, (at) => readOne(at, parts[index++]));
  if (Array.isArray(place.value) && entries.length !== parts.length)
    note(place, `has ${entries.length} members`, `${parts.length}, one for each part`);
  if (faults.length > 0) return failure(...faults);
  const marks = grade(exercise, entries);
  return success({
    kind,
    version,
    seed,
    earned: marks.earned,
    possible: marks.possible,
    parts: marks.parts.map(({ verdict, earned, possible, slip }, i) => ({
      verdict,
      earned,
      possible,
      ...(slip && { slip: slip.id }),
      words: plain(respond(exercise, entries, i).words),
    })),
  });
}

/** A number is in the unit asked for, with its sign; a text is read as it would be in its field; null is an empty field. */
function readOne(place: Place, part: DrawnPart | undefined): Entry {
  const { value } = place;
  if (part === undefined || value === null) return undefined;
  const { form } = part.definition;
  if (isList(form)) {
    const reading = typeof value === 'string' ? readListEntry(value, form) : undefined;
    if (typeof reading === 'number') return reading;
    if (typeof value === 'number' && form.kind !== 'order' && isEntryOf(form, value)) return value;
    refuse(place, `${askedOfList(form)}, as a text, or null for an empty field`);
    return undefined;
  }
  if (typeof value === 'number') return toSI(value, part.definition.unit);
  if (typeof value !== 'string') {
    refuse(place, 'a number, a text such as "-12 mm", or null for an empty field');
    return undefined;
  }
  const reading = readEntry({ text: value }, part.definition);
  if (reading.kind === 'problem')
    note(
      place,
      `cannot be read: ${firstSentence(reading.message)}`,
      reading.place === 'word'
        ? 'a text with + or − in front'
        : 'a number with its unit or without',
    );
  return reading.kind === 'value' ? reading.value : undefined;
}

function gradedSheet({ sheet, kinds, results }: Extract<Task, { of: 'sheet' }>): Outcome<object> {
  const { faults } = results;
  const pieces = readList(results, ({ value, path }) =>
    piecesOf(path, typeof value === 'string' ? value : JSON.stringify(value)),
  ).flat();
  if (faults.length > 0) return failure(...faults);
  const { accepted, refused } = collect(sheet, kinds, pieces);
  return success({
    sheet: fingerprintOf(sheet),
    title: sheet.title,
    students: accepted.map(({ marked: { result, earned, possible, items } }) => ({
      number: result.number,
      earned,
      possible,
      items: items.map(({ earned: got, possible: full, counted, attempts }, i) => ({
        kind: kinds[i]?.id,
        earned: got,
        possible: full,
        attempts: attempts.length,
        parts: counted.parts.map(({ verdict, slip, hinted, ...marks }) => ({
          verdict,
          ...(slip && { slip: slip.id }),
          ...(hinted && { hinted }),
          earned: marks.earned,
          possible: marks.possible,
        })),
      })),
    })),
    refused: refused.map(({ name, why, number, faults: reasons }) => ({
      name,
      why,
      ...(number !== undefined && { number }),
      reasons: reasons.map(faultLine),
    })),
  });
}

/** The message of a field goes on with what is allowed, which a fault says itself. */
const firstSentence = (message: string): string =>
  message.replace(/ Allowed: .*$/, '').replace(/\.$/, '');
