// What is typed beside an input, as the readers of the records take it: a bare number is in the unit that stands beside it.
import type { Input } from '../calc/input.ts';

const bareNumber = /^[+\-−]?\s*[\d.,½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞][\d.,/\u2044 \u00a0\u2009\u202f½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞-]*$/u;

/** The unit beside the field of an input: its own, or the one in which this machine asks. */
export function unitBeside(input: Exclude<Input, { kind: 'words' }>, asked: Readonly<Record<string, string>>): string {
  return asked[input.unit.symbol] ?? input.unit.symbol;
}

/** The text with the unit beside its field, where a number stands alone; several values are parted by semicolons. */
export function withItsUnit(text: string, input: Input, asked: Readonly<Record<string, string>> = {}): string {
  if (input.kind === 'words') return text.trim();
  const parts = input.kind === 'list' ? text.split(';') : [text];
  return parts.map((part) => oneWithUnit(part.trim(), unitBeside(input, asked))).join('; ');
}

function oneWithUnit(text: string, symbol: string): string {
  if (symbol === '' || !bareNumber.test(text)) return text;
  // A ratio is written with its sign: 25 beside `:1` is 25:1, and beside `1:` it is 1:25.
  if (symbol.startsWith(':')) return text + symbol;
  return symbol.endsWith(':') ? symbol + text : `${text} ${symbol}`;
}
