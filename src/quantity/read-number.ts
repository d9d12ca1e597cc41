// Numbers as people write them: fractions, grouped thousands, decimal points and commas. One reader for all.
import type { Read, Refusal } from './quantity.ts';

export interface WrittenNumber {
  readonly value: number;
  /** Decimals as written; of a fraction, the decimals it needs (at most four). */
  readonly decimals: number;
}

const vulgar: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

const plain = /^\d+(?:\.\d+)?$|^\.\d+$/;
const grouped = /^\d{1,3}(?:[ \u00a0\u2009\u202f]\d{3})+(?:\.\d+)?$/;
const fraction = /^(?:(\d+)[ \u00a0\u2009\u202f-]+)?(\d+)[/\u2044](\d+)$/;
const vulgarForm = /^(\d*)[ \u00a0\u2009\u202f]?([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])$/;
const comma = /^(\d+),(\d+)$/;
const groupedComma = /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/;
const groupedPoint = /^\d{1,3}(?:\.\d{3})+,\d+$/;

/** Not a number, and why; `hint` says what to write. */
export function refuse(
  code: Refusal['code'],
  message: string,
  hint?: string,
): { readonly ok: false; readonly why: Refusal } {
  return { ok: false, why: hint === undefined ? { code, message } : { code, message, hint } };
}

/** Most characters of one figure with its unit. The patterns below compare every part with every other, so a page of digits would keep them busy for minutes. */
const longest = 200;

/** The refusal of a text that is too long to be a figure; undefined when it is not. */
export function tooLong(text: string): ReturnType<typeof refuse> | undefined {
  if (text.length <= longest) return undefined;
  return refuse(
    'number-unreadable',
    `“${text.slice(0, 20)}…” is too long for a figure`,
    'write the figure and its unit alone',
  );
}

function decimalsOf(text: string): number {
  const point = text.indexOf('.');
  return point < 0 ? 0 : text.length - point - 1;
}

/** Decimals that a fraction needs: 1/4 needs two, 1/3 is given four. */
function decimalsOfFraction(value: number): number {
  for (let decimals = 0; decimals < 4; decimals += 1) {
    const scaled = value * 10 ** decimals;
    if (Math.abs(scaled - Math.round(scaled)) < 1e-9) return decimals;
  }
  return 4;
}

function ofFraction(text: string, whole: number, over: number, under: number): Read<WrittenNumber> {
  if (under === 0) return refuse('number-unreadable', `“${text}” divides by nought`);
  if (whole > 0 && over >= under)
    return refuse('number-unreadable', `“${text}” is a whole number and more than a whole`);
  const value = whole + over / under;
  return { ok: true, value: { value, decimals: decimalsOfFraction(value) } };
}

function withComma(text: string, whole: string, part: string, after: string): Read<WrittenNumber> {
  const maybeThousands = part.length === 3 && whole.length <= 3 && !whole.startsWith('0');
  if (maybeThousands) {
    const hint = `write “${whole} ${part}${after}” or “${whole}.${part}${after}”`;
    return refuse(
      'number-ambiguous',
      `“${text}” may be ${whole} ${part} (thousands) or ${whole}.${part} (decimals)`,
      hint,
    );
  }
  return { ok: true, value: { value: Number(whole + '.' + part), decimals: part.length } };
}

function readUnsigned(text: string, after: string): Read<WrittenNumber> {
  if (plain.test(text)) return { ok: true, value: { value: Number(text), decimals: decimalsOf(text) } };
  if (grouped.test(text)) {
    const joined = text.replace(/[^\d.]/g, '');
    return { ok: true, value: { value: Number(joined), decimals: decimalsOf(joined) } };
  }
  const parts = fraction.exec(text);
  if (parts !== null) return ofFraction(text, Number(parts[1] ?? 0), Number(parts[2]), Number(parts[3]));
  const single = vulgarForm.exec(text);
  const pair = single === null ? undefined : vulgar[single[2] ?? ''];
  if (single !== null && pair !== undefined) return ofFraction(text, Number(single[1] ?? 0), pair[0], pair[1]);
  const comma1 = comma.exec(text);
  if (comma1 !== null) return withComma(text, comma1[1] ?? '', comma1[2] ?? '', after);
  if (groupedComma.test(text)) {
    const hint = `write “${text.replaceAll(',', ' ')}${after}”`;
    return refuse(
      'number-unreadable',
      `“${text}” has commas for thousands; a comma could also be a decimal sign`,
      hint,
    );
  }
  if (groupedPoint.test(text)) {
    const hint = `write “${text.replaceAll('.', ' ').replace(',', '.')}${after}”`;
    return refuse('number-unreadable', `“${text}” has points for thousands; a point is the decimal sign here`, hint);
  }
  return refuse(
    'number-unreadable',
    `“${text}” is not a number`,
    'write digits with a decimal point, for example 0.35 or 2 1/2',
  );
}

/**
 * Reads one number: `12`, `.5`, `12.50`, `12 480`, `1/4`, `2 1/2`, `2-1/2`, `½`, `0,35`, with an optional sign.
 * `12,480` is refused as ambiguous with both readings named; exponents are refused. `after` is what was written behind it, ` mi`:
 * what is proposed in its place ends with it, so that it can be taken as it stands.
 * @example readNumber('2 1/2') // { ok: true, value: { value: 2.5, decimals: 1 } }
 */
export function readNumber(text: string, after = ''): Read<WrittenNumber> {
  const trimmed = text.trim();
  const long = tooLong(trimmed);
  if (long !== undefined) return long;
  const first = trimmed[0];
  if (first !== '-' && first !== '+' && first !== '−') return readUnsigned(trimmed, after);
  const read = readUnsigned(trimmed.slice(1).trimStart(), after);
  if (!read.ok || first === '+') return read;
  return { ok: true, value: { value: -read.value.value, decimals: read.value.decimals } };
}
