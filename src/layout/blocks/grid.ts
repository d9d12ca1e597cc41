// An empty ruled grid to write in.
import type { GridBlock } from '../../sheet/sheet.ts';
import { half, leading } from '../scale.ts';
import type { Setting } from '../setting.ts';
import { firstSpaced, spaced, type Slab } from '../slab.ts';
import type { CellModel, RowModel } from '../table/model.ts';
import { tableSlabs } from '../table/table.ts';
import { captionSlabs } from './caption.ts';

export function* gridSlabs(block: GridBlock, setting: Setting): Generator<Slab> {
  const caption = block.caption === undefined ? [] : spaced(captionSlabs(block.caption, setting), leading);
  yield* caption;
  const count = Math.max(block.rows, block.filled?.length ?? 0);
  const rows = Array.from({ length: count }, (_, index): RowModel => {
    const texts = block.filled?.[index] ?? [];
    return {
      kind: 'cells',
      cells: block.columns.map((_column, at) => ({
        parts: texts[at] === undefined ? [] : [{ text: texts[at] }],
        ...blankOf(block, index + 1, at + 1),
      })),
    };
  });
  const columns = block.columns.map((column) => ({
    head: column.head,
    align: column.align ?? ('left' as const),
    width: column.width,
  }));
  const slabs = tableSlabs({ columns, rows, work: true, head: true, uprights: true, reads: 'table' }, setting);
  yield* caption.length === 0 ? firstSpaced(slabs, () => half) : slabs;
}

/** Each cell is a blank, or each row is one. */
function blankOf({ id, rowsAsk }: GridBlock, row: number, column: number): Pick<CellModel, 'id' | 'across'> {
  if (id === undefined) return {};
  if (rowsAsk === undefined) return { id: `${id}/${String(row)}/${String(column)}` };
  return column === 1 ? { id: `${id}/${String(row)}`, across: true } : {};
}
