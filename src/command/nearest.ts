// Names in the order of their likeness to what was typed.

/** All names, nearest first: those that hold the typed text before the rest, then by the number of changed letters. */
export function nearest(typed: string, names: readonly string[]): readonly string[] {
  const distances = new Map(names.map((name) => [name, distance(typed, name)]));
  return [...names].sort((a, b) => (distances.get(a) ?? 0) - (distances.get(b) ?? 0) || (a < b ? -1 : 1));
}

/** Those that may have been meant: they hold the typed text, or no more than a third of its letters is changed. */
export function likely(typed: string, names: readonly string[]): readonly string[] {
  return nearest(typed, names).filter((name) => distance(typed, name) <= Math.max(1, typed.length / 3));
}

function distance(typed: string, name: string): number {
  const small = typed.toLowerCase();
  return name.toLowerCase().includes(small) ? -1 : changes(small, name.toLowerCase());
}

/** Levenshtein's distance: letters put in, left out or changed. */
function changes(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const change = (row[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}
