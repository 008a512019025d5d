import type { Choice } from '../forms/choosing.ts';
import type { MarkedId, MarkedItem, MarkedView } from '../paper/marked-view.ts';
import { phrase } from '../phrase.ts';
import type { CornerPicture } from '../pictures/picture.ts';

/**
 * The lettered lengths to choose from, in the order of `MARKED_IDS`.
 *
 * @param drawnAlone the picture of one length by itself, shown to who chose it wrongly
 */
export function markedChoices(
  { given, wanted, givenAt, wantedAt }: MarkedView,
  drawnAlone: (id: MarkedId) => (item: MarkedItem) => CornerPicture,
): readonly Choice<MarkedItem>[] {
  const wrong = (
    id: MarkedId,
    words: string,
    confuses: string,
    text: string,
  ): Choice<MarkedItem> => ({
    id,
    words: () => [words],
    confuses,
    text: () => [text],
    picture: drawnAlone(id),
  });
  return [
    {
      ...wrong(
        'wanted',
        `level, ${wantedAt}, from the axis to the middle of the wheel`,
        'lean',
        '',
      ),
      text: () =>
        phrase`That runs from the axis to the wheel: the ${wanted.name}. It holds more than the lean, namely what lay between them ${givenAt} already. The lean lies along the axis, from one height to the other.`,
    },
    {
      ...wrong(
        'given',
        `level, ${givenAt}, from the axis to the middle of the wheel`,
        'height',
        '',
      ),
      text: (item) =>
        phrase`That is the ${given.name}: the right two things, at the other height. ${item.asks === 'offset' ? `The ${wanted.name} is measured ${wantedAt}` : 'What the axis does on its way between the two heights is asked for'}.`,
    },
    {
      ...wrong(
        'lean',
        'level, from the axis at the road to the axis at the height of the wheel centre',
        'two points of the axis',
        '',
      ),
      text: () =>
        phrase`That lies between two points of the axis and has no end at the wheel. It is what the lean makes between the two heights; the ${wanted.name} goes from the axis to the wheel.`,
    },
    wrong(
      'radius',
      'upright, from the road to the wheel centre',
      'loaded radius',
      'That is the loaded radius, which is upright. Every offset of the axis is level: it says how far beside the wheel the axis passes, not how high.',
    ),
    wrong(
      'shortest',
      'from the wheel centre square to the axis',
      'shortest distance',
      `That is the shortest distance from the wheel centre, square to the axis. It would be the lever of a force straight across this view. The length that is asked for is measured level, as on a workshop floor.`,
    ),
  ];
}
