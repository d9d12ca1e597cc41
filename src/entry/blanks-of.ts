// The blanks of a sheet, in printed order: every box, tick and line that has an id, and the foot.
import type { Block, Sheet } from '../sheet/sheet.ts';
import type { Blank } from './blank.ts';
import { footBlanks } from './foot-blanks.ts';
import { gridBlanks, tableBlanks } from './table-blanks.ts';
import { plainText } from './plain-text.ts';
import { rowBlanks } from './row-blanks.ts';

/** Every blank once, at the first place where it stands. */
export function blanksOf(sheet: Sheet): readonly Blank[] {
  let under = '';
  const inBlocks = sheet.blocks.flatMap((block, index) => {
    if (block.type === 'heading') under = plainText(block.text);
    const place = { table: `${sheet.id}/${String(index)}`, ...(under === '' ? {} : { under }) };
    return ofBlock(block).map((blank) => ({ ...blank, ...place }));
  });
  return once([...inBlocks.filter((blank) => isKept(sheet, blank)), ...footBlanks(sheet)]);
}

/** On a job’s sheet a tick of another job’s work stands only to be looked at; it is not this record’s to keep. */
function isKept({ job }: Sheet, { id }: Blank): boolean {
  return job === undefined || id.startsWith(`${job}/`);
}

/** The blanks of several sheets of one job, in the order of the sheets; one that two of them share is one. */
export function blanksOfAll(sheets: readonly Sheet[]): readonly Blank[] {
  const feet = new Set(sheets.flatMap((sheet) => footBlanks(sheet).map((blank) => blank.id)));
  const all = sheets.map(blanksOf);
  const body = all.flatMap((blanks) => blanks.filter((blank) => !feet.has(blank.id)));
  const foot = all.flatMap((blanks) => blanks.filter((blank) => feet.has(blank.id)));
  return once([...body, ...foot]);
}

function once(blanks: readonly Blank[]): readonly Blank[] {
  const seen = new Set<string>();
  return blanks.filter(({ id }) => {
    const fresh = !seen.has(id);
    seen.add(id);
    return fresh;
  });
}

function ofBlock(block: Block): readonly Blank[] {
  if (block.type === 'blanks') return block.items.flatMap(rowBlanks);
  if (block.type === 'table') return tableBlanks(block);
  if (block.type === 'grid') return gridBlanks(block);
  if (block.type === 'checklist') return block.items.flatMap(checkBlanks);
  if (block.type === 'signature') return block.lines.flatMap(signatureBlanks);
  return [];
}

type CheckItem = Extract<Block, { readonly type: 'checklist' }>['items'][number];

type SignatureLine = Extract<Block, { readonly type: 'signature' }>['lines'][number];

/** The tick, and the value beside it where one is wanted; with a WARNING at it, it is a line of safety. */
function checkBlanks(item: CheckItem): readonly Blank[] {
  const asks = plainText(item.text);
  const caution = item.caution === undefined ? {} : { caution: item.caution };
  const singly = item.singly === true || item.caution?.grade === 'WARNING';
  const tick: Blank = {
    id: item.id,
    kind: 'tick',
    asks,
    singly,
    ...caution,
    ...(item.done === true ? { given: 'yes' } : {}),
    ...(item.state === undefined ? {} : { last: plainText(item.state) }),
  };
  if (item.blank === undefined) return [tick];
  const { unit, hint, written } = item.blank;
  const value: Blank = {
    id: `${item.id}/value`,
    kind: 'value',
    asks,
    unit,
    singly: true,
    ...(hint === undefined ? {} : { expected: hint }),
    ...(written === undefined ? {} : { given: written }),
  };
  return [tick, value];
}

/** Who signs, and when; on paper by hand, in a form or a record by name. */
function signatureBlanks({ id, role }: SignatureLine): readonly Blank[] {
  if (id === undefined) return [];
  return [
    { id, kind: 'text', asks: `${role}: name of who signs`, singly: true },
    { id: `${id}/date`, kind: 'text', asks: `${role}: day of signing`, singly: true },
  ];
}
