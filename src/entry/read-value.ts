// A value as a person wrote it into a box, as the record writes it: with its unit, and with a point where a comma was meant.
import { readAnyQuantity, readQuantity } from '../quantity/read-quantity.ts';
import type { Dimension, Read, Written } from '../quantity/quantity.ts';

export type ValueSaid =
  | { readonly kind: 'read'; readonly text: string; readonly written: Written }
  /** Kept as words: half read, or of an item that has no unit. */
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'refused'; readonly message: string; readonly hint?: string };

const bare = /^[-+−]?[\d.,½⅓⅔¼¾⅛⅜⅝⅞/\s]+$/u;

/** `0,35` in a box of millimetres is `0.35 mm`; `14 thou` stays. `unit` is the box's own, empty where it has none. */
export function readBoxValue(said: string, unit: string, dimension: Dimension | undefined): ValueSaid {
  if (said.includes('?') && /\d/u.test(said)) return { kind: 'words', text: said };
  const withUnit = bare.test(said) && unit !== '' ? `${said} ${unit}` : said;
  if (dimension === undefined && !/^[\s+±−-]*[\d.½¼¾]/u.test(withUnit)) return { kind: 'words', text: said };
  const read = readIn(withUnit, dimension);
  if (!read.ok)
    return {
      kind: 'refused',
      message: read.why.message,
      ...(read.why.hint === undefined ? {} : { hint: read.why.hint }),
    };
  const pointed = withUnit.replace(/^([-+−]?\d+),(\d+)/u, '$1.$2');
  const same = readIn(pointed, dimension);
  const text = same.ok && same.value.quantity === read.value.quantity ? pointed : withUnit;
  return { kind: 'read', text, written: read.value };
}

function readIn(text: string, dimension: Dimension | undefined): Read<Written> {
  return dimension === undefined ? readAnyQuantity(text) : readQuantity(text, dimension);
}
