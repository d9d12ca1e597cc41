// Figures as inline pieces: a number and its unit that never part, leading to its working where it was worked out.
import { printFigure, printRange, printWithUncertainty } from '../../figure/print.ts';
import type { Figure } from '../../figure/figure.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import type { Inline } from '../../sheet/sheet.ts';

/** A figure inside a line. `working` is the id of its entry on the page of workings. */
export function inlineFigure<D extends Dimension>(figure: Figure<D>, working?: string): Inline {
  const text = printFigure(figure);
  if (working === undefined || figure.origin.kind !== 'worked out') return { kind: 'figure', text };
  return { kind: 'figure', text, to: `working:${working}` };
}

/** A figure with its band or its uncertainty where it has one: `4.3 to 5.3 N·m`, `24.5 N·m ± 0.6 N·m`. */
export function resultText<D extends Dimension>(figure: Figure<D>): string {
  const { band, unit, decimals } = figure;
  if (band !== undefined) return printRange({ low: band.low, high: band.high, unit, decimals, text: '' });
  return figure.uncertainty === undefined ? printFigure(figure) : printWithUncertainty(figure);
}
