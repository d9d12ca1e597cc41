// What is typed is kept in the browser's own store, where a page that was opened from a file may use it.
/// <reference lib="dom" />

export interface Keeper {
  /** False where this browser keeps nothing for this page. */
  readonly keeps: boolean;
  readonly read: () => Readonly<Record<string, string>>;
  /** Keeps values by the name of their field; false when they could not be kept. */
  readonly write: (values: Readonly<Record<string, string>>) => boolean;
  readonly forget: () => void;
}

export function openKeeper(key: string): Keeper {
  const store = storeOf();
  return {
    keeps: store !== undefined,
    read: () => valuesOf(attempt(() => store?.getItem(key)) ?? '{}'),
    write: (values) =>
      store !== undefined && attempt(() => (store.setItem(key, JSON.stringify(values)), true)) === true,
    forget: () => attempt(() => store?.removeItem(key)),
  };
}

/** The store, if it takes a word and gives it back: some browsers have one that is always empty. */
function storeOf(): Storage | undefined {
  return attempt(() => {
    const store = window.localStorage;
    store.setItem('splitpin try', 'kept');
    const kept = store.getItem('splitpin try') === 'kept';
    store.removeItem('splitpin try');
    return kept ? store : undefined;
  });
}

function valuesOf(text: string): Readonly<Record<string, string>> {
  const value: unknown = attempt(() => JSON.parse(text));
  if (typeof value !== 'object' || value === null) return {};
  return Object.fromEntries(
    Object.entries(value).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
}

/** A store that is full, forbidden or broken throws; here that only means that nothing is kept. */
function attempt<T>(what: () => T): T | undefined {
  try {
    return what();
  } catch {
    return undefined;
  }
}
