// Kerning of pairs known beforehand, by the name of the font. In development there is none and the font is asked; the package puts a table in place of this module (see tools/kerning.ts).

/** What stands between two characters, in thousandths of an em; a pair that is not named has nothing between. */
export interface Kerning {
  /** Every pair of these characters is known. */
  readonly characters: string;
  readonly pairs: Readonly<Record<string, number>>;
}

export const kerning: Readonly<Record<string, Kerning>> = {};
