// A strip of degrees for the rim of the flywheel, in true scale from its measured diameter, with the timing marked where it is known; without a rim, a disc.
import type { Block, DrawingMark } from '../sheet/sheet.ts';
import { appliesTo } from '../book/applies.ts';
import { fact, lines, paragraphs, stack } from './wording/blocks.ts';
import { cautionNamed } from './wording/caution.ts';
import { count } from './wording/count.ts';
import { timingFact, timingOf, type Timing } from './figures/timing.ts';
import { timingDisc } from './figures/timing-disc.ts';
import { inMillimetres, label, outline, upright } from './wording/true-scale.ts';
import { writtenText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** So far to both sides of top dead centre; more than any timing of these engines. */
const span = 60;
const edge = 8;
const top = 8;
const band = 12;
const height = top + band + 8;

export const timingStrip = defineView({
  id: 'timing-strip',
  purpose:
    'A strip of degrees for the flywheel rim, else a disc for the end of the crankshaft, in true scale, with the timing marked.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { geometry, features } = context.book.records.machine;
    const first = gapFirst(context);
    if (geometry.flywheel !== undefined)
      return stack(first, how(context), strip(context, inMillimetres(geometry.flywheel)));
    // A magneto that is driven by itself leaves no flywheel outside: there is no rim to ask for.
    return stack(first, features.magneto === 'separate' ? [] : unmeasured(context), timingDisc(context));
  },
});

/** A spark without points has no gap to be set; what is not known may have them. */
function gapFirst(context: ViewContext): readonly Block[] {
  const { features } = context.book.records.machine;
  return appliesTo({ trigger: ['points'] }, features) ? stack(cautionNamed(context, 'gap-then-timing')) : [];
}

function how({ say }: ViewContext): Block {
  return lines([
    say(
      'Top dead centre is found with a dial gauge or a stop in the plug hole, not with a screwdriver; T goes on the pointer there.',
    ),
    say(
      'Turned as the engine runs, what passes the pointer before T is before top dead centre; the other half is cut off.',
    ),
    say('Once round the rim is 360 degrees: a second strip that does not close shows that the diameter is wrong.'),
  ]);
}

function unmeasured({ say }: ViewContext): readonly Block[] {
  return [
    paragraphs(
      say(
        'The diameter of the flywheel rim is not recorded, so no strip is drawn. Where a rim stands outside, measure it, write it under geometry as flywheel, and print this sheet again.',
      ),
    ),
    {
      type: 'grid',
      columns: [
        { head: say('Diameter of the rim, mm'), width: 3 },
        { head: say('Instrument'), width: 3 },
        { head: say('Date'), width: 2 },
      ],
      rows: 1,
    },
  ];
}

function strip(context: ViewContext, diameter: number): readonly Block[] {
  const { book, say } = context;
  const perDegree = (Math.PI * diameter) / 360;
  const middle = edge + span * perDegree;
  const width = 2 * middle;
  const timing = timingOf(book);
  const at = (degrees: number): number => middle + degrees * perDegree;
  const flywheel = book.records.machine.geometry.flywheel;
  const marks: readonly DrawingMark[] = [
    ...outline(edge, top, width - 2 * edge, band),
    ...scale(at, perDegree),
    upright(middle, top - 3, top + band, { heavy: true }),
    label(middle, top - 4, 'T'),
    ...(timing === undefined ? [] : [-1, 1].flatMap((side) => timingMarks(at, side, timing))),
  ];
  return [
    {
      type: 'facts',
      facts: [
        ...fact(say('Rim, as measured'), flywheel === undefined ? undefined : writtenText(flywheel)),
        ...timingFact(say, timing),
      ],
    },
    {
      type: 'drawing',
      title: say('Timing strip, degrees of the crank to both sides of top dead centre'),
      description: say('A scale of degrees to both sides of a line marked T, with heavy lines at the timing.'),
      size: { width, height },
      marks,
    },
  ];
}

/** A line each degree, longer at five and ten; numbers where they have room. */
function scale(at: (degrees: number) => number, perDegree: number): readonly DrawingMark[] {
  const numbered = perDegree * 10 < 6 ? 20 : 10;
  return Array.from({ length: 2 * span + 1 }, (_, index) => index - span).flatMap((degrees): readonly DrawingMark[] => {
    const size = Math.abs(degrees);
    const long = size % 10 === 0 ? 8 : size % 5 === 0 ? 5.5 : 3;
    const line = upright(at(degrees), top + band - long, top + band);
    return size % numbered === 0 ? [line, label(at(degrees), top + band + 4.5, count(size))] : [line];
  });
}

function timingMarks(at: (degrees: number) => number, side: number, timing: Timing): readonly DrawingMark[] {
  const { degrees, range } = timing;
  if (degrees > span) return [];
  const ends = range === undefined ? [] : [range.low, range.high];
  return [
    upright(at(side * degrees), top - 3, top + band, { heavy: true }),
    label(at(side * degrees), top - 4, timing.text),
    ...ends.map((end) => upright(at(side * end), top, top + band, { dashed: true })),
  ];
}
