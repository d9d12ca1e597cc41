// A disc of degrees for the end of a crankshaft whose flywheel is inside, with the timing marked where it is known.
import type { Block, DrawingMark } from '../../sheet/sheet.ts';
import { lines } from '../wording/blocks.ts';
import { count } from '../wording/count.ts';
import { label } from '../wording/true-scale.ts';
import type { ViewContext } from '../view.ts';
import { timingFact, timingOf, type Timing } from './timing.ts';

/** Millimetres; a degree at its edge is about one, and it fits on half a sheet. */
const radius = 50;
const middle = 56;
const hole = 4;
const radians = Math.PI / 180;

/** What is said of the disc, and the disc. */
export function timingDisc({ book, say }: ViewContext): readonly Block[] {
  const timing = timingOf(book);
  const four = book.records.machine.features.stroke === 'four';
  return [
    lines([
      say(
        'The disc is pasted on card and clamped to the end of the crankshaft, or to the engine sprocket, with a pointer of stiff wire on a crankcase stud.',
      ),
      say(
        'Top dead centre is found with a dial gauge or a stop in the plug hole, not with a screwdriver; T goes on the pointer there.',
      ),
      say('Turned as the engine runs, what passes the pointer before T is before top dead centre.'),
      ...(four
        ? [
            say(
              'Not on the magneto’s own shaft: where that turns at half the speed of the crank, its degrees are half as many.',
            ),
          ]
        : []),
      say(
        'Where the spark is advanced by hand or by weights, look whether the book’s figure is for full advance, and hold it there.',
      ),
    ]),
    { type: 'facts', facts: timingFact(say, timing) },
    {
      type: 'drawing',
      title: say('Timing disc, degrees of the crank to both sides of top dead centre'),
      description: say('A disc of degrees from T at the top to 180 at the bottom, with heavy lines at the timing.'),
      size: { width: 2 * middle, height: 2 * middle },
      marks: [
        { kind: 'circle', x: middle, y: middle, radius },
        { kind: 'circle', x: middle, y: middle, radius: hole },
        ...[0, 90, 180, 270].map((degrees) => spoke(degrees, 0, hole)),
        ...scale(),
        ...(timing === undefined ? [] : [-1, 1].flatMap((side) => timingMarks(side, timing))),
      ],
    },
  ];
}

/** A line along the radius, so many degrees from the top. */
function spoke(degrees: number, from: number, to: number, more: { heavy?: true; dashed?: true } = {}): DrawingMark {
  const [across, up] = [Math.sin(degrees * radians), Math.cos(degrees * radians)];
  return {
    kind: 'line',
    x1: middle + from * across,
    y1: middle - from * up,
    x2: middle + to * across,
    y2: middle - to * up,
    ...more,
  };
}

/** A text with its middle on the radius. */
function word(degrees: number, at: number, text: string): DrawingMark {
  return label(middle + at * Math.sin(degrees * radians), middle - at * Math.cos(degrees * radians) + 1.2, text);
}

/** A line each degree, longer at five and ten; a number each ten, the same to both sides. */
function scale(): readonly DrawingMark[] {
  return Array.from({ length: 360 }, (_, index) => index - 179).flatMap((degrees): readonly DrawingMark[] => {
    const size = Math.abs(degrees);
    const long = size % 10 === 0 ? 7 : size % 5 === 0 ? 5 : 3;
    const line = spoke(degrees, radius - long, radius, degrees === 0 ? { heavy: true } : {});
    if (size % 10 !== 0) return [line];
    return [line, word(degrees, radius - 10, degrees === 0 ? 'T' : count(size))];
  });
}

function timingMarks(side: number, { degrees, range, text }: Timing): readonly DrawingMark[] {
  const ends = range === undefined ? [] : [range.low, range.high];
  return [
    spoke(side * degrees, radius - 22, radius, { heavy: true }),
    word(side * degrees, radius - 26, text),
    ...ends.map((end) => spoke(side * end, radius - 16, radius, { dashed: true })),
  ];
}
