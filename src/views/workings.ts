// Workings: every worked-out figure with its formula, what went in and where that came from, source and remarks.
import { calculationById } from '../calc/list.ts';
import type { Figure, Working } from '../figure/figure.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { column, fact, heading, joined, lines, paragraphs, row, sentence, stack } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { withDates } from './wording/day.ts';
import { grouped } from './wording/grouped.ts';
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
  long: { page: 'workings.html', title: 'Workings' },
  blocks: (context) => {
    const rules = workedRules(context);
    if (rules.length === 0) return noWorkings(context);
    return [toCalculations(context), ...rules.flatMap(({ blocks }) => blocks())];
  },
});

/** The figures of one rule, under its name. */
export interface WorkedRule {
  readonly name: string;
  /** Its anchor. */
  readonly id: string;
  /** Anchors of its figures. */
  readonly figures: readonly string[];
  /** Lines that its table takes, about. */
  readonly length: number;
  readonly blocks: () => readonly Block[];
}

/** Every rule by which figures of the binder were worked out, in the order in which they come. */
export function workedRules(context: ViewContext): readonly WorkedRule[] {
  const rules = grouped(workedFigures(context.book), ({ figure }) =>
    figure.origin.kind === 'worked out' ? ruleKey(figure.origin.working) : '',
  );
  return [...rules.values()].map((those, index) => {
    const [working] = workingsOf(those);
    return {
      name: working === undefined ? '' : ruleName(context, working),
      id: ruleId(index),
      figures: those.map(({ id }) => id),
      length: workingsOf(those).reduce((sum, { inputs }) => sum + 1 + inputs.length, 0),
      blocks: () => ruleBlocks(context, those, index),
    };
  });
}

export function noWorkings({ say }: ViewContext): readonly Block[] {
  return [lines([say('No figure of this binder was worked out.')])];
}

function workingsOf(those: readonly WorkedFigure[]): readonly Working[] {
  return those.flatMap(({ figure: { origin } }) => (origin.kind === 'worked out' ? [origin.working] : []));
}

/** Rules of the book itself, which are no calculation of the list. */
const ofBook: Readonly<Record<string, string>> = {
  'on-the-clock': 'Reading of the clock',
  'running-in': 'Running in',
};

function ruleName({ say }: ViewContext, { calculation }: Working): string {
  return say(calculationById(calculation)?.name ?? ofBook[calculation] ?? sentence(calculation));
}

function ruleId(index: number): string {
  return `rule-${count(index + 1)}`;
}

/** Figures of one rule stand together: formula and source once. */
function ruleKey(working: Working): string {
  return [working.calculation, working.formula, working.source].join('\n');
}

/** Leads to the list of all calculations. */
export function toCalculations({ say }: ViewContext): Block {
  const link = {
    kind: 'link',
    text: say('every calculation with its formula, range, source and example'),
    to: 'page:calculations.html',
  } as const;
  return paragraphs([`${say('How figures are worked out')}: `, link]);
}

function ruleBlocks(context: ViewContext, those: readonly WorkedFigure[], index: number): readonly Block[] {
  const { say } = context;
  const workings = workingsOf(those);
  const [working] = workings;
  if (working === undefined) return [];
  const remarks = sharedRemarks(workings);
  return stack(
    heading(2, ruleName(context, working), ruleId(index)),
    {
      type: 'facts',
      facts: [
        ...fact(say('Formula'), working.formula),
        ...fact(say('Source'), working.source),
        ...fact(say('Rule'), ruleText(say, working)),
      ],
    },
    {
      type: 'table',
      columns: [
        column(say('What'), 7),
        column(say('Sign'), 2),
        column(say('Value'), 4, 'right'),
        column(say('From'), 6),
      ],
      rows: figureRows(context, those, remarks),
      empty: '',
      use: 'read',
    },
    remarks.length === 0 ? undefined : lines(remarks.map(say)),
  );
}

/** What every one of them says; what only some say stands beside their figures. */
function sharedRemarks(workings: readonly Working[]): readonly string[] {
  const [first, ...rest] = workings;
  return (first?.remarks ?? []).filter((text) => rest.every((one) => one.remarks?.includes(text) === true));
}

/** Each figure in strong, then what went in; figures that came out of the same values follow each other. */
function figureRows(context: ViewContext, those: readonly WorkedFigure[], shared: readonly string[]): readonly Row[] {
  const { say } = context;
  let before: string | undefined;
  return those.flatMap(({ id, name, figure }): readonly Row[] => {
    if (figure.origin.kind !== 'worked out') return [];
    const { inputs, remarks = [] } = figure.origin.working;
    const own = say(remarks.filter((text) => !shared.includes(text)).join('; '));
    const key = [own, ...inputs.map((one) => `${one.symbol} ${one.name} ${resultText(one.figure)}`)].join('\n');
    const strong = (text: string): Text => [{ kind: 'strong', text }];
    const same = key === before;
    const result = row(strong(say(name)), '', strong(resultText(figure)), same ? say('the same values') : own);
    before = key;
    const named = result.kind === 'cells' ? { ...result, id } : result;
    return same ? [named] : [named, ...inputRows(context, inputs)];
  });
}

/** What went in; values of one name from one place stand in one row, as the readings down a bore. */
function inputRows({ book, say }: ViewContext, inputs: Working['inputs']): readonly Row[] {
  const alike = inputs.map(({ symbol, name, figure }) => {
    const place = from(book, say, figure);
    return { symbol, name, place, value: resultText(figure), key: JSON.stringify([symbol, name, place]) };
  });
  return [...grouped(alike, ({ key }) => key).values()].flatMap((those): readonly Row[] => {
    const [first] = those;
    if (first === undefined) return [];
    return [row(say(first.name), first.symbol, those.map(({ value }) => value).join('; '), first.place)];
  });
}

/** A calculation of the list leads to its page; a rule of the book has none. */
function ruleText(say: ViewContext['say'], working: Working): Text {
  const known = calculationById(working.calculation);
  if (known === undefined) return '';
  return [{ kind: 'link', text: say(known.name), to: `page:${calculationFile(known.id)}` }];
}

/** Where an input came from: a record or a book, a row of a table, or another calculation. */
function from(book: ViewContext['book'], say: (words: string) => string, figure: Figure): Text {
  const { origin } = figure;
  if (origin.kind === 'published') {
    const link = { kind: 'link', text: origin.table, to: `page:tables/${origin.table}.html` } as const;
    return [`${say('table')} `, link, `, ${say('row')} ${origin.row}`];
  }
  if (origin.kind === 'worked out')
    return `${say('worked out')}: ${say(calculationById(origin.working.calculation)?.name ?? withDates(origin.working.formula))}`;
  const id = /^jobs\/(.+)\.md$/.exec(origin.at.file)?.[1];
  const job = id === undefined ? undefined : book.jobs.get(id);
  // What is common practice stands in no file that its reader has.
  if (origin.source !== undefined && origin.at.file.startsWith('src/')) return say(origin.source);
  const place: Text = job === undefined ? origin.at.file : [{ kind: 'link', text: job.title, to: `job:${job.id}` }];
  return joined([origin.source === job?.title ? undefined : origin.source, place], ', ');
}
