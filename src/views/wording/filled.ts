// Optional texts of a blank: a key only where there is something to print.
import type { BlankRow } from '../../sheet/sheet.ts';

type OptionalText = Exclude<keyof BlankRow, 'id' | 'item' | 'unit' | 'note'>;

/** `{...filled('last', text)}` gives the key with its text, or nothing at all. */
export function filled(key: OptionalText, text: string | undefined): { readonly [name: string]: string } {
  return text === undefined || text === '' ? {} : { [key]: text };
}
