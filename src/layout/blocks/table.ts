// A table of the sheet, brought into the one shape of all tables.
import type { Cell, Row, TableBlock } from '../../sheet/sheet.ts';
import { big, half, leading, least } from '../scale.ts';
import type { Setting } from '../setting.ts';
import { firstSpaced, spaced, type Slab } from '../slab.ts';
import type { CellModel, RowModel, TableModel } from '../table/model.ts';
import { tableSlabs } from '../table/table.ts';
import { captionSlabs } from './caption.ts';

export function* tableBlockSlabs(block: TableBlock, setting: Setting): Generator<Slab> {
  const caption = block.caption === undefined ? [] : spaced(captionSlabs(block.caption, setting), leading);
  yield* caption;
  if (block.rows.length === 0) {
    yield* spaced(captionSlabs(block.empty, setting, false), half);
    return;
  }
  const slabs = tableSlabs(model(block), setting);
  yield* caption.length === 0 ? firstSpaced(slabs, () => half) : slabs;
}

function model(block: TableBlock): TableModel {
  return {
    columns: block.columns.map((column) => ({ head: column.head, align: column.align ?? 'left', width: column.width })),
    rows: block.rows.map((row) => rowModel(row, block.use)),
    work: block.use === 'work',
    card: block.use === 'card',
    head: block.columns.some((column) => column.head !== ''),
    reads: 'table',
  };
}

function rowModel(row: Row, use: TableBlock['use']): RowModel {
  if (row.kind === 'band') return row;
  return {
    kind: 'cells',
    cells: row.cells.map((cell) => cellModel(cell, use)),
    ...(row.id === undefined ? {} : { id: row.id }),
  };
}

function cellModel(cell: Cell, use: TableBlock['use']): CellModel {
  const type = cell.big ? { type: big } : use === 'card' ? { type: least } : {};
  const parts = cell.text === undefined || cell.text === '' ? [] : [{ text: cell.text, ...type }];
  // Most cells hold words and nothing else.
  if (cell.box === undefined && cell.unit === undefined && cell.id === undefined)
    return { parts, done: cell.done ?? false };
  return {
    parts,
    ...(cell.box === undefined ? {} : { box: cell.box }),
    ...(cell.unit === undefined ? {} : { unit: cell.unit }),
    ...(cell.id === undefined ? {} : { id: cell.id }),
    ...(cell.box === 'write' && cell.written !== undefined ? { value: cell.written } : {}),
    done: cell.done ?? false,
  };
}
