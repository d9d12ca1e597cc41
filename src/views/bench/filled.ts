// What a machine says of the inputs of a calculation, as a person would type it, and where each stands.
import type { Value } from '../../calc/calculation.ts';
import { calculationById } from '../../calc/list.ts';
import type { Figure } from '../../figure/figure.ts';
import { printQuantity } from '../../figure/print.ts';
import type { Book } from '../../book/book.ts';
import { takeFrom } from '../../book/taken/on-machine.ts';
import type { Which } from '../../book/taken/taken.ts';

export interface Filled {
  /** Texts by the names of the inputs; what the machine does not say is not there. */
  readonly values: Readonly<Record<string, string>>;
  readonly from: Readonly<Record<string, string>>;
}

/** Spaces that keep a value together on paper are plain ones where it is typed. */
function typed(value: Value): string {
  const text = typeof value === 'string' ? value : 'unit' in value ? pointText(value) : value.map(pointText).join('; ');
  return text.replaceAll(/[\u00a0\u2009\u202f]/gu, ' ');
}

/** A band is typed as the point it stands for. */
function pointText({ quantity, unit, decimals }: Figure): string {
  return printQuantity(quantity, unit, decimals);
}

/** The inputs of a calculation that the machine fills, in the order of the inputs. */
export function filledFor(book: Book, id: string, which: Which = {}): Filled {
  const calculation = calculationById(id);
  if (calculation === undefined) return { values: {}, from: {} };
  const taken = takeFrom(book, calculation, {}, which);
  return {
    values: Object.fromEntries(taken.map(({ input, value }) => [input, typed(value)])),
    from: Object.fromEntries(taken.map(({ input, from }) => [input, from])),
  };
}
