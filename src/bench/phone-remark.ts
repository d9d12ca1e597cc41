// What is said at once of a value typed on a telephone: it cannot be read, it lies past its limit, it is far from the last one.
import { readAnyQuantity } from '../quantity/read-quantity.ts';
import type { Written } from '../quantity/quantity.ts';

export interface Beside {
  /** Unit printed beside the field. */
  readonly unit: string;
  /** As printed: `50.60 mm max`. */
  readonly limit: string;
  /** As printed: `50.51 mm, 12 March 2025`. */
  readonly last: string;
}

/** So many times the last reading, or so small a part of it, is asked about. A weight of judgement: a unit slip is 10 and more. */
const far = 5;

/** One sentence, or nothing. The program at home judges again, with all that the records know. */
export function remarkOn(value: string, { unit, limit, last }: Beside): string {
  if (unit === '' || value === '' || value === '?' || value === '-') return '';
  const read = quantityIn(value, unit);
  if (read === undefined) return `This is not read as a value in ${unit}. It will be kept as words.`;
  const most = limitIn(limit);
  if (most !== undefined && most.of.unit.dimension === read.unit.dimension) {
    const past = most.side === 'max' ? read.quantity > most.of.quantity : read.quantity < most.of.quantity;
    if (past) return `Past the limit, ${limit}.`;
  }
  const before = firstIn(last);
  if (before === undefined || before.unit.dimension !== read.unit.dimension) return '';
  if (before.quantity <= 0 || read.quantity <= 0) return '';
  const times = read.quantity / before.quantity;
  return times > far || times < 1 / far ? `Far from the last reading, ${last}. Is the unit right?` : '';
}

/** A bare number is in the unit beside the field. */
function quantityIn(value: string, unit: string): Written | undefined {
  const text = /[\p{L}°"″%µ]/u.test(value) ? value : `${value} ${unit}`;
  const read = readAnyQuantity(text);
  return read.ok ? read.value : undefined;
}

function limitIn(limit: string): { readonly of: Written; readonly side: 'max' | 'min' } | undefined {
  const found = /^(.*?)\s+(max|min)\b/u.exec(limit);
  const read = found === null ? undefined : readAnyQuantity(found[1] ?? '');
  return read?.ok === true ? { of: read.value, side: found?.[2] === 'min' ? 'min' : 'max' } : undefined;
}

function firstIn(last: string): Written | undefined {
  const read = readAnyQuantity(last.split(/[,;]\s/u)[0] ?? '');
  return read.ok ? read.value : undefined;
}
