// A table as slabs: a head that is repeated on every page, rows that stay whole, lines across that stay with what follows.
import { cautionSlab } from '../caution-line.ts';
import type { Tag } from '../placed.ts';
import { firm, half, heavy, least, text as textType, thin } from '../scale.ts';
import { heightOf, setLines, type Align, type SetLine } from '../set-line.ts';
import { linesOf, under, widthOf, type Setting } from '../setting.ts';
import type { Slab } from '../slab.ts';
import { placeColumns, type ColumnPlace, type Tier } from './columns.ts';
import { drawRow } from './draw-row.ts';
import type { TableModel } from './model.ts';
import { columnNeeds, measureRows, type MeasuredRow } from './prepare.ts';
import { setRow, splitRow, useOf } from './set-row.ts';

/** Sets a table; a table without rows gives no slabs. */
export function* tableSlabs(table: TableModel, setting: Setting): Generator<Slab> {
  const rows = measureRows(table, setting);
  const labels = table.columns.map((column) => (column.head === '' ? 0 : widthOf(column.head, least, setting) + 5));
  const tiers = placeColumns(table, columnNeeds(table, rows, setting), labels, setting.width);
  const whole = under(setting.section, table.reads === 'table' ? 'Table' : 'L');
  const names = table.head ? headCells(table, tiers, setting) : undefined;
  const head = names && headSlab(names, table, tiers, setting, whole);
  const again = names === undefined ? {} : { again: headSlab(names, table, tiers, setting, undefined) };
  const most = setting.height - (head?.height ?? 0);
  if (head !== undefined) yield head;
  const around = { table, tiers, setting, whole, most, again };
  const last = rows.length - 1;
  const few = rows.length <= (table.uprights ? 8 : 4) && isLow(rows, around);
  for (const [index, row] of rows.entries()) {
    // A short table stays whole, and the last row of a long one never stands alone on a page.
    const keep = (few && index < last) || index === last - 1;
    yield* rowSlabs(row, around, keep);
  }
}

/** A few tall rows may take most of a page, and would leave the one before it white. */
const lowShare = 0.4;

function isLow(rows: readonly MeasuredRow[], around: Around): boolean {
  let height = 0;
  for (const row of rows) for (const slab of rowSlabs(row, around, false)) height += slab.height;
  return height <= around.setting.height * lowShare;
}

interface Around {
  readonly table: TableModel;
  readonly tiers: readonly Tier[];
  readonly setting: Setting;
  readonly whole: Tag;
  readonly most: number;
  /** The head as it is repeated, where there is one. */
  readonly again: Pick<Slab, 'again'>;
}

/** Slabs of a row; `keep` keeps it with the next. */
function* rowSlabs(measured: MeasuredRow, around: Around, keep: boolean): Generator<Slab> {
  const { table, setting, again } = around;
  if (measured.kind === 'band') {
    for (const slab of bandSlabs(measured.row, around)) yield { ...slab, ...again, keep: keep || (slab.keep ?? false) };
    return;
  }
  const { row } = measured;
  const parts = splitRow(setRow(measured, around.tiers, table, setting), around.most, useOf(table), setting);
  for (const [index, part] of parts.entries()) {
    const style = {
      work: table.work,
      width: setting.width,
      uprights: table.uprights ?? false,
      setting,
      tagOf: cellTags(around),
    };
    const anchor = index === 0 ? row.id : undefined;
    yield {
      height: part.reduce((sum, tier) => sum + tier.height, 0),
      keep: keep || (row.keep ?? false),
      ...again,
      draw: (x, y, out) => {
        if (anchor !== undefined) out.push({ kind: 'anchor', id: anchor, x, y });
        drawRow(part, x, y, style, out);
      },
    };
  }
}

