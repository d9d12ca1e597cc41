// What was heard in an answer: the keys that it gives, words that are only kept, and why the rest cannot be taken.

/** Values by key; a key that is not there was left for later. */
export type Facts = Readonly<Record<string, string>>;

export type Heard =
  /** `words`: understood, and no key of the machine's file says it. */
  | { readonly ok: true; readonly facts: Facts; readonly words?: string }
  /** `facts`: what was understood of it all the same. */
  | { readonly ok: false; readonly why: string; readonly facts: Facts };

export function heard(facts: Facts): Heard {
  return { ok: true, facts };
}

export function notHeard(why: string, facts: Facts = {}): Heard {
  return { ok: false, why, facts };
}

/** What an answer may say: a word of each group by its key, words that say nothing new, and words that are kept as they stand. */
export interface Vocabulary {
  readonly groups: Readonly<Record<string, readonly (readonly [pattern: RegExp, value: string])[]>>;
  readonly idle?: RegExp;
  readonly kept?: RegExp;
}

const joining = /\b(?:and|with|an?|the|in|of|by)\b|[\s,;./?-]/giu;

/** A word of each group that is found in the answer; words that belong nowhere are why it cannot be taken as a whole. */
export function wordsHeard(answer: string, { groups, idle, kept }: Vocabulary): Heard {
  const found: Record<string, string> = {};
  let rest = answer;
  const words = kept === undefined ? [] : [...rest.matchAll(kept)].map(([word]) => word.trim());
  if (kept !== undefined) rest = rest.replaceAll(kept, ' ');
  for (const [key, choices] of Object.entries(groups)) {
    const choice = choices.find(([pattern]) => pattern.test(rest));
    if (choice === undefined) continue;
    found[key] = choice[1];
    rest = rest.replace(choice[0], ' ');
  }
  const left = idle === undefined ? rest : rest.replaceAll(idle, ' ');
  if (left.replaceAll(joining, '') !== '') return notHeard(`“${trimmed(left)}” is not understood here.`, found);
  return words.length === 0 ? heard(found) : { ok: true, facts: found, words: words.join(', ') };
}

/** Without the stops and spaces round it, and with single spaces inside. */
function trimmed(words: string): string {
  return words.replaceAll(/^[\s,;]+|[\s,;]+$/gu, '').replaceAll(/[\s,;]+/gu, ' ');
}
