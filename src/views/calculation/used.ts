// Where a binder uses a calculation: every figure whose origin it is, leading to its working.
import type { Calculation } from '../../calc/calculation.ts';
import type { Book } from '../../book/book.ts';
import type { Block } from '../../sheet/sheet.ts';
import { heading, lines } from '../wording/blocks.ts';
import { resultText } from '../wording/figure.ts';
import { grouped } from '../wording/grouped.ts';
import { workedFigures } from '../wording/worked-figures.ts';
import type { WorkedFigure } from '../wording/worked-figures.ts';
import type { ViewContext } from '../view.ts';

const made = new WeakMap<Book, ReadonlyMap<string, readonly WorkedFigure[]>>();

/** Worked-out figures of a binder by calculation, gathered once. */
function usesOf(book: Book): ReadonlyMap<string, readonly WorkedFigure[]> {
  const known = made.get(book);
  if (known !== undefined) return known;
  const uses = grouped(workedFigures(book), ({ figure }) =>
    figure.origin.kind === 'worked out' ? figure.origin.working.calculation : '',
  );
  made.set(book, uses);
  return uses;
}

/** Figures of this binder that a calculation gave. */
export function usesIn(book: Book, id: string): readonly WorkedFigure[] {
  return usesOf(book).get(id) ?? [];
}

/** The list of them, or that there is none. */
export function usedBlocks({ book, say }: ViewContext, one: Calculation): readonly Block[] {
  const uses = usesIn(book, one.id);
  const head = heading(2, say('Used in this binder'), 'used');
  if (uses.length === 0) return [head, lines([say('Nowhere: no figure of this binder comes from it.')])];
  return [
    head,
    lines(
      uses.map(({ id, name, figure }) => [
        `${say(name)}: `,
        { kind: 'figure', text: resultText(figure), to: `working:${id}` },
      ]),
    ),
  ];
}
