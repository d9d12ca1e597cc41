// Which of the known names was probably meant: slips of one or two letters, swapped letters, and spaces for hyphens.

/** Up to three names near to `word`, nearest first, at most so many slips off; case, spaces, hyphens and underscores do not count. */
export function nearest(word: string, names: Iterable<string>, atMost = 3): readonly string[] {
  const key = plain(word);
  const allowed = Math.min(key.length <= 3 ? 1 : key.length <= 7 ? 2 : 3, atMost);
  const found: { name: string; slips: number }[] = [];
  for (const name of names) {
    if (Math.abs(name.length - key.length) > allowed + 1) continue;
    const other = plain(name);
    const slips = slipsBetween(key, other, allowed);
    if (slips <= allowed && slips < Math.max(key.length, other.length)) found.push({ name, slips });
  }
  found.sort((a, b) => a.slips - b.slips || (a.name < b.name ? -1 : 1));
  return [...new Set(found.map((f) => f.name))].slice(0, 3);
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(/[\s_-]+/gu, ' ')
    .trim();
}

/** Letters to put in, take out, change or swap (optimal string alignment); more than `allowed` as soon as that is sure. */
function slipsBetween(a: string, b: string, allowed: number): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const now = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const least = Math.min((now[j - 1] ?? 0) + 1, (last[j] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      now.push(swapped ? Math.min(least, (before[j - 2] ?? 0) + 1) : least);
    }
    // A row follows from the two above it: when both are over, all below them are.
    if (Math.min(...now) > allowed && Math.min(...last) > allowed) return allowed + 1;
    before = last;
    last = now;
  }
  return last[b.length] ?? 0;
}
