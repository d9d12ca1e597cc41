// What was heard in an answer: the keys that it gives, or why it cannot be taken.

/** Values by key; a key that is not there was left for later. */
export type Facts = Readonly<Record<string, string>>;

export type Heard = { readonly ok: true; readonly facts: Facts } | { readonly ok: false; readonly why: string };

export function heard(facts: Facts): Heard {
  return { ok: true, facts };
}

export function notHeard(why: string): Heard {
  return { ok: false, why };
}

/** A word of each group that is found in the answer; words that belong to no group are why it cannot be taken. */
export function wordsHeard(
  answer: string,
  groups: Readonly<Record<string, readonly (readonly [pattern: RegExp, value: string])[]>>,
): Heard {
  let rest = answer;
  const facts: Record<string, string> = {};
  for (const [key, choices] of Object.entries(groups)) {
    const found = choices.find(([pattern]) => pattern.test(rest));
    if (found === undefined) continue;
    facts[key] = found[1];
    rest = rest.replace(found[0], ' ');
  }
  const left = rest.replaceAll(/\b(?:and|with|a)\b|[\s,;/?-]/giu, '');
  return left === ''
    ? heard(facts)
    : notHeard(`“${rest.trim().replaceAll(/^[\s,]+|[\s,]+$/gu, '')}” is not understood here.`);
}
