// `all`, `all but 7 and 12`, `3 5 8`: which of the printed ticks are meant.

export type TicksSaid =
  | { readonly kind: 'these'; readonly labels: readonly string[] }
  | { readonly kind: 'none' }
  | { readonly kind: 'later' }
  | { readonly kind: 'unclear'; readonly why: string };

/** Reads what was said of ticks with these labels. Spans such as `3-6` go by the printed order. */
export function ticksSaid(said: string, labels: readonly string[]): TicksSaid {
  const words = said.trim().toLowerCase();
  if (words === '') return { kind: 'later' };
  if (words === 'n' || words === 'no' || words === 'none') return { kind: 'none' };
  const all = /^(?:y|yes|all)(?:(?:\s+as\s+printed)?[\s,]*(?:but|except|without)?\s*(.*))$/u.exec(words);
  const but = /^-\s*(\S.*)$/u.exec(words)?.[1] ?? all?.[1];
  if (but !== undefined || all !== null) return pick(but ?? '', labels, 'but');
  return pick(words, labels, 'only');
}

function pick(list: string, labels: readonly string[], way: 'but' | 'only'): TicksSaid {
  const named: string[] = [];
  for (const word of list.split(/[\s,;]+|\band\b/u).filter((one) => one !== '')) {
    const span = spanOf(word, labels);
    if (span === undefined) return { kind: 'unclear', why: `There is no ${word} here.` };
    named.push(...span);
  }
  if (way === 'only' && named.length === 0) return { kind: 'unclear', why: 'Write the numbers.' };
  const these =
    way === 'only' ? labels.filter((one) => named.includes(one)) : labels.filter((one) => !named.includes(one));
  return { kind: 'these', labels: these };
}

function spanOf(word: string, labels: readonly string[]): readonly string[] | undefined {
  if (labels.includes(word)) return [word];
  const [from, to] = word.split('-').map((one) => labels.indexOf(one));
  if (from === undefined || to === undefined || from < 0 || to < from) return undefined;
  return labels.slice(from, to + 1);
}
