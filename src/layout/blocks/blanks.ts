// The measuring table: what to measure, what it should be, two boxes to write in: as found, as left.
import type { BlankRow, BlanksBlock, Text } from '../../sheet/sheet.ts';
import { big, half, small } from '../scale.ts';
import type { Setting } from '../setting.ts';
import { firstSpaced, spaced, type Slab } from '../slab.ts';
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
  const rows = lots(block.items).flatMap(lotRows);
  const table = { columns, rows, work: true, head: true, secondTier: 2, reads: 'table', rowHeads: true } as const;
  yield* firstSpaced(tableSlabs(table, setting), () => half);
}

/** Items that follow each other and differ by position only. */
function lots(items: readonly BlankRow[]): readonly (readonly BlankRow[])[] {
  const found: BlankRow[][] = [];
  for (const item of items) {
    const lot = found.at(-1);
    if (lot?.[0] !== undefined && sharedOf(lot[0]) === sharedOf(item)) lot.push(item);
    else found.push([item]);
  }
  return found;
}

function sharedOf({ item, unit, standard, limit, instrument, condition }: BlankRow): string {
  return JSON.stringify([item, unit, standard, limit, instrument, condition]);
}

/** An item at several positions is named once, with its standard and limit; a row for each position follows. */
function lotRows(lot: readonly BlankRow[]): readonly RowModel[] {
  const [first] = lot;
  if (first === undefined) return [];
  if (lot.length < 2) return lot.map(blankRow);
  const head: Part[] = [{ text: first.item, face: 'strong' }, ...aboutOf(first)];
  const cells = [{ parts: head }, { parts: bounds(first) }, { parts: [] }, { parts: [] }];
  return [{ kind: 'cells', keep: true, cells }, ...lot.map(positionRow)];
}

function positionRow(item: BlankRow): RowModel {
  return {
    kind: 'cells',
    id: item.id,
    cells: [{ parts: [{ text: item.position ?? '' }] }, { parts: beforeOf(item) }, ...boxes(item)],
  };
}

function blankRow(item: BlankRow): RowModel {
  const parts: readonly Part[] = [{ text: itemText(item) }, ...aboutOf(item)];
  return {
    kind: 'cells',
    id: item.id,
    cells: [{ parts }, { parts: [...bounds(item), ...beforeOf(item)] }, ...boxes(item)],
  };
}

function itemText(item: BlankRow): Text {
  if (item.position === undefined || item.position === '') return item.item;
  const inlines = typeof item.item === 'string' ? [item.item] : item.item;
  return [...inlines, ', ', { kind: 'strong', text: item.position }];
}

/** How it is taken: condition and instrument. */
function aboutOf(item: BlankRow): readonly Part[] {
  const about = [item.condition, item.instrument].filter((text) => text !== undefined && text !== '').join(' · ');
  return about === '' ? [] : [{ text: about, type: small }];
}

/** What was read before, what is to be expected, and what was thought of it. */
function beforeOf(item: BlankRow): readonly Part[] {
  const before = [
    item.last === undefined || item.last === '' ? '' : 'last ' + item.last,
    item.expected === undefined || item.expected === '' ? '' : 'expect ' + item.expected,
  ].filter((text) => text !== '');
  const parts: Part[] = before.map((text) => ({ text, type: small }));
  if (item.note !== undefined) parts.push({ text: item.note, type: small });
  if (item.verdict !== undefined && item.verdict !== '')
    parts.push({ text: item.verdict, face: 'strong', type: small });
  return parts;
}

function bounds(item: BlankRow): readonly Part[] {
  return [...value(item.standard), ...value(item.limit, 'limit\u00a0')];
}

function value(text: string | undefined, before = ''): readonly Part[] {
  return text === undefined || text === '' ? [] : [{ text: before + text, type: big }];
}

function boxes(item: BlankRow): readonly CellModel[] {
  return [box(item.id + '/found', item.unit, item.found), box(item.id + '/left', item.unit, item.left)];
}

function box(id: string, unit: string, written: string | undefined): CellModel {
  return { parts: [], box: 'write', unit, id, ...(written === undefined ? {} : { value: written }) };
}
