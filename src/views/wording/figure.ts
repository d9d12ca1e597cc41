// Figures as inline pieces: a number and its unit that never part, leading to its working where it was worked out.
import { printFigure } from '../../figure/print.ts';
import type { Figure } from '../../figure/figure.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import type { Inline } from '../../sheet/sheet.ts';

/** A figure inside a line. `working` is the id of its entry on the page of workings. */
export function inlineFigure<D extends Dimension>(figure: Figure<D>, working?: string): Inline {
  const text = printFigure(figure);
  if (working === undefined || figure.origin.kind !== 'worked out') return { kind: 'figure', text };
  return { kind: 'figure', text, to: `working:${working}` };
}

/** Where a figure comes from, in the words of the key: `book`, `table`, `worked out`. */
export function originWord(figure: Figure): string {
  if (figure.origin.kind === 'written') return 'book';
  return figure.origin.kind === 'published' ? 'table' : 'worked out';
}
