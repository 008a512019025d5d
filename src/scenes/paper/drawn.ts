import type { Handle, Mark, Scene } from '../marks.ts';
import { frameOf, isOnPaper, onPaper, PAPER, rounded, type Frame } from './frame.ts';
import { inkAngle } from './ink-angle.ts';
import { inkDimension } from './ink-dimension.ts';
import { inkTurn } from './ink-turn.ts';
import { inkArrow, inkCircle, inkGround, inkLabel, inkPath, inkSpot } from './ink.ts';
import { leader, seated, type Stroke, type Wish } from './label-placement.ts';
import { at, inkOf, type Grip, type Inked, type Shape, type TextShape } from './shapes.ts';

/** A scene on paper: rounded shapes ready for an SVG, in the order in which they are painted. */
export interface Drawing {
  readonly title: string;
  readonly description: string;
  readonly frame: Frame;
  readonly shapes: readonly Shape[];
  readonly grips: readonly Grip[];
}

/** How far a grip's arrows reach to either side. */
const GRIP_REACH = 23;

/** Puts a scene on paper. Pure: the same scene gives the same shapes, on the server and in the browser. */
export function drawn(
  scene: Scene,
  paper: { readonly width: number; readonly height: number } = PAPER,
): Drawing {
  const frame = frameOf(scene.window, paper);
  const shapes: Shape[] = [];
  const grips: Grip[] = [];
  const strokes: Stroke[] = [];
  const wishes: Wish[] = [];
  const texts = new Map<string, Omit<TextShape, 'x' | 'y'>>();
  for (const mark of scene.marks) {
    if (mark.kind === 'handle') {
      // What is not wholly on the paper is hard to grab, and must not take the keyboard's focus unseen.
      if (!isOnPaper(frame, onPaper(frame, mark.at), GRIP_REACH)) continue;
      const grip = gripOf(frame, mark);
      grips.push(grip);
      strokes.push(gripStroke(grip));
      continue;
    }
    const inked = ink(frame, mark);
    shapes.push(...inked.shapes);
    strokes.push(...inked.strokes);
    // Words beside what is off the paper would name something else.
    if (inked.words && isOnPaper(frame, inked.words.at)) {
      const { strong, ...wish } = inked.words;
      wishes.push({ ...wish, key: mark.key });
      texts.set(mark.key, {
        ...inkOf(mark),
        key: `${mark.key}-text`,
        kind: 'text',
        text: wish.text,
        strong,
      });
    }
  }
  // What has one seat only takes it first; then values choose, for they are what the drawing is for.
  const rank = ({ key, here }: Wish): number => (here ? 2 : Number(texts.get(key)?.strong));
  wishes.sort((a, b) => rank(b) - rank(a));
  const seats = seated(wishes, strokes, paper);
  for (const wish of wishes) {
    const [seat, text] = [seats.get(wish.key), texts.get(wish.key)];
    // A value stands at its dimension, which ties it already.
    const line = seat && text && !text.strong && leader(seat, wish);
    if (line)
      shapes.push({
        ...text,
        key: `${wish.key}-leader`,
        kind: 'path',
        d: `M${at(line.from)}L${at(line.to)}`,
        line: 'thin',
        filled: false,
      });
  }
  for (const [key, text] of texts) {
    const seat = seats.get(key);
    if (seat) shapes.push({ ...text, x: rounded(seat.x), y: rounded(seat.y) });
  }
  return { title: scene.title, description: scene.description, frame, shapes, grips };
}

function ink(frame: Frame, mark: Exclude<Mark, Handle>): Inked {
  switch (mark.kind) {
    case 'path':
      return inkPath(frame, mark);
    case 'circle':
      return inkCircle(frame, mark);
    case 'spot':
      return inkSpot(frame, mark);
    case 'ground':
      return inkGround(frame, mark);
    case 'dimension':
      return inkDimension(frame, mark);
    case 'angle':
      return inkAngle(frame, mark);
    case 'arrow':
      return inkArrow(frame, mark);
    case 'turn':
      return inkTurn(frame, mark);
    case 'label':
      return inkLabel(frame, mark);
  }
}

/** Words keep off the arrows beside a grip. */
const gripStroke = ({ x, y }: Grip): Stroke => ({
  from: { x: x - GRIP_REACH, y },
  to: { x: x + GRIP_REACH, y },
  weight: 6,
});

function gripOf(frame: Frame, handle: Handle): Grip {
  const { x, y } = onPaper(frame, handle.at);
  return { key: handle.key, x: rounded(x), y: rounded(y), handle };
}
