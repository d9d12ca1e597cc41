// Remembers what was made of a thing and a word, as long as the thing lives.

/** The same function, each answer worked out once. */
export function once<T extends object, R>(make: (thing: T, word: string) => R): (thing: T, word: string) => R {
  const made = new WeakMap<T, Map<string, R>>();
  return (thing, word) => {
    const known = made.get(thing);
    const before = known?.get(word);
    if (before !== undefined) return before;
    const fresh = make(thing, word);
    if (known === undefined) made.set(thing, new Map([[word, fresh]]));
    else known.set(word, fresh);
    return fresh;
  };
}
