// Numbers of a log: whether the comma or the point parts the decimals is found from all of them together, or asked; never guessed.

export type Decimal = 'point' | 'comma';

/** Digits with their marks, whatever stands round them. */
const figure = /[-−+]?\d[\d.,'’ \u00a0\u202f]*/u;

/** What one number says of the decimal mark; `undefined` when it says nothing. */
function told(digits: string): Decimal | undefined {
  const [points, commas] = [digits.split('.').length - 1, digits.split(',').length - 1];
  if (points > 0 && commas > 0) return digits.lastIndexOf(',') > digits.lastIndexOf('.') ? 'comma' : 'point';
  if (points > 1) return 'comma';
  if (commas > 1) return 'point';
  if (points === 1) return /\.\d{3}$/u.test(digits) && !digits.startsWith('0') ? undefined : 'point';
  if (commas === 1) return /,\d{3}$/u.test(digits) && !digits.startsWith('0') ? undefined : 'comma';
  return undefined;
}

function digitsOf(text: string): string {
  return (figure.exec(text)?.[0] ?? '').trim().replace(/^[-−+]/u, '');
}

export interface Marks {
  /** What the numbers that say something say. */
  readonly said: readonly Decimal[];
  /** A number that could be read in two ways, if there is one. */
  readonly doubtful?: string;
}

/** What all numbers of a log say together of their decimal mark. */
export function marksOf(texts: readonly string[]): Marks {
  const all = texts.map(digitsOf).filter((digits) => /[.,]/u.test(digits));
  const said = [...new Set(all.flatMap((digits) => told(digits) ?? []))];
  const doubtful = all.find((digits) => told(digits) === undefined);
  return doubtful === undefined ? { said } : { said, doubtful };
}

/** The number with a decimal point and nothing else, as `-12480.5`; undefined when the text holds none, or more than one. */
export function plainNumber(text: string, decimal: Decimal): string | undefined {
  const found = figure.exec(text);
  if (found === null || /\d/u.test(text.slice(found.index + found[0].length))) return undefined;
  const digits = digitsOf(text).replaceAll(/['’ \u00a0\u202f]/gu, '');
  const plain = decimal === 'comma' ? digits.replaceAll('.', '').replaceAll(',', '.') : digits.replaceAll(',', '');
  const cleaned = plain.replace(/\.$/u, '');
  if (!/^\d+(?:\.\d+)?$/u.test(cleaned)) return undefined;
  return (/^[-−]|^\(.*\)$/u.test(text.trim()) || /[-−]\s*[^\d\s]?\s*\d/u.test(text) ? '-' : '') + cleaned;
}

/** What stands beside the number: a unit, a sign of a currency. */
export function besideNumber(text: string): string {
  return text
    .replace(figure, ' ')
    .replaceAll(/[()\s]/gu, '')
    .replaceAll(/[-−+]/gu, '');
}
