// The two blanks of a measuring row: as found and as left, with what stands beside them.
import type { BlankRow } from '../sheet/sheet.ts';
import type { Blank } from './blank.ts';
import { plainText } from './plain-text.ts';

/** Found and left of one row; their ids are the row's with `/found` and `/left`. */
export function rowBlanks(row: BlankRow): readonly Blank[] {
  return [side(row, 'found', row.found), side(row, 'left', row.left)];
}

function side(row: BlankRow, name: 'found' | 'left', given: string | undefined): Blank {
  const { position, unit, standard, limit, last, expected } = row;
  const item = plainText(row.item);
  const where = isThere(position) ? `${item}, ${position}` : item;
  return {
    id: `${row.id}/${name}`,
    kind: 'value',
    asks: `${where}, ${name === 'found' ? 'as found' : 'as left'}`,
    unit,
    singly: true,
    ...(isThere(standard) ? { standard } : {}),
    ...(isThere(limit) ? { limit } : {}),
    ...(isThere(last) ? { last } : {}),
    ...(isThere(expected) ? { expected } : {}),
    ...(isThere(given) ? { given } : {}),
  };
}

function isThere(text: string | undefined): text is string {
  return text !== undefined && text !== '';
}
