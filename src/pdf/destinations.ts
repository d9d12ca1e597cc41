// Places that links lead to, and the outline that a reader shows beside the pages.
import type PDFDocument from 'pdfkit';
import type { AnchorItem } from '../layout/placed.ts';
import { points } from './numbers.ts';
import { hexText, reference, reserve, writeObject } from './objects.ts';
import type { OpenPage } from './open-page.ts';

type Document = InstanceType<typeof PDFDocument>;

export interface Destinations {
  readonly add: (anchor: AnchorItem, page: OpenPage) => void;
  /** The name of an anchor as it stands in the file. */
  readonly name: (id: string) => string;
  /** Writes names and outline. */
  readonly end: () => void;
}

/** A place is kept as two numbers: there are thousands in a long history. */
interface Place {
  readonly page: number;
  /** Points above the foot of the page. */
  readonly top: number;
}
interface Entry extends Place {
  readonly title: string;
  readonly depth: number;
}

export function destinations(doc: Document): Destinations {
  const names = new Map<string, Place>();
  const entries: Entry[] = [];
  return {
    name: (id) => '<' + bytesOf(id).toString('hex') + '>',
    add: (anchor, page) => {
      const place = { page: page.self.id, top: page.height - anchor.y + 6 };
      if (!names.has(anchor.id)) names.set(anchor.id, place);
      if (anchor.entry !== undefined) entries.push({ ...anchor.entry, ...place });
    },
    end: () => {
      writeNames(doc, names);
      writeOutline(doc, entries);
    },
  };
}

/** Names are compared byte by byte by readers, so they are written as bytes and sorted as bytes. */
function bytesOf(id: string): Buffer {
  return Buffer.from(id, 'utf8');
}

function placeText({ page, top }: Place): string {
  return '[' + reference(page) + '/XYZ null ' + points(top) + ' null]';
}

function writeNames(doc: Document, names: ReadonlyMap<string, Place>): void {
  const sorted = [...names]
    .map(([id, place]) => [bytesOf(id), place] as const)
    .toSorted((a, b) => Buffer.compare(a[0], b[0]));
  const tree = doc.ref({});
  const pairs = sorted.map(([id, place]) => '<' + id.toString('hex') + '>' + placeText(place));
  writeObject(doc, tree.id, '<</Names[' + pairs.join('\n') + ']>>');
  const catalogue: unknown = doc._root.data['Names'];
  if (isReference(catalogue)) Object.assign(catalogue.data, { Dests: tree });
}

function isReference(value: unknown): value is { readonly data: Record<string, unknown> } {
  return typeof value === 'object' && value !== null && 'data' in value;
}

/** An entry with what hangs on it, as numbers of objects. */
interface Level {
  readonly depth: number;
  readonly number: number;
  readonly words: string[];
  last: Level | undefined;
  first: number | undefined;
  count: number;
}

/** The outline as a chain of entries below their parents; only the top is shown open. */
function writeOutline(doc: Document, entries: readonly Entry[]): void {
  if (entries.length === 0) return;
  const root = doc.ref({});
  const level = (depth: number, number: number, words: readonly string[]): Level => ({
    depth,
    number,
    words: [...words],
    last: undefined,
    first: undefined,
    count: 0,
  });
  const above: Level[] = [level(0, root.id, ['/Type/Outlines'])];
  const all: Level[] = [...above];
  for (const { depth, title, ...place } of entries) {
    while ((above.at(-1)?.depth ?? 0) >= depth) above.pop();
    const parent = above.at(-1);
    if (parent === undefined) continue;
    const words = ['/Title' + hexText(title), '/Parent ' + reference(parent.number), '/Dest' + placeText(place)];
    const made = level(depth, reserve(doc), words);
    if (parent.last !== undefined) {
      made.words.push('/Prev ' + reference(parent.last.number));
      parent.last.words.push('/Next ' + reference(made.number));
    }
    parent.first ??= made.number;
    parent.last = made;
    parent.count += 1;
    above.push(made);
    all.push(made);
  }
  for (const each of all) writeObject(doc, each.number, '<<' + each.words.join('') + belowText(each) + '>>');
  Object.assign(doc._root.data, { Outlines: root, PageMode: 'UseOutlines' });
}

function belowText({ first, last, count, depth }: Level): string {
  if (first === undefined || last === undefined) return '';
  const shown = depth <= 1 ? count : -count;
  return `/First ${reference(first)}/Last ${reference(last.number)}/Count ${String(shown)}`;
}
