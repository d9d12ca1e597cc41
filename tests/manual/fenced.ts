// Fenced examples of a manual page: the word after the language names the file that an example is.
export interface Fenced {
  readonly language: string;
  readonly file: string;
  readonly text: string;
  /** 1-based line of the fence. */
  readonly line: number;
}

/** All fenced pieces of a page, in order. A longer fence may hold shorter ones. */
export function fenced(page: string): readonly Fenced[] {
  const found: Fenced[] = [];
  const lines = page.split('\n');
  for (let i = 0; i < lines.length; i += 1) {
    const open = /^(`{3,})(\S*)[ ]?(.*)$/u.exec(lines[i] ?? '');
    if (open === null) continue;
    const end = lines.indexOf(open[1] ?? '', i + 1);
    if (end < 0) throw new Error(`the fence of line ${String(i + 1)} is never closed`);
    const text = lines.slice(i + 1, end).map((line) => `${line}\n`);
    found.push({ language: open[2] ?? '', file: (open[3] ?? '').trim(), text: text.join(''), line: i + 1 });
    i = end;
  }
  return found;
}
