// A strip of degrees for the rim of the flywheel, in true scale from its measured diameter, with the timing marked where it is known.
import { printFigure, printRange } from '../figure/print.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { degree } from '../quantity/units.ts';
import type { Block, DrawingMark, Text } from '../sheet/sheet.ts';
import { fact, lines, paragraphs, stack } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { inlineFigure } from './wording/figure.ts';
import { headFigures } from './figures/engine.ts';
import { inMillimetres, label, outline, upright } from './wording/true-scale.ts';
import { valueText, writtenText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** So far to both sides of top dead centre; more than any timing of these engines. */
const span = 60;
const edge = 8;
const top = 8;
const band = 12;
const height = top + band + 8;

interface Timing {
  readonly degrees: number;
  readonly text: string;
  /** The angle as it is printed beside the strip, leading to its working where it was worked out. */
  readonly told: Text;
  readonly range?: { readonly low: number; readonly high: number; readonly text: string };
}

export const timingStrip = defineView({
  id: 'timing-strip',
  purpose: 'A strip of degrees for the flywheel rim, in true scale, with the timing marked.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const diameter = context.book.records.machine.geometry.flywheel;
    return stack(how(context), diameter === undefined ? unmeasured(context) : strip(context, inMillimetres(diameter)));
  },
});

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
        'The diameter of the flywheel rim is not recorded, so no strip is drawn. Measure it, write it under geometry as flywheel, and print this sheet again.',
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

/** The timing in degrees: as a book gives it, or worked out from millimetres of the piston. */
function timingOf({ book }: ViewContext): Timing | undefined {
  const given = book.records.maker.settings.find(
    ({ id, value }) => id.includes('timing') && value.kind === 'read' && value.written.unit.dimension === 'crank angle',
  );
  if (given !== undefined && given.value.kind === 'read') {
    const { range, value } = given;
    const text = valueText(value) ?? '';
    const degrees = inDegrees(value.written.quantity);
    if (range?.low === undefined || range.high === undefined) return { degrees, text, told: text };
    return {
      degrees,
      text,
      told: text,
      range: { low: inDegrees(range.low), high: inDegrees(range.high), text: printRange(range) },
    };
  }
  const figure = headFigures(book).find(({ id }) => id === 'timing-angle')?.figure;
  if (figure === undefined) return undefined;
  const near = { ...figure, decimals: 1 };
  return {
    degrees: inDegrees(figure.quantity),
    text: printFigure(near),
    told: [inlineFigure(near, 'timing-angle')],
  };
}

function inDegrees(quantity: Quantity): number {
  return quantity / degree.factor;
}

function strip(context: ViewContext, diameter: number): readonly Block[] {
  const { book, say } = context;
  const perDegree = (Math.PI * diameter) / 360;
  const middle = edge + span * perDegree;
  const width = 2 * middle;
  const timing = timingOf(context);
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
        ...fact(
          say('Timing before top dead centre'),
          timing === undefined ? say('not known: no line is drawn for it') : timing.told,
          timing?.range?.text,
        ),
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
