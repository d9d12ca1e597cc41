// Short ways to write the blocks that nearly every view uses.
import type {
  Block,
  Cell,
  Column,
  FactsBlock,
  HeadingBlock,
  Inline,
  ProseBlock,
  Row,
  TableBlock,
  Text,
} from '../../sheet/sheet.ts';

/** A heading with an anchor. Level 1 is kept for the parts of a binder. */
export function heading(level: 1 | 2 | 3, text: Text, id: string): HeadingBlock {
  return { type: 'heading', level, text, id };
}

/** One or more plain paragraphs. */
export function paragraphs(...texts: readonly Text[]): ProseBlock {
  return { type: 'prose', paragraphs: texts.map((text) => ({ kind: 'paragraph', text })) };
}

/** A list of short lines under one another. */
export function lines(texts: readonly Text[]): ProseBlock {
  const items = texts.map((text) => [{ kind: 'paragraph', text } as const]);
  return { type: 'prose', paragraphs: [{ kind: 'list', ordered: false, items }] };
}

export type Fact = FactsBlock['facts'][number];

/** A fact, or nothing when its value is not there: spread it into a list of facts. */
export function fact(name: string, value: Text | undefined, note?: Text): readonly Fact[] {
  if (value === undefined || value.length === 0) return [];
  return [note === undefined ? { name, value } : { name, value, note }];
}

/** A fact of several things: a line each on a screen, one after the other on paper. Nothing where there is none. */
export function factOfLines(name: string, lines: readonly Text[]): readonly Fact[] {
  if (lines.length < 2) return fact(name, lines[0]);
  return [{ name, value: joined(lines), lines }];
}

/** A row of text cells. */
export function row(...texts: readonly (Text | Cell)[]): Row {
  return { kind: 'cells', cells: texts.map(cell) };
}

function cell(of: Text | Cell): Cell {
  if (typeof of === 'string') return { text: of };
  return isText(of) ? { text: of } : of;
}

function isText(of: Text | Cell): of is readonly Inline[] {
  return Array.isArray(of);
}

/** Struck through: what was read and is corrected elsewhere. */
export function struck(text: string): Text {
  return text === '' ? '' : [{ kind: 'struck', text }];
}

/** A column of a table: head, relative width, and how it is set. */
export function column(head: string, width: number, align: Column['align'] = 'left'): Column {
  return { head, width, align };
}

/** A table to read without the columns that no row has anything in; one without rows stays as it is. */
export function filledOnly(table: TableBlock): TableBlock {
  const rows = table.rows.flatMap((one) => (one.kind === 'cells' ? [one.cells] : []));
  const filled = table.columns.map((_, at) => rows.some((cells) => isFilled(cells[at])));
  if (rows.length === 0 || filled.every((one) => one)) return table;
  return {
    ...table,
    columns: table.columns.filter((_, at) => filled[at]),
    rows: table.rows.map((one) =>
      one.kind === 'cells' ? { ...one, cells: one.cells.filter((_, at) => filled[at]) } : one,
    ),
  };
}

function isFilled(cell: Cell | undefined): boolean {
  return cell !== undefined && ((cell.text?.length ?? 0) > 0 || cell.box !== undefined || cell.shows !== undefined);
}

/** Puts pieces of a line together, with a separator between those that are there. */
export function joined(pieces: readonly (Text | undefined)[], between = '; '): Text {
  let text = '';
  for (const piece of pieces) {
    if (piece === undefined || piece.length === 0) continue;
    if (typeof piece !== 'string') return joinedInlines(pieces, between);
    text = text === '' ? piece : text + between + piece;
  }
  return text;
}

/** Some of the pieces have marks or links in them. */
function joinedInlines(pieces: readonly (Text | undefined)[], between: string): readonly Inline[] {
  const there = pieces.filter((piece): piece is Text => piece !== undefined && piece.length > 0);
  return there.flatMap((piece, index): readonly Inline[] => {
    const inlines: readonly Inline[] = typeof piece === 'string' ? [piece] : piece;
    return index === 0 ? inlines : [between, ...inlines];
  });
}

/** Blocks in order, without those that are not there. */
export function stack(...blocks: readonly (Block | readonly Block[] | undefined)[]): readonly Block[] {
  return blocks.flatMap((block) => block ?? []);
}

/** An anchor of a free text: small letters, digits and hyphens. */
export function anchor(...names: readonly string[]): string {
  const plain = names.join('-').normalize('NFKD').toLowerCase();
  return plain.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '') || 'part';
}

/** First letter large, as a sentence begins. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
