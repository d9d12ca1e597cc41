// The ignition timing in degrees of the crank: as a book gives it, or worked out from millimetres of the piston.
import type { Book } from '../../book/book.ts';
import { printFigure, printRange } from '../../figure/print.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { degree } from '../../quantity/units.ts';
import type { Text } from '../../sheet/sheet.ts';
import { fact, type Fact } from '../wording/blocks.ts';
import { inlineFigure } from '../wording/figure.ts';
import { valueText } from '../wording/value.ts';
import { headFigures } from './engine.ts';

export interface Timing {
  readonly degrees: number;
  readonly text: string;
  /** The angle as it is printed beside the drawing, leading to its working where it was worked out. */
  readonly told: Text;
  readonly range?: { readonly low: number; readonly high: number; readonly text: string };
}

/** What stands beside a strip or a disc: the timing that is marked on it, or why none is. */
export function timingFact(say: (words: string) => string, timing: Timing | undefined): readonly Fact[] {
  const told = timing === undefined ? say('not known: no line is drawn for it') : timing.told;
  return fact(say('Timing before top dead centre'), told, timing?.range?.text);
}

/** `39°` alone may be either. */
const anglesOfBooks: ReadonlySet<string> = new Set(['crank angle', 'angle']);

/** The timing in degrees: as a book gives it, or worked out from millimetres of the piston. */
export function timingOf(book: Book): Timing | undefined {
  const given = book.records.maker.settings.find(
    ({ id, value }) =>
      id.includes('timing') && value.kind === 'read' && anglesOfBooks.has(value.written.unit.dimension),
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
