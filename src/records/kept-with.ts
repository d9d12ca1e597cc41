// What follows from a few things that are never changed, kept with the first of them: while a binder is served, most of what is read stays the very same.

/** The same answer for the very same things; of one `first` the answer for the last others is kept. It must never be changed. */
export function keptWith<First extends object, Rest extends readonly unknown[], T>(
  make: (first: First, ...rest: Rest) => T,
): (first: First, ...rest: Rest) => T {
  const known = new WeakMap<First, { readonly rest: Rest; readonly made: T }>();
  return (first, ...rest) => {
    const before = known.get(first);
    if (before !== undefined && before.rest.every((one, index) => one === rest[index])) return before.made;
    const made = make(first, ...rest);
    known.set(first, { rest, made });
    return made;
  };
}

/** The list as it was given last, where it has the very same things in it, so that what follows from it is kept. */
export function keptList<T>(): (list: readonly T[]) => readonly T[] {
  let kept: readonly T[] = [];
  return (list) => {
    if (list.length !== kept.length || list.some((one, index) => one !== kept[index])) kept = list;
    return kept;
  };
}
