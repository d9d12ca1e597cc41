// A single that somebody found in a shed, in one machine.yaml, with the few files that a test is about.
import { makeBook } from '../../src/book/make.ts';
import { composePages } from '../../src/compose/pages.ts';
import { composeSheets } from '../../src/compose/sheets.ts';
import { readContent } from '../../src/records/read-content.ts';
import { readRecords } from '../../src/records/read.ts';
import { blockText, sheetText } from '../goldens/sheet-text.ts';
import { contentWith, day, type TestBinder } from './binder.ts';

export const machineFile = `splitpin: 1
name: Quilverne Tansy 197
make: Quilverne
model: Tansy 197
year: 1958
first use: 1958-06
numbers:
  frame: {stamped: QT-20931, known by: read from the headstock}
features:
  stroke: two
  cylinders: 1
  lubrication: premix
  ignition: magneto
  trigger: points
  volts: 6 V
  battery: no
  lamps: yes
  front brake: drum
  rear brake: drum
  final drive: chain
  wheels: spoked
geometry:
  bore: 60 mm
  stroke: 69.7 mm
clock:
  - {id: old-clock, unit: mi, digits: 5, from: {date: 1958-06, reads: 0 mi}, state: working}
units: imperial
spelling: uk
paper: a4
currency: GBP
`;

/** `maker/book.yaml` with the entries of a test. */
export const makerFile = (entries: string): string =>
  `splitpin: 1\nsource: {title: Rider's handbook, edition: 1957}\n${entries}\n`;

/** A record of the day of its file's name. */
export const record = (head: string, body = ''): string => `---\n${head}\n---\n${body}\n`;

const content = readContent(contentWith());

/** The binder of the files, `machine.yaml` being the one above unless given. */
export function smallBinder(given: Readonly<Record<string, string>>, today = '2026-11-25'): TestBinder {
  const files = Object.entries({ 'machine.yaml': machineFile, ...given }).map(([file, text]) => ({ file, text }));
  const read = readRecords(files, [], []);
  if (read.value === undefined) throw new Error('no machine could be read');
  const book = makeBook(read.value, content.value, day(today));
  const sheets = composeSheets(book, {});
  return {
    book,
    sheets: sheets.value,
    pages: composePages(book, sheets.value),
    problems: [...read.problems, ...sheets.problems],
  };
}

/** A sheet as text; throws when the binder has none of that name. */
export function sheetSays(binder: TestBinder, id: string): string {
  const found = binder.sheets.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no sheet ${id}: ${binder.sheets.map((one) => one.id).join(', ')}`);
  return sheetText(found).replaceAll('\u00a0', ' ');
}

/** A page as text. */
export function pageSays(binder: TestBinder, file: string): string {
  const found = binder.pages.find((one) => one.file === file);
  if (found === undefined) throw new Error(`no page ${file}`);
  return found.make().blocks.map(blockText).join('\n\n').replaceAll('\u00a0', ' ');
}

/** Codes of what is to be looked at. */
export const queryCodes = (binder: TestBinder): readonly string[] => binder.book.queries.map((one) => one.code);
