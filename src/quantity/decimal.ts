// The one decimal rounder: half away from zero on the decimal text, thin spaces for thousands.

/** U+202F, between groups of three digits from five digits on. */
export const thinSpace = '\u202f';
/** U+2212, the minus that is as wide as a plus. */
export const minusSign = '\u2212';

/** The digits of a finite number as plain decimal text without exponent, noise below 15 significant digits removed. */
function plainText(value: number): { readonly whole: string; readonly part: string } {
  const text = String(Number(value.toPrecision(15)));
  const e = text.indexOf('e');
  if (e < 0) {
    const point = text.indexOf('.');
    if (point < 0) return { whole: text, part: '' };
    return { whole: text.slice(0, point), part: text.slice(point + 1) };
  }
  const exponent = Number(text.slice(e + 1));
  const [whole = '0', part = ''] = text.slice(0, e).split('.');
  if (exponent < 0) return { whole: '0', part: '0'.repeat(-exponent - whole.length) + whole + part };
  return { whole: whole + part.padEnd(exponent, '0').slice(0, exponent), part: part.slice(exponent) };
}

/** Adds one to a string of digits. */
function plusOne(digits: string): string {
  let at = digits.length - 1;
  while (at >= 0 && digits[at] === '9') at -= 1;
  if (at < 0) return '1' + '0'.repeat(digits.length);
  return digits.slice(0, at) + String(Number(digits[at]) + 1) + '0'.repeat(digits.length - 1 - at);
}

const powers = [1, 10, 100, 1000, 10_000, 100_000, 1_000_000];
const mostExact = 1e15;
/** Less than half of the fifteenth digit of any number, relative to it. */
const noise = 4e-16;

/**
 * The short way for what needs no rounding, as most that is printed was written with just as many decimals: a whole number of the
 * last place, below 15 digits, or so near one that only the fifteenth digit could tell (0.37 mm kept in metres comes back as
 * 0.37000000000000005). Undefined where there may be anything to round.
 */
function unroundedText(value: number, places: number): string | undefined {
  const power = powers[places];
  if (power === undefined) return undefined;
  const size = Math.abs(value);
  const last = Math.round(size * power);
  if (last >= mostExact || Math.abs(last / power - size) > size * noise) return undefined;
  const digits = String(last).padStart(places + 1, '0');
  const cut = digits.length - places;
  const text = places === 0 ? digits : digits.slice(0, cut) + '.' + digits.slice(cut);
  return value < 0 && last > 0 ? '-' + text : text;
}

/** Rounded text with a plain `-` and no grouping: for files and forms that machines read. `decimals` 0 to 20. */
export function roundedText(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new RangeError('a number without a value cannot be printed');
  const places = Math.max(0, Math.min(20, Math.trunc(decimals)));
  const short = unroundedText(value, places);
  if (short !== undefined) return short;
  const { whole, part } = plainText(Math.abs(value));
  let digits = whole + part.slice(0, places).padEnd(places, '0');
  if (part.charCodeAt(places) >= 53) digits = plusOne(digits);
  const cut = digits.length - places;
  const integer = digits.slice(0, cut).replace(/^0+(?=\d)/, '') || '0';
  const text = places === 0 ? integer : integer + '.' + digits.slice(cut);
  return value < 0 && /[1-9]/.test(text) ? '-' + text : text;
}

/** The number that is printed, as a number: rounds half away from zero on the decimal text. */
export function roundTo(value: number, decimals: number): number {
  return Number(roundedText(value, decimals));
}

/**
 * A number as it is printed: exactly `decimals` decimals, a point, never a comma, thin spaces for thousands from five
 * digits on (`8106`, `12 480`), a true minus. Throws RangeError for NaN and infinity, which are bugs.
 * @example formatDecimal(12480.05, 1) // '12 480.1'
 */
export function formatDecimal(value: number, decimals: number): string {
  const text = roundedText(value, decimals);
  const negative = text.startsWith('-');
  const bare = negative ? text.slice(1) : text;
  const point = bare.indexOf('.');
  const whole = point < 0 ? bare : bare.slice(0, point);
  const grouped = whole.length < 5 ? bare : whole.replace(/\B(?=(\d{3})+$)/g, thinSpace) + bare.slice(whole.length);
  return negative ? minusSign + grouped : grouped;
}
