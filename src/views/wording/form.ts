// A form of content as blocks: its lines by area, number and reason beside each, ticks, a value or a line to write on, and where it is asked for.
import { appliesTo } from '../../book/applies.ts';
import type { Form, FormLine } from '../../records/content-model.ts';
import type { Block, Cell, Column, Row, Text } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { column, joined, paragraphs, row, stack } from './blocks.ts';
import { cautionNamed, cautionRow } from './caution.ts';
import { count } from './count.ts';
import { askedByDate } from './first-use.ts';
import { ours } from './ours.ts';

/** What may be chosen beside a form. */
export interface FormChoice {
  /** Heads of the columns to write in; the first takes the readings. */
  readonly write: readonly string[];
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
  const numbered = choice.numbered || wanted.some((line) => line.number !== undefined);
  const columns: readonly Column[] = [
    ...ticksOf(form).map((tick) => column(say(tick), 1, 'centre')),
    ...(numbered ? [column(say('No.'), 1.2)] : []),
    column('', choice.write.length > 2 ? 5 : 9),
    ...writeHeads(context, wanted, choice).map((head) => column(head, 4)),
  ];
  const rows = wanted.flatMap((line, index): readonly Row[] => {
    const before = wanted[index - 1];
    const number = line.number ?? (choice.numbered ? count(index + 1) : '');
    return [
      ...(line.area === undefined || line.area === before?.area ? [] : [areaRow(ours(context, form.at, line.area))]),
      ...(line.caution === undefined || line.caution === before?.caution ? [] : cautionRow(context, line.caution)),
      row(
        ...ticksOf(form).map((_, at): Cell => ({
          box: 'tick',
          id: tickId(form, line, at),
          ...singly(context, form, line),
          ...(form.ticks.length > 1 ? { grades: tickId(form, line, 0) } : {}),
        })),
        ...(numbered ? [number] : []),
        { text: lineText(context, form, line), id: line.id },
        ...writeHeads(context, wanted, choice).map((_, at) => written(form, line, at)),
      ),
    ];
  });
  const table: Block = { type: 'table', columns, rows, empty: '', use: 'work' };
  return stack(formNote(context, form), table, sourceOf(context, form, wanted));
}

/** What is no more than common practice says so above the table; a source that is cited stands below it. */
function isCommon({ source }: Form): boolean {
  return /^common practice/i.test(source?.title ?? '');
}

/** What the form says of itself, above its lines. */
export function formNote(context: ViewContext, form: Form): Block | undefined {
  const note = form.note === undefined ? undefined : ours(context, form.at, form.note);
  const common = isCommon(form) ? `${ours(context, form.at, form.source?.title ?? '')}.` : undefined;
  const text = joined([note, common], ' ');
  return text === '' ? undefined : paragraphs(text);
}

function ticksOf(form: Form): readonly string[] {
  return form.ticks.length === 0 ? [''] : form.ticks;
}

function tickId(form: Form, line: FormLine, at: number): string {
  return at === 0 ? `form/${form.id}/${line.id}` : `form/${form.id}/${line.id}/${form.ticks[at] ?? ''}`;
}

/** A line at a WARNING, or one that is graded, is looked at and ticked by itself. */
function singly(context: ViewContext, form: Form, line: FormLine): Pick<Cell, 'singly'> {
  const caution = line.caution === undefined ? undefined : cautionNamed(context, line.caution);
  return form.ticks.length > 1 || caution?.grade === 'WARNING' ? { singly: true } : {};
}

function areaRow(area: string): Row {
  return { kind: 'band', text: [{ kind: 'strong', text: area }] };
}

/** The heads as chosen; where a line asks for a reading, the first says so. */
function writeHeads({ say }: ViewContext, wanted: readonly FormLine[], choice: FormChoice): readonly string[] {
  const units = wanted.some((line) => line.unit !== undefined);
  const [first, ...others] = choice.write.map((head) => say(head));
  if (!units) return first === undefined ? [] : [first, ...others];
  return [first === undefined ? say('Reading') : `${say('Reading')}; ${first}`, ...others];
}

/** A reading has a box with its unit; anything else has a line. */
function written(form: Form, line: FormLine, at: number): Cell {
  const more = at === 0 ? '' : `-${count(at + 1)}`;
  if (line.unit === undefined || at > 0) return { box: 'line', id: `form/${form.id}/${line.id}/words${more}` };
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
    source === undefined || isCommon(form)
      ? undefined
      : joined([`${say('From')}: ${source.title}`, source.edition, source.page, seen], ', ');
  const memory = wanted.some(isMemory)
    ? say('Memory: from memory, not read in the source; look it up before you rely on it.')
    : undefined;
  const texts = [from, memory].filter((text): text is Text => text !== undefined);
  return texts.length === 0 ? undefined : paragraphs(joined(texts, '. '));
}
