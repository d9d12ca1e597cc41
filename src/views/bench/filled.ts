// What a machine says of the inputs of a calculation, as a person would type it, and where each stands.
import type { Value } from '../../calc/calculation.ts';
import { calculationById } from '../../calc/list.ts';
import { typedFigure, widthOf, type Width } from '../../calc/typed-figure.ts';
import type { Book } from '../../book/book.ts';
import { takeFrom } from '../../book/taken/on-machine.ts';
import type { Taken, Which } from '../../book/taken/taken.ts';
import { withLastDay } from '../wording/day.ts';

export interface Filled {
  /** Texts by the names of the inputs; what the machine does not say is not there. */
  readonly values: Readonly<Record<string, string>>;
  readonly from: Readonly<Record<string, string>>;
  /** What the text of each figure of an input does not say, where one of them has more. */
  readonly widths: Readonly<Record<string, readonly (Width | null)[]>>;
}

function typedText({ value, typed }: Taken): string {
  if (typed !== undefined) return typed;
  if (typeof value === 'string') return value;
  return 'unit' in value ? typedFigure(value) : value.map(typedFigure).join('; ');
}

function widthsOf(value: Value): readonly (Width | null)[] {
  if (typeof value === 'string') return [];
  const figures = 'unit' in value ? [value] : value;
  return figures.map((figure) => widthOf(figure) ?? null);
}

/** The inputs of a calculation that the machine fills, in the order of the inputs. */
export function filledFor(book: Book, id: string, which: Which = {}): Filled {
  const calculation = calculationById(id);
  if (calculation === undefined) return { values: {}, from: {}, widths: {} };
  const taken = takeFrom(book, calculation, {}, which);
  return {
    values: Object.fromEntries(taken.map((one) => [one.input, typedText(one)])),
    from: Object.fromEntries(taken.map(({ input, from }) => [input, withLastDay(from)])),
    widths: Object.fromEntries(
      taken.flatMap(({ input, value, typed }) => {
        // Teeth say their ratio exactly.
        const widths = typed === undefined ? widthsOf(value) : [];
        return widths.some((width) => width !== null) ? [[input, widths] as const] : [];
      }),
    ),
  };
}
