// The records as tables for a spreadsheet: one line an entry, every value as it was written, with its unit.
import type { Book } from '../book/book.ts';
import { printFigure } from '../figure/print.ts';
import { formatMoney } from '../quantity/money-arithmetic.ts';
import type { Job, Value } from '../records/model.ts';
import { csvText } from './csv-table.ts';

export interface NamedTable {
  /** File name below the folder of tables. */
  readonly file: string;
  readonly text: string;
}

/** All tables of a book; one without a line is made as well, so that nobody looks for it. */
export function recordTables(book: Book): readonly NamedTable[] {
  const { jobs } = book.records;
  const each = (rows: (job: Job) => readonly (readonly string[])[]): readonly (readonly string[])[] =>
    jobs.flatMap((job) => rows(job).map((row) => [job.id, job.date.from, ...row]));
  const table = (name: string, head: readonly string[], rows: readonly (readonly string[])[]): NamedTable => ({
    file: `${name}.csv`,
    text: csvText(head, rows),
  });
  return [
    table('jobs', ['record', 'from', 'to', 'title', 'kind', 'state', 'odometer', 'hands'], jobs.map(jobRow)),
    table('work', ['record', 'date', 'what', 'thing', 'bag', 'torque', 'quantity', 'note'], each(workRows)),
    table(
      'readings',
      ['record', 'date', 'item', 'when', 'position', 'value', 'condition', 'instrument', 'note'],
      each(readingRows),
    ),
    table(
      'parts',
      [
        'record',
        'date',
        'part',
        'number',
        'class',
        'count',
        'state',
        'from',
        'price',
        'moved from',
        'moved to',
        'worth',
        'instead of',
        'original kept',
      ],
      each(partRows),
    ),
    table('findings', ['record', 'date', 'finding', 'seen', 'weight', 'became', 'until'], each(findingRows)),
    table('money', ['record', 'date', 'kind', 'amount', 'for', 'group'], each(moneyRows)),
    table('due', ['service', 'state', 'due on', 'due at', 'why'], book.due.map(dueRow)),
  ];
}

function jobRow({ id, date, title, kind, state, odometer, hands }: Job): readonly string[] {
  return [id, date.from, date.to, title, kind, state, odometer?.text ?? '', hands.join('; ')];
}

function workRows({ work }: Job): readonly (readonly string[])[] {
  return work.map((line) => [
    line.verb,
    line.thing,
    line.bag ?? '',
    line.torque?.text ?? '',
    line.quantity?.text ?? '',
    line.note ?? '',
  ]);
}

function readingRows({ readings }: Job): readonly (readonly string[])[] {
  return readings.flatMap(({ item, found, left, condition, instrument = '', note = '' }) => {
    const row = (when: string, { position, value }: { position: string; value: Value }): readonly string[] => [
      item,
      when,
      position,
      valueOf(value),
      condition.join('; '),
      instrument,
      note,
    ];
    return [...found.map((one) => row('found', one)), ...left.map((one) => row('left', one))];
  });
}

function valueOf(value: Value): string {
  if (value.kind === 'unknown') return '?';
  return value.kind === 'words' ? value.text : value.written.text;
}

function partRows({ parts }: Job): readonly (readonly string[])[] {
  return parts.map((part) => [
    part.part,
    part.number ?? part.bookNumber ?? '',
    part.class ?? '',
    String(part.count),
    part.state,
    part.from ?? '',
    part.price === undefined ? '' : formatMoney(part.price),
    part.movedFrom ?? '',
    part.movedTo ?? '',
    part.worth === undefined ? '' : formatMoney(part.worth),
    part.insteadOf ?? '',
    part.originalKept ?? '',
  ]);
}

function findingRows({ findings }: Job): readonly (readonly string[])[] {
  return findings.map(({ id, saw, weight, became, until }) => [id, saw, weight, became, until ?? '']);
}

function moneyRows({ money }: Job): readonly (readonly string[])[] {
  return money.map(({ kind, amount, for: what, group }) => [kind, formatMoney(amount), what, group]);
}

function dueRow({ service, state, dueDay, dueOnClock, why }: Book['due'][number]): readonly string[] {
  return [service.item, state, dueDay ?? '', dueOnClock === undefined ? '' : printFigure(dueOnClock), why];
}
