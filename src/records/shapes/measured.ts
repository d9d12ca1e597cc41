// Shapes with a unit, a date or a currency: text goes to the readers of quantity, and what they refuse gets its place here.
import type { Day, DaySpan } from '../../quantity/day.ts';
import { readDay, readDaySpan } from '../../quantity/day-arithmetic.ts';
import type { Money } from '../../quantity/money.ts';
import { readMoney } from '../../quantity/money-arithmetic.ts';
import type { Dimension, Read, Unit, Written, WrittenRange } from '../../quantity/quantity.ts';
import { readAnyQuantity, readQuantity } from '../../quantity/read-quantity.ts';
import { readRange } from '../../quantity/read-range.ts';
import { anyUnitOf } from '../../quantity/unit-spelling.ts';
import { dimensions } from '../../quantity/units.ts';
import type { Value } from '../model.ts';
import { refuse, type Desk, type Spot } from './desk.ts';
import { hintOf, scalar, sentence } from './plain.ts';
import { readOnce } from './read-once.ts';
import type { Shape } from './shape.ts';

/** What a reader gave, or its refusal as a problem at this spot. */
export function taken<T>(read: Read<T>, spot: Spot | undefined, desk: Desk): T | undefined {
  if (read.ok) return read.value;
  const { code, message, hint } = read.why;
  const how = code === 'date-unreadable' ? 'write a day that there is, as year-month-day' : undefined;
  return refuse(desk, spot, code, sentence(message), hintOf(hint ?? how));
}

/** Any reader of text as a shape; `none` and `?` are absent. */
function readBy<T>(reader: (words: string) => Read<T>, written: string, example: string): Shape<T> {
  return {
    read: (tree, spot, desk) => {
      const words = scalar(tree, spot, desk);
      return words === undefined || words === 'none' || words === '?' ? undefined : taken(reader(words), spot, desk);
    },
    told: { kind: 'text', written, example },
  };
}

/** A value of one kind of quantity, with its unit. */
export function quantity<D extends Dimension>(dimension: D, example: string): Shape<Written<D>> {
  return readBy((words) => readQuantity(words, dimension), `${dimension}, with its unit`, example);
}
/** One value, a span, plus/minus, or a bound with max or min. */
export function range<D extends Dimension>(dimension: D, example: string): Shape<WrittenRange<D>> {
  return readBy(
    (words) => readRange(words, dimension),
    `${dimension}, one value, a span or a bound, with its unit`,
    example,
  );
}
/** A value of whatever kind its unit says. */
export const anyQuantity: Shape<Written> = readBy(readAnyQuantity, 'a value with its unit', '0.35 mm');

export const day: Shape<Day> = readBy(readDay, 'a date', '2024-05-04');
export const daySpan: Shape<DaySpan> = readBy(
  readDaySpan,
  'a date, a span of dates or a month',
  '2024-05-04 to 2024-05-05',
);
/** A date, or a month or year alone: then its first day, with how much of it was written. */
export const dayOrMonth: Shape<{ readonly day: Day; readonly whole?: 'month' | 'year' }> = readBy(
  (words) => {
    const span = readDaySpan(words);
    if (!span.ok) return span;
    const { from, whole } = span.value;
    return { ok: true, value: { day: from, ...(whole === undefined ? {} : { whole }) } };
  },
  'a date or a month',
  '1969-05',
);
export const money: Shape<Money> = readBy(readMoney, 'an amount with its currency', '18.50 GBP');

/** A unit alone. */
export const unit: Shape<Unit> = readBy(
  (words) => {
    const found = anyUnitOf(words);
    if (found !== undefined) return { ok: true, value: found };
    const tried = readAnyQuantity(`1 ${words}`);
    const why = tried.ok ? undefined : tried.why;
    return {
      ok: false,
      why: {
        code: 'unit-unknown',
        message: `“${words}” is not a unit`,
        hint: why?.hint ?? 'write a unit as on the gauge, for example mm',
      },
    };
  },
  'a unit',
  'mm',
);

/** A range of whatever kind its unit says; the likeliest kind is tried first. */
export function readAnyRange(words: string): Read<WrittenRange> {
  let first: Read<WrittenRange> | undefined;
  for (const dimension of dimensions) {
    const read = readRange(words, dimension);
    if (read.ok || read.why.code === 'number-ambiguous' || read.why.code === 'unit-missing') return read;
    first ??= read;
  }
  const alone = readAnyQuantity(words);
  return alone.ok || first === undefined ? readRange(words, 'length') : alone;
}

/** Digits with a question mark among them: half read, kept as words, never computed with. */
function isHalfRead(words: string): boolean {
  return words.includes('?') && /\d/u.test(words);
}

/**
 * A reading's value. `?` and nothing are not known; half-read digits are kept as words; words without any digit are kept
 * where the item has no unit of its own.
 */
export function readValue(
  words: string,
  dimension: Dimension | undefined,
  spot: Spot | undefined,
  desk: Desk,
): Value | undefined {
  if (words === '' || words === '?') return { kind: 'unknown' };
  if (isHalfRead(words)) return { kind: 'words', text: words };
  if (dimension === undefined && !/^[\s+±−-]*[\d.½¼¾]/u.test(words)) return { kind: 'words', text: words };
  return taken(readOnce(words, dimension), spot, desk);
}
