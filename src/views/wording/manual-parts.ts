// A page of the manual as the site has it: whole, or, where it is long, in parts cut at its headings.

/** Characters of text that make a page of at most 60 KB. */
const mostCharacters = 34_000;

export interface ManualPart {
  readonly file: string;
  /** Counted from 1. */
  readonly number: number;
  readonly body: string;
}

/** `problems` is already the page of what to look at; the manual of problem codes has a name of its own. */
export function manualFile(id: string): string {
  return id === 'problems' ? 'problems-manual.html' : `${id}.html`;
}

/** The page that a further part belongs to: `fields.html` of `fields-2.html`. */
export function manualBase(file: string): string {
  return file.replace(/-\d+(?=\.html$)/u, '');
}

/** The parts in their order, the first under the name of the page. */
export function manualParts(id: string, body: string): readonly ManualPart[] {
  const sections = sectionsOf(body);
  const bodies: string[] = [];
  for (const section of sections) {
    const last = bodies.at(-1);
    if (last === undefined || last.length + section.length > mostCharacters) bodies.push(section);
    else bodies[bodies.length - 1] = last + section;
  }
  const base = manualFile(id);
  return bodies.map((text, index) => ({
    file: index === 0 ? base : base.replace('.html', `-${String(index + 1)}.html`),
    number: index + 1,
    body: text,
  }));
}

/** Each from its heading on; a heading inside a fence is an example. */
function sectionsOf(body: string): readonly string[] {
  const sections: string[] = [''];
  let fence = '';
  for (const line of body.split('\n')) {
    const mark = /^(`{3,}|~{3,})/u.exec(line)?.[1] ?? '';
    if (fence === '') fence = mark;
    else if (mark.startsWith(fence)) fence = '';
    if (fence === '' && line.startsWith('## ')) sections.push('');
    sections[sections.length - 1] = `${sections.at(-1) ?? ''}${line}\n`;
  }
  return sections.filter((text) => text !== '');
}

/** The file with the anchor of an entry of the manual, as a reference gives it. */
export function manualPlace(id: string, body: string, code: string): string {
  const part = manualParts(id, body).find((one) => `\n${one.body}`.includes(`\n## ${code}\n`));
  return `${part?.file ?? manualFile(id)}#${code}`;
}
