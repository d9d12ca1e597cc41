// Workings: every worked-out figure with its formula, what went in and where that came from, source and remarks.
import { calculationById } from '../calc/list.ts';
import type { Figure, Working } from '../figure/figure.ts';
import type { Block, Text } from '../sheet/sheet.ts';
import { column, fact, heading, joined, lines, paragraphs, row, stack } from './wording/blocks.ts';
import { resultText } from './wording/figure.ts';
import { calculationFile } from './calculations.ts';
import { workedFigures } from './wording/worked-figures.ts';
import type { WorkedFigure } from './wording/worked-figures.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const workings = defineView({
  id: 'workings',
  purpose: 'Every worked-out figure of the binder with its derivation.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const all = workedFigures(context.book);
    if (all.length === 0) return [lines([context.say('No figure of this binder was worked out.')])];
    return stack(
      toCalculations(context),
      all.flatMap((one) => workingBlocks(context, one)),
    );
  },
});

function toCalculations({ say }: ViewContext): Block {
  const link = {
    kind: 'link',
    text: say('every calculation with its formula, range, source and example'),
    to: 'page:calculations.html',
  } as const;
  return paragraphs([`${say('How figures are worked out')}: `, link]);
}

function workingBlocks(context: ViewContext, { id, name, figure }: WorkedFigure): readonly Block[] {
  const { say } = context;
  if (figure.origin.kind !== 'worked out') return [];
  const { working } = figure.origin;
  return stack(
    heading(2, say(name), id),
    {
      type: 'facts',
      facts: [
        ...fact(say('Result'), resultText(figure)),
        ...fact(say('Formula'), working.formula),
        ...fact(say('Source'), working.source),
        ...fact(say('Rule'), ruleText(working)),
      ],
    },
    inputs(context, working),
    (working.remarks ?? []).length === 0 ? undefined : lines(working.remarks ?? []),
  );
}

/** A calculation of the list leads to its page; a rule of the book is only named. */
function ruleText(working: Working): Text {
  const known = calculationById(working.calculation);
  if (known === undefined) return working.calculation;
  return [{ kind: 'link', text: known.name, to: `page:${calculationFile(known.id)}` }];
}

function inputs({ book, say }: ViewContext, working: Working): Block {
  return {
    type: 'table',
    columns: [column(say('Sign'), 2), column(say('What'), 6), column(say('Value'), 4, 'right'), column(say('From'), 6)],
    rows: working.inputs.map((input) =>
      row(input.symbol, input.name, resultText(input.figure), from(book, say, input.figure)),
    ),
    empty: say('Nothing was put in.'),
    use: 'read',
  };
}

/** Where an input came from: a record or a book, a row of a table, or another calculation. */
function from(book: ViewContext['book'], say: (words: string) => string, figure: Figure): Text {
  const { origin } = figure;
  if (origin.kind === 'published') {
    const link = { kind: 'link', text: origin.table, to: `page:tables/${origin.table}.html` } as const;
    return [`${say('table')} `, link, `, ${say('row')} ${origin.row}`];
  }
  if (origin.kind === 'worked out') return `${say('worked out')}: ${origin.working.formula}`;
  const id = /^jobs\/(.+)\.md$/.exec(origin.at.file)?.[1];
  const job = id === undefined ? undefined : book.jobs.get(id);
  const place: Text = job === undefined ? origin.at.file : [{ kind: 'link', text: job.title, to: `job:${job.id}` }];
  return joined([origin.source, place], ', ');
}
