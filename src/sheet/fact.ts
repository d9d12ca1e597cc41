// A fact: a name and what is said of it, as in the front matter of a manual.
import type { Text } from './sheet.ts';

export interface Fact {
  readonly name: string;
  readonly value: Text;
  readonly note?: Text;
  /** The same a line each, where a screen has room for a list. */
  readonly lines?: readonly Text[];
}
