// The measuring table: what to measure, what it should be, two boxes to write in: as found, as left.
import type { BlankRow, BlanksBlock, Text } from '../../sheet/sheet.ts';
import { big, half, small } from '../scale.ts';
import type { Setting } from '../setting.ts';
import { spaced, type Slab } from '../slab.ts';
import type { CellModel, ColumnModel, Part, RowModel } from '../table/model.ts';
import { tableSlabs } from '../table/table.ts';
import { captionSlabs } from './caption.ts';

export function* blanksSlabs(block: BlanksBlock, setting: Setting): Generator<Slab> {
  if (block.items.length === 0) {
    yield* spaced(captionSlabs(block.empty, setting, false), half);
    return;
  }
  const columns: readonly ColumnModel[] = [
    { head: 'measure', align: 'left', width: 5 },
    { head: 'standard, limit', align: 'left', width: 2 },
    { head: 'found', align: 'left', width: 0.1 },
    { head: 'left', align: 'left', width: 0.1 },
  ];
  const rows = block.items.map((item) => blankRow(item));
  let first = true;
  for (const slab of tableSlabs(
    { columns, rows, work: true, head: true, secondTier: 2, reads: 'table', rowHeads: true },
    setting,
  )) {
    yield first ? { ...slab, before: half } : slab;
    first = false;
  }
}

function blankRow(item: BlankRow): RowModel {
  const about = [item.condition, item.instrument].filter((text) => text !== undefined && text !== '').join(' · ');
  const before = [
    item.last === undefined || item.last === '' ? '' : 'last ' + item.last,
    item.expected === undefined || item.expected === '' ? '' : 'expect ' + item.expected,
  ].filter((text) => text !== '');
  const parts: Part[] = [{ text: itemText(item) }];
  if (about !== '') parts.push({ text: about, type: small });
  for (const text of before) parts.push({ text, type: small });
  if (item.note !== undefined) parts.push({ text: item.note, type: small });
  if (item.verdict !== undefined && item.verdict !== '')
    parts.push({ text: item.verdict, face: 'strong', type: small });
  return {
    kind: 'cells',
    id: item.id,
    cells: [
      { parts },
      { parts: [...value(item.standard), ...value(item.limit, 'limit\u00a0')] },
      box(item.id + '.found', item.unit, item.found),
      box(item.id + '.left', item.unit, item.left),
    ],
  };
}

function itemText(item: BlankRow): Text {
  if (item.position === undefined || item.position === '') return item.item;
  const inlines = typeof item.item === 'string' ? [item.item] : item.item;
  return [...inlines, ', ', { kind: 'strong', text: item.position }];
}

function value(text: string | undefined, before = ''): readonly Part[] {
  return text === undefined || text === '' ? [] : [{ text: before + text, type: big }];
}

function box(id: string, unit: string, written: string | undefined): CellModel {
  return { parts: [], box: 'write', unit, id, ...(written === undefined ? {} : { value: written }) };
}
