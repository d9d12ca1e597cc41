// An evening in the garage as a test: a few small records in, the sheets and pages out as a person reads them.
import { build, readContent, type Binder } from '../../src/build.ts';
import { readContentFolder } from '../../src/disk.ts';
import type { Problem } from '../../src/problem/problem.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import type { Block } from '../../src/sheet/sheet.ts';
import { blockText } from '../goldens/sheet-text.ts';

const content = readContent(readContentFolder());

export interface Evening {
  readonly book: Binder['book'];
  readonly problems: readonly Problem[];
  /** A sheet as text, one space for every space. */
  readonly sheet: (id: string) => string;
  readonly page: (file: string) => string;
  readonly codes: readonly string[];
}

const usualFeatures: Readonly<Record<string, string>> = {
  stroke: 'two',
  cylinders: '1',
  lubrication: 'premix',
  ignition: 'magneto',
  trigger: 'points',
  battery: 'no',
  lamps: 'yes',
  'front brake': 'drum',
  'rear brake': 'drum',
  'final drive': 'chain',
  wheels: 'spoked',
};

const usualMachine: Readonly<Record<string, string>> = {
  splitpin: '1',
  name: 'Larkmoor Wagtail 125',
  make: 'Larkmoor',
  model: 'Wagtail 125',
  year: '1974',
  numbers: '{frame: {stamped: LW125-01234, known by: headstock}}',
  clock: '[{id: first-clock, unit: km, digits: 5, from: {date: 1974-05-01, reads: 0 km}}]',
  currency: 'GBP',
};

function keyed(lines: Readonly<Record<string, string>>, join: string): string {
  return Object.entries(lines)
    .map(([key, value]) => `${key}: ${value}`)
    .join(join);
}

/** machine.yaml of a two-stroke trail machine, with the lines and features that a test speaks of in place of the usual ones. */
export function machineFile(
  lines: Readonly<Record<string, string>> = {},
  features: Readonly<Record<string, string>> = {},
): string {
  const all = `{${keyed({ ...usualFeatures, ...features }, ', ')}}`;
  return `${keyed({ ...usualMachine, features: all, ...lines }, '\n')}\n`;
}

/** One record: front matter without its fences; title, kind and state are filled in where a test does not speak of them. */
export function record(id: string, lines: string): string {
  const said = (key: string): boolean => new RegExp(`^${key}:`, 'mu').test(lines);
  const usual = [
    ['title', id],
    ['date', id.slice(0, 10)],
    ['kind', 'repair'],
    ['state', 'done'],
    ['hands', '[owner]'],
  ] as const;
  const rest = usual.filter(([key]) => !said(key)).map(([key, value]) => `${key}: ${value}`);
  return `---\n${[...rest, lines.trim()].join('\n')}\n---\n`;
}

/** Blocks as text, one space for every space. */
export function plainText(blocks: readonly Block[]): string {
  return blocks
    .map(blockText)
    .join('\n')
    .replaceAll(/[\u00a0\u2009\u202f]/gu, ' ');
}

/** The binder of a machine, its books and its records at `today`; only a record that is wrong on purpose may raise a problem. */
export function evening(
  today: string,
  jobs: Readonly<Record<string, string>>,
  more: {
    readonly machine?: string;
    readonly maker?: string;
    readonly instruments?: string;
    readonly workshop?: string;
  } = {},
): Evening {
  const files = [
    { file: 'machine.yaml', text: more.machine ?? machineFile() },
    ...(more.maker === undefined ? [] : [{ file: 'maker/book.yaml', text: more.maker }]),
    ...(more.workshop === undefined ? [] : [{ file: 'workshop.yaml', text: more.workshop }]),
    ...(more.instruments === undefined ? [] : [{ file: 'instruments.yaml', text: more.instruments }]),
    ...Object.entries(jobs).map(([id, lines]) => ({ file: `jobs/${id}.md`, text: record(id, lines) })),
  ];
  const day = readDay(today);
  if (!day.ok) throw new Error(day.why.message);
  const made = build({ files, assets: [], shared: [], content, before: [], today: day.value, workings: true });
  if (made.value === undefined) throw new Error(made.problems.map((one) => one.message).join('\n'));
  const { book, sheets, pages } = made.value;
  return {
    book,
    problems: made.problems,
    codes: made.problems.map((one) => one.code),
    sheet: (id) =>
      plainText(
        sheets.find((one) => one.id === id)?.blocks ??
          lost(
            id,
            sheets.map((one) => one.id),
          ),
      ),
    page: (file) =>
      plainText(
        pages.find((one) => one.file === file)?.make().blocks ??
          lost(
            file,
            pages.map((one) => one.file),
          ),
      ),
  };
}

function lost(id: string, among: readonly string[]): never {
  throw new Error(`there is no ${id} among ${among.join(', ')}`);
}
