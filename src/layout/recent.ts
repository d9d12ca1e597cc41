// What was made lately, kept to be used again: bounded, so that memory stays flat over thousands of pages, and what is used often stays.

export interface Recent<T> {
  readonly get: (key: string) => T | undefined;
  readonly set: (key: string, value: T) => void;
}

/** Keeps between `most` and twice as many: when as many new ones have come, those not used since go. */
export function recent<T>(most: number): Recent<T> {
  let young = new Map<string, T>();
  let old = new Map<string, T>();
  const set = (key: string, value: T): void => {
    if (young.size >= most) {
      old = young;
      young = new Map();
    }
    young.set(key, value);
  };
  return {
    set,
    get: (key) => {
      const found = young.get(key);
      if (found !== undefined) return found;
      const before = old.get(key);
      if (before !== undefined) set(key, before);
      return before;
    },
  };
}
