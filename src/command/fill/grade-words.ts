// `2`, `harmed`, `1 2`, `n`: which ticks of one row are meant, such as its grades; a note stands after `;`.

export type GradesSaid =
  /** Places of the ticks meant, from 0; none where nothing is to be ticked. */
  | { readonly kind: 'these'; readonly places: readonly number[]; readonly note: string }
  | { readonly kind: 'unclear'; readonly why: string };

/** Reads what was said of the ticks with these heads, by number from 1 or by the beginning of the head. */
export function gradesSaid(said: string, heads: readonly string[]): GradesSaid {
  const at = said.indexOf(';');
  const words = (at < 0 ? said : said.slice(0, at)).trim().toLowerCase();
  const note = at < 0 ? '' : said.slice(at + 1).trim();
  if (words === '' || words === '-') return { kind: 'these', places: [], note };
  const whole = placeOf(words, heads);
  if (whole !== undefined) return { kind: 'these', places: [whole], note };
  const places: number[] = [];
  for (const word of words.split(/[\s,+&]+|\band\b/u).filter((one) => one !== '')) {
    const place = placeOf(word, heads);
    if (place === undefined) return { kind: 'unclear', why: `“${word}” is none of: ${numbered(heads)}.` };
    places.push(place);
  }
  return { kind: 'these', places: [...new Set(places)], note };
}

/** The heads as they are asked: `1 there, 2 harmed, 3 not`. */
export function numbered(heads: readonly string[]): string {
  return heads.map((head, index) => `${String(index + 1)} ${head.toLowerCase()}`).join(', ');
}

/** A number, or letters with which one head alone begins. */
function placeOf(word: string, heads: readonly string[]): number | undefined {
  if (/^\d+$/u.test(word)) return Number(word) >= 1 && Number(word) <= heads.length ? Number(word) - 1 : undefined;
  const begun = heads.flatMap((head, index) => (head.toLowerCase().startsWith(word) ? [index] : []));
  return begun.length === 1 ? begun[0] : undefined;
}
