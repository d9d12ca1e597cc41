// A job planned: the text of a record with its procedures, what is to be read, parts that are used up, the bags that are free next, and its steps as a comment.
import { appliesTo } from '../book/applies.ts';
import { nextBag } from '../book/bags.ts';
import type { Book } from '../book/book.ts';
import type { Day } from '../quantity/day.ts';
import type { Procedure } from '../records/content-model.ts';
import type { Features, JobKind } from '../records/model.ts';
import { anchorOf } from './anchor.ts';
import { cleanAnswer } from './clean-answer.ts';
import { flowText, scalarText } from './flow-text.ts';

export interface Planned {
  /** Procedures of this machine, in the order of the work. */
  readonly procedures: readonly Procedure[];
  readonly title?: string;
  readonly date: Day;
  readonly kind?: JobKind;
  readonly purpose?: string;
  readonly hands?: readonly string[];
  /** What else is to be read and what else is wanted. */
  readonly readings?: readonly string[];
  readonly parts?: readonly string[];
  /** Name of the record; without it, date and title. */
  readonly name?: string;
}

/** Procedures of content that are for this machine, by title. */
export function proceduresFor(book: Book): readonly Procedure[] {
  const { features } = book.records.machine;
  return [...book.content.procedures.values()].filter((one) => appliesTo(one.applies, features));
}

/** File and text of the record. The file has a name that no record of the machine has, whatever the case of its letters. */
export function planRecord(
  book: Book,
  planned: Planned,
): { readonly id: string; readonly file: string; readonly text: string } {
  const title = cleanAnswer(planned.title ?? planned.procedures.map((one) => one.title).join('; '));
  const id = freeName(book, planned.name ?? `${planned.date}-${anchorOf(title)}`);
  const { features } = book.records.machine;
  const bags = bagsOf(planned.procedures, features);
  const lines = [
    '---',
    `title: ${scalarText(title)}`,
    `date: ${planned.date}`,
    `kind: ${planned.kind ?? planned.procedures.find((one) => one.kind !== undefined)?.kind ?? 'repair'}`,
    'state: planned',
    ...line('for', planned.purpose),
    ...list('hands', planned.hands ?? []),
    ...list(
      'procedures',
      planned.procedures.map((one) => one.id),
    ),
    ...(bags === 0 ? [] : [`bags from: ${String(freeBag(book))}`]),
    ...readingLines(book, planned),
    ...partLines(book, planned),
    ...stepLines(book, planned.procedures),
    '---',
  ];
  return { id, file: `jobs/${id}.md`, text: `${lines.join('\n')}\n` };
}

function line(key: string, words: string | undefined): readonly string[] {
  return words === undefined || words === '' ? [] : [`${key}: ${scalarText(cleanAnswer(words))}`];
}

function list(key: string, words: readonly string[]): readonly string[] {
  return words.length === 0 ? [] : [`${key}: ${flowText(words.map(cleanAnswer))}`];
}

function stepsIn(procedure: Procedure, way: 'steps' | 'assembly', features: Features): Procedure['steps'] {
  return procedure[way].filter((step) => appliesTo(step.applies, features));
}

function bagsOf(procedures: readonly Procedure[], features: Features): number {
  return procedures.flatMap((one) => stepsIn(one, 'steps', features)).filter((step) => step.bag).length;
}

/** The next number after every bag that was ever filled, that a record keeps for itself, or that an open job’s sheet prints. */
function freeBag(book: Book): number {
  const { features } = book.records.machine;
  const filled = book.records.jobs.flatMap((job) => [...job.work, ...(job.toDo ?? [])].map((entry) => entry.bag));
  const printed = book.plans.map(({ bagFrom, procedures }) => bagFrom + bagsOf(procedures, features) - 1);
  const kept = book.records.jobs.flatMap((job) => job.bagsFrom ?? []);
  return nextBag([...filled, ...[...printed, ...kept].map(String)]);
}

/** What the procedures measure and set of what this machine has, once, as they come to it; then what was asked for besides. */
function readingLines(book: Book, { procedures, readings = [] }: Planned): readonly string[] {
  const { features } = book.records.machine;
  const items = procedures.flatMap((one) => [
    ...(['steps', 'assembly'] as const).flatMap((way) =>
      stepsIn(one, way, features).flatMap((step) => [...step.measure, ...step.set]),
    ),
    ...one.measure,
  ]);
  const known = items.filter((item) => book.limits.has(item) || book.settings.has(item));
  const all = [...new Set([...known, ...readings.map(cleanAnswer)])].filter((item) => item !== '');
  return all.length === 0 ? [] : ['readings:', ...all.map((item) => `  - ${flowText({ item })}`)];
}

/** What the procedures use up, and fasteners that are used once: to be got before the work. */
function partLines(book: Book, { procedures, parts = [] }: Planned): readonly string[] {
  const { features } = book.records.machine;
  const used = procedures.flatMap((one) =>
    (one.uses ?? []).flatMap(({ part, count = 1, perCylinder, applies }) =>
      part === undefined || !appliesTo(applies, features)
        ? []
        : [{ part, count: perCylinder ? count * features.cylinders : count }],
    ),
  );
  const ids = new Set(procedures.flatMap((one) => [...one.steps, ...one.assembly].flatMap((step) => step.fasteners)));
  const once = [...ids].flatMap((id) => {
    const fastener = book.fasteners.get(id);
    return fastener?.singleUse === true ? [{ part: `${fastener.name}, new`, count: fastener.count ?? 1 }] : [];
  });
  const wanted = [...used, ...once, ...parts.map((part) => ({ part: cleanAnswer(part), count: 1 }))];
  if (wanted.length === 0) return [];
  const lines = wanted.map(({ part, count }) =>
    flowText({ part, ...(count === 1 ? {} : { count: String(count) }), state: 'wanted' }),
  );
  return ['parts:', ...lines.map((text) => `  - ${text}`)];
}

/** The steps as the sheets print them. A comment: it is no data, and the sheets stay right when content changes. */
function stepLines(book: Book, procedures: readonly Procedure[]): readonly string[] {
  const { features } = book.records.machine;
  let bag = freeBag(book);
  const said = (step: Procedure['steps'][number], index: number): string => {
    const into = step.bag ? `; bag ${String(bag)}` : '';
    if (step.bag) bag += 1;
    return `#   ${String(index + 1).padStart(2)}  ${cleanAnswer(step.do)}${into}`;
  };
  const off = procedures.flatMap((one) => stepsIn(one, 'steps', features)).map(said);
  const on = procedures
    .flatMap((one) => stepsIn(one, 'assembly', features))
    .map((step, index) => said({ ...step, bag: false }, index));
  return [
    ...(off.length === 0 ? [] : ['# Off, as its sheet prints it:', ...off]),
    ...(on.length === 0 ? [] : ['# Together again:', ...on]),
  ];
}

function freeName(book: Book, wanted: string): string {
  const taken = new Set(
    [...book.records.jobs.map((job) => job.file), ...book.records.unread.map((one) => one.file)].map((file) =>
      file.toLowerCase(),
    ),
  );
  const isTaken = (name: string): boolean => taken.has(`jobs/${name}.md`.toLowerCase());
  if (!isTaken(wanted)) return wanted;
  let next = 2;
  while (isTaken(`${wanted}-${String(next)}`)) next += 1;
  return `${wanted}-${String(next)}`;
}
