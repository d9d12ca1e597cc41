// The drawing of the bench: bags with their closing strip, tubs with a rim, in rows on a board; lengths are millimetres.
import type { DrawingBlock, DrawingMark } from '../../sheet/sheet.ts';
import { count } from './count.ts';

/** A bag or tub, or a place without one, with the names of what is in it. */
export interface Vessel {
  readonly name: string;
  readonly shape: 'bag' | 'tub' | 'open' | 'away';
  readonly holds: readonly string[];
}

const gap = 4;
const lineHeight = 4.6;
/** Room above a body for the closing strip of a bag. */
const neck = 4;
/** Letters are as broad as this on the average; a name that is longer is cut, and the list has it whole. */
const letter = 1.62;
const mostLines = 6;

/** Rows of vessels, each row on its board; the last board has legs. Linear in what they hold. */
export function benchMarks(
  vessels: readonly Vessel[],
  { width, across }: { readonly width: number; readonly across: number },
): Pick<DrawingBlock, 'size' | 'marks'> {
  const marks: DrawingMark[] = [];
  const one = (width - gap * (across - 1)) / across;
  let top = 0;
  for (let from = 0; from < vessels.length; from += across) {
    const row = vessels.slice(from, from + across);
    const height = Math.max(...row.map(({ holds }) => bodyHeight(holds)));
    const board = top + neck + height;
    for (const [index, vessel] of row.entries()) {
      const left = index * (one + gap);
      const body = bodyHeight(vessel.holds);
      marks.push(...vesselMarks(vessel, { left, right: left + one, top: board - body, bottom: board }));
    }
    marks.push({ kind: 'line', x1: 0, y1: board, x2: width, y2: board, heavy: true });
    top = board + gap;
  }
  const board = top - gap;
  for (const x of [3, width - 3]) marks.push({ kind: 'line', x1: x, y1: board, x2: x, y2: board + 5, heavy: true });
  return { size: { width, height: board + 6 }, marks };
}

function bodyHeight(holds: readonly string[]): number {
  return 8 + lineHeight * Math.min(holds.length, mostLines) + 1.5;
}

interface Body {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function vesselMarks({ name, shape, holds }: Vessel, body: Body): readonly DrawingMark[] {
  const { left, right, top } = body;
  const letters = Math.floor((right - left - 5) / letter);
  return [
    ...outlines[shape](body),
    { kind: 'label', x: left + 3, y: top + 6, text: cut(name, letters - 2), anchor: 'start', strong: true },
    ...shown(holds).map((text, index): DrawingMark => {
      return {
        kind: 'label',
        x: left + 3,
        y: top + 8 + lineHeight * (index + 0.75),
        text: cut(text, letters),
        anchor: 'start',
      };
    }),
  ];
}

/** What fits, and how many more. */
function shown(holds: readonly string[]): readonly string[] {
  if (holds.length <= mostLines) return holds;
  return [...holds.slice(0, mostLines - 1), `+ ${count(holds.length - mostLines + 1)}`];
}

function cut(text: string, letters: number): string {
  const all = Array.from(text);
  return all.length <= letters
    ? text
    : `${all
        .slice(0, letters - 1)
        .join('')
        .trimEnd()}…`;
}

const outlines: Readonly<Record<Vessel['shape'], (body: Body) => readonly DrawingMark[]>> = {
  bag: ({ left, right, top, bottom }) => {
    const mouth = top - 3;
    return [
      ...sides({ left, right, top: mouth, bottom }),
      stroke(left, mouth, right, mouth),
      { ...stroke(left, top - 0.6, right, top - 0.6), heavy: true },
      stroke(left, top + 0.5, right, top + 0.5),
    ];
  },
  tub: ({ left, right, top, bottom }) => [
    { ...stroke(left, top, right, top), heavy: true },
    ...sides({ left: left + 0.3, right: right - 0.3, top, bottom: top + 1.8 }),
    stroke(left + 0.3, top + 1.8, right - 0.3, top + 1.8),
    stroke(left + 0.8, top + 1.8, left + 2.2, bottom),
    stroke(right - 0.8, top + 1.8, right - 2.2, bottom),
  ],
  // Only a mark on the board: nothing holds these.
  open: ({ left, right, top, bottom }) => dashed([stroke(left, top, left, bottom), stroke(right, top, right, bottom)]),
  away: ({ left, right, top, bottom }) =>
    dashed([stroke(left, top, right, top), stroke(left, top, left, bottom), stroke(right, top, right, bottom)]),
};

type Stroke = Extract<DrawingMark, { kind: 'line' }>;

function stroke(x1: number, y1: number, x2: number, y2: number): Stroke {
  return { kind: 'line', x1, y1, x2, y2 };
}

function sides({ left, right, top, bottom }: Body): readonly Stroke[] {
  return [stroke(left, top, left, bottom), stroke(right, top, right, bottom)];
}

function dashed(strokes: readonly Stroke[]): readonly Stroke[] {
  return strokes.map((one) => ({ ...one, dashed: true }));
}