/** The tags of one row, made as its cells ask for them. */
function cellTags({ table, whole }: Around): (column: number) => Tag {
  const row = under(whole, table.reads === 'table' ? 'TR' : 'LI');
  if (table.reads === 'list') {
    const body = under(row, 'LBody');
    return () => body;
  }
  const made = new Map<number, Tag>();
  return (column) => {
    const known = made.get(column);
    if (known !== undefined) return known;
    const tag = table.rowHeads && column === 0 ? under(row, 'TH', { heads: 'Row' }) : under(row, 'TD');
    made.set(column, tag);
    return tag;
  };
}

function* bandSlabs(row: Extract<MeasuredRow, { kind: 'band' }>['row'], around: Around): Generator<Slab> {
  const { table, setting, whole } = around;
  const line = under(whole, table.reads === 'table' ? 'TR' : 'LI');
  const tag = table.reads === 'table' ? under(line, 'TD', { span: table.columns.length }) : under(line, 'LBody');
  if (row.grade !== undefined) {
    const text = typeof row.text === 'string' ? row.text : row.text;
    for (const slab of cautionSlab(row.grade, text, setting, tag, around.most, table.card)) {
      const white = table.card === true ? 2 : 4;
      yield { ...slab, height: slab.height + white, draw: (x, y, out) => slab.draw(x, y + white - 1, out), keep: true };
    }
    return;
  }
  const lines = linesOf(row.text, textType, setting.width, setting, 'strong');
  const white = table.card === true ? 2 : half;
  const height = heightOf(lines) + white + (table.card === true ? 1 : 3);
  if (height > around.most) {
    yield* lines.map((each) => ({
      height: each.type.leading,
      draw: (x: number, y: number, out: Parameters<Slab['draw']>[2]) =>
        void setLines([each], { x, y, width: setting.width, tag }, out),
    }));
    return;
  }
  yield {
    height,
    keep: true,
    draw: (x, y, out) => {
      setLines(lines, { x, y: y + white, width: setting.width, tag }, out);
      out.push({ kind: 'line', x1: x, y1: y + height, x2: x + setting.width, y2: y + height, weight: thin });
    },
  };
}

function lower(row: Tag, tiers: readonly Tier[]): readonly Tag[] {
  return tiers.slice(1).flatMap((tier) => tier.map(() => under(row, 'TH', { heads: 'Column' })));
}

interface HeadCell {
  readonly place: ColumnPlace;
  readonly lines: readonly SetLine[];
  readonly align: Align;
}

/** Names of the columns of the first tier. */
function headCells(table: TableModel, tiers: readonly Tier[], setting: Setting): readonly HeadCell[] {
  return (tiers[0] ?? []).map((place) => ({
    place,
    lines: linesOf(table.columns[place.index]?.head ?? '', least, place.width, setting),
    align: table.columns[place.index]?.align ?? 'left',
  }));
}

/** The head: names of the columns at the foot of their lines, a firm rule below. Without a tag it is a repeated one. */
function headSlab(
  names: readonly HeadCell[],
  table: TableModel,
  tiers: readonly Tier[],
  setting: Setting,
  whole: Tag | undefined,
): Slab {
  const row = whole === undefined ? undefined : under(whole, 'TR');
  const cells = names.map((name) => ({ ...name, tag: row && under(row, 'TH', { heads: 'Column' }) }));
  const tall = cells.reduce((most, cell) => Math.max(most, heightOf(cell.lines)), 0);
  const height = tall + 4;
  return {
    height,
    keep: true,
    draw: (x, y, out) => {
      for (const { place, lines, align, tag } of cells) {
        if (lines.length === 0 && tag !== undefined) out.push({ kind: 'empty', tag });
        const top = y + tall - heightOf(lines);
        setLines(lines, { x: x + place.x, y: top, width: place.width, align, tag }, out);
      }
      // Columns set below the others carry their names beside their cells; reading aids are told that they are there.
      if (row !== undefined) for (const tag of lower(row, tiers)) out.push({ kind: 'empty', tag });
      const weight = table.work ? heavy / 2 : firm;
      out.push({ kind: 'line', x1: x, y1: y + height, x2: x + setting.width, y2: y + height, weight });
    },
  };
}
