// The sheet that lies under a form: what the records have written into its boxes is left to the fields.
import type { Block, Cell, Row, Sheet } from '../sheet/sheet.ts';
import type { Form } from './form.ts';

/** The same sheet with empty boxes wherever the form has a field. */
export function underForm(sheet: Sheet, form: Form): Sheet {
  return { ...sheet, blocks: sheet.blocks.map((block) => emptied(block, form)) };
}

function emptied(block: Block, form: Form): Block {
  const has = (id: string | undefined): boolean => id !== undefined && form.field(id) !== undefined;
  switch (block.type) {
    case 'blanks':
      return {
        ...block,
        items: block.items.map(({ found, left, ...item }) => ({
          ...item,
          ...(found === undefined || has(item.id + '/found') ? {} : { found }),
          ...(left === undefined || has(item.id + '/left') ? {} : { left }),
        })),
      };
    case 'checklist':
      return { ...block, items: block.items.map((item) => (has(item.id) ? { ...item, done: false } : item)) };
    case 'table':
      return { ...block, rows: block.rows.map((row) => emptiedRow(row, has)) };
    default:
      return block;
  }
}

function emptiedRow(row: Row, has: (id: string | undefined) => boolean): Row {
  if (row.kind === 'band') return row;
  const unticked = (cell: Cell): Cell => (cell.done === true && has(cell.id) ? { ...cell, done: false } : cell);
  return { ...row, cells: row.cells.map(unticked) };
}
