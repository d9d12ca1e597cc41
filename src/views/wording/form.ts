// A form of content as blocks: its lines by area, number and reason beside each, ticks, a value or a line to write on, and where it is asked for.
import { appliesTo } from '../../book/applies.ts';
import type { Form, FormLine } from '../../records/content-model.ts';
import type { Block, Cell, Column, Row, Text } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { column, joined, paragraphs, row, stack } from './blocks.ts';
import { cautionRow } from './caution.ts';
import { askedByDate } from './first-use.ts';
import { ours } from './ours.ts';

/** What may be chosen beside a form. */
export interface FormChoice {
  /** Head of the column to write in; none when empty. */
  readonly write: string;
  /** Numbers the lines in their order, where the form has no official numbers. */
  readonly numbered: boolean;
}

/** Forms of content by their id; undefined where there is none, or it is not for this machine. */
export function formNamed({ book }: ViewContext, id: string | undefined): Form | undefined {
  const form = book.content.forms?.find((one) => one.id === id);
  if (form === undefined || !appliesTo(form.applies, book.records.machine.features)) return undefined;
  return form;
}

/** The lines of a form that are for this machine. */
export function linesOf({ book }: ViewContext, form: Form): readonly FormLine[] {
  const { features, firstUse } = book.records.machine;
  return form.lines.filter((line) => appliesTo(line.applies, features) && askedByDate(line, firstUse) !== 'no');
}

/** The table of a form and its source; nothing where no line is for this machine. */
export function formBlocks(context: ViewContext, form: Form, choice: FormChoice): readonly Block[] {
  const { say } = context;
  const wanted = linesOf(context, form);
  if (wanted.length === 0) return [];
  const ticks = form.ticks.length === 0 ? [''] : form.ticks;
  const shows = {
    numbers: choice.numbered || wanted.some((line) => line.number !== undefined),
    units: wanted.some((line) => line.unit !== undefined),
  };
  const columns: readonly Column[] = [
    ...ticks.map((tick) => column(say(tick), 1, 'centre')),
    ...(shows.numbers ? [column(say('No.'), 1.2)] : []),
    column('', 9),
    ...(shows.units || choice.write !== '' ? [column(writeHead(context, choice, shows.units), 4)] : []),
  ];
  const rows = wanted.flatMap((line, index): readonly Row[] => {
    const before = wanted[index - 1];
    const number = line.number ?? (choice.numbered ? String(index + 1) : '');
    const cells: readonly (Text | Cell)[] = [
      ...ticks.map((_, at): Cell => ({ box: 'tick', id: tickId(form, line, at) })),
      ...(shows.numbers ? [number] : []),
      { text: lineText(context, form, line), id: line.id },
      ...(shows.units || choice.write !== '' ? [written(form, line, choice)] : []),
    ];
    return [
      ...(line.area === undefined || line.area === before?.area ? [] : [areaRow(ours(context, form.at, line.area))]),
      ...(line.caution === undefined || line.caution === before?.caution ? [] : cautionRow(context, line.caution)),
      row(...cells),
    ];
  });
  const note: readonly Text[] = form.note === undefined ? [] : [ours(context, form.at, form.note)];
  const table: Block = { type: 'table', columns, rows, empty: '', use: 'work' };
  return stack(note.length === 0 ? undefined : paragraphs(...note), table, sourceOf(context, form, wanted));
}

function tickId(form: Form, line: FormLine, at: number): string {
  return at === 0 ? `form/${form.id}/${line.id}` : `form/${form.id}/${line.id}/${form.ticks[at] ?? ''}`;
}

function areaRow(area: string): Row {
  return { kind: 'band', text: [{ kind: 'strong', text: area }] };
}

/** A reading has a box with its unit; anything else has a line, where one is asked for. */
function writeHead({ say }: ViewContext, choice: FormChoice, units: boolean): string {
  const heads = [...(units ? [say('Reading')] : []), ...(choice.write === '' ? [] : [say(choice.write)])];
  return heads.join('; ');
}

function written(form: Form, line: FormLine, choice: FormChoice): Cell {
  if (line.unit === undefined) return choice.write === '' ? {} : { box: 'line' };
  return { box: 'write', unit: line.unit, id: `form/${form.id}/${line.id}/value` };
}

/** The line, what speaks against it, and a mark where it is not as sure as the rest of the form. */
function lineText(context: ViewContext, form: Form, line: FormLine): Text {
  const { say, book } = context;
  const unsure = askedByDate(line, book.records.machine.firstUse) === 'not known';
  const against = line.against === undefined ? undefined : ours(context, form.at, line.against);
  const marks = [
    ...(unsure ? [say('by date of first use, which is not known so closely')] : []),
    ...(isMemory(line) ? [say('memory')] : []),
  ];
  const mark = marks.length === 0 ? undefined : `(${marks.join('; ')})`;
  const what: Text = [{ kind: 'strong', text: ours(context, form.at, line.text) }];
  return joined([joined([against === undefined ? ours(context, form.at, line.text) : what, against], ': '), mark], ' ');
}

function isMemory(line: FormLine): boolean {
  return /^memory\b/.test(line.source ?? '');
}

/** Title, edition and the day it was looked at; what rests on memory says so. */
function sourceOf(context: ViewContext, form: Form, wanted: readonly FormLine[]): Block | undefined {
  const { say } = context;
  const { source, seen } = form;
  const from =
    source === undefined
      ? undefined
      : joined([`${say('From')}: ${source.title}`, source.edition, source.page, seen], ', ');
  const memory = wanted.some(isMemory)
    ? say('memory: from memory, not read in the source; look it up before you rely on it.')
    : undefined;
  const texts = [from, memory].filter((text): text is Text => text !== undefined);
  return texts.length === 0 ? undefined : paragraphs(...texts);
}
