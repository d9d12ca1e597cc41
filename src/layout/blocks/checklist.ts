// Things to tick off: a box, what to do and why, a value to write where one is wanted, and how it stands on the records.
import type { ChecklistBlock } from '../../sheet/sheet.ts';
import { half, small } from '../scale.ts';
import type { Setting } from '../setting.ts';
import { firstSpaced, type Slab } from '../slab.ts';
import type { CellModel, ColumnModel, Part, RowModel } from '../table/model.ts';
import { tableSlabs } from '../table/table.ts';

type Item = ChecklistBlock['items'][number];

/** Narrower than this, how a thing stands and what is expected go below it instead of beside it. */
const wide = 400;

export function* checklistSlabs(block: ChecklistBlock, setting: Setting): Generator<Slab> {
  const beside = setting.width >= wide;
  const shows = {
    state: beside && block.items.some((item) => item.state !== undefined && item.state !== ''),
    hint: beside && block.items.some((item) => hintOf(item) !== ''),
    blank: block.items.some((item) => item.blank !== undefined),
  };
  const columns: ColumnModel[] = [
    { head: '', align: 'centre', width: 0.1 },
    { head: '', align: 'left', width: 6 },
  ];
  if (shows.state) columns.push({ head: '', align: 'left', width: 3 });
  if (shows.hint) columns.push({ head: '', align: 'right', width: 2 });
  if (shows.blank) columns.push({ head: '', align: 'left', width: 0.1 });
  const rows = block.items.flatMap((item) => itemRows(item, shows));
  const slabs = tableSlabs({ columns, rows, work: true, head: false, reads: 'list' }, setting);
  yield* firstSpaced(slabs, () => half);
}

interface Shows {
  readonly state: boolean;
  readonly hint: boolean;
  readonly blank: boolean;
}

function itemRows(item: Item, shows: Shows): readonly RowModel[] {
  const caution: readonly RowModel[] = item.caution === undefined ? [] : [{ kind: 'band', ...item.caution }];
  const below: Part[] = [];
  if (item.why !== undefined) below.push({ text: item.why, type: small });
  if (!shows.state && item.state !== undefined && item.state !== '')
    below.push({ text: item.state, face: 'strong', type: small });
  if (!shows.hint && hintOf(item) !== '') below.push({ text: hintOf(item), type: small });
  const cells: CellModel[] = [
    { parts: [], box: 'tick', done: item.done ?? false, id: item.id },
    { parts: [{ text: item.text }, ...below] },
  ];
  if (shows.state) cells.push({ parts: item.state === undefined ? [] : [{ text: item.state, type: small }] });
  if (shows.hint) cells.push({ parts: hintOf(item) === '' ? [] : [{ text: hintOf(item) }] });
  if (shows.blank) {
    const { blank } = item;
    cells.push(
      blank === undefined
        ? { parts: [] }
        : {
            parts: [],
            box: 'write',
            unit: blank.unit,
            id: item.id + '/value',
            ...(blank.written === undefined ? {} : { value: blank.written }),
          },
    );
  }
  return [...caution, { kind: 'cells', id: item.id, cells }];
}

function hintOf(item: Item): string {
  return item.blank?.hint ?? '';
}
