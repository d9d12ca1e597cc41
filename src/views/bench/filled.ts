// What a machine says of the inputs of a calculation, as a person would type it, and where each stands.
import type { Value } from '../../calc/calculation.ts';
import { calculationById } from '../../calc/list.ts';
import { typedFigure } from '../../calc/typed-figure.ts';
import type { Book } from '../../book/book.ts';
import { takeFrom } from '../../book/taken/on-machine.ts';
import type { Which } from '../../book/taken/taken.ts';

export interface Filled {
  /** Texts by the names of the inputs; what the machine does not say is not there. */
  readonly values: Readonly<Record<string, string>>;
  readonly from: Readonly<Record<string, string>>;
}

function typed(value: Value): string {
  if (typeof value === 'string') return value;
  return 'unit' in value ? typedFigure(value) : value.map(typedFigure).join('; ');
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
