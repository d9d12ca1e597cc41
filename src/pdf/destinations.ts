// Places that links lead to, and the outline that a reader shows beside the pages.
import type PDFDocument from 'pdfkit';
import type { AnchorItem } from '../layout/placed.ts';
import { pdfText } from './structure.ts';

type Document = InstanceType<typeof PDFDocument>;
type Reference = PDFKit.PDFKitReference;

export interface Destinations {
  readonly add: (anchor: AnchorItem, pageHeight: number) => void;
  /** The name of an anchor as it stands in the file. */
  readonly name: (id: string) => string;
  /** Writes names and outline. */
  readonly end: () => void;
}

interface Entry {
  readonly title: string;
  readonly depth: number;
  readonly place: readonly unknown[];
  readonly data: Record<string, unknown>;
  readonly reference: Reference;
}

export function destinations(doc: Document): Destinations {
  const names = new Map<string, readonly unknown[]>();
  const entries: Entry[] = [];
  return {
    name: (id) => '<' + Buffer.from(bytesOf(id)).toString('hex') + '>',
    add: (anchor, pageHeight) => {
      const place = [doc.page.dictionary, 'XYZ', null, pageHeight - anchor.y + 6, null];
      if (!names.has(anchor.id)) names.set(anchor.id, place);
      if (anchor.entry === undefined) return;
      const data = {};
      entries.push({ ...anchor.entry, place, data, reference: doc.ref(data) });
    },
    end: () => {
      writeNames(doc, names);
      writeOutline(doc, entries);
    },
  };
}

/** Names are compared byte by byte by readers, so they are written as bytes and sorted as bytes. */
function bytesOf(id: string): Uint8Array {
  return new TextEncoder().encode(id);
}

function writeNames(doc: Document, names: ReadonlyMap<string, readonly unknown[]>): void {
  const sorted = [...names]
    .map(([id, place]) => [bytesOf(id), place] as const)
    .toSorted((a, b) => Buffer.compare(a[0], b[0]));
  const tree = doc.ref({ Names: sorted.flatMap(([id, place]) => [id, place]) });
  tree.end(undefined);
  const catalogue: unknown = doc._root.data['Names'];
  if (isReference(catalogue)) Object.assign(catalogue.data, { Dests: tree });
}

function isReference(value: unknown): value is { readonly data: Record<string, unknown> } {
  return typeof value === 'object' && value !== null && 'data' in value;
}

/** The outline as a chain of entries below their parents; only the top is shown open. */
function writeOutline(doc: Document, entries: readonly Entry[]): void {
  if (entries.length === 0) return;
  const rootData: Record<string, unknown> = { Type: 'Outlines' };
  const root = doc.ref(rootData);
  const above: {
    readonly depth: number;
    readonly reference: Reference;
    readonly data: Record<string, unknown>;
    last: Entry | undefined;
    count: number;
  }[] = [{ depth: 0, reference: root, data: rootData, last: undefined, count: 0 }];
  for (const entry of entries) {
    while ((above.at(-1)?.depth ?? 0) >= entry.depth) sealed(above.pop());
    const parent = above.at(-1);
    if (parent === undefined) continue;
    Object.assign(entry.data, { Title: pdfText(entry.title), Parent: parent.reference, Dest: entry.place });
    if (parent.last === undefined) parent.data['First'] = entry.reference;
    else {
      Object.assign(entry.data, { Prev: parent.last.reference });
      Object.assign(parent.last.data, { Next: entry.reference });
    }
    parent.last = entry;
    parent.count += 1;
    above.push({ depth: entry.depth, reference: entry.reference, data: entry.data, last: undefined, count: 0 });
  }
  while (above.length > 0) sealed(above.pop());
  for (const entry of entries) entry.reference.end(undefined);
  root.end(undefined);
  Object.assign(doc._root.data, { Outlines: root, PageMode: 'UseOutlines' });
}

function sealed(
  level:
    | {
        readonly depth: number;
        readonly data: Record<string, unknown>;
        readonly last: Entry | undefined;
        readonly count: number;
      }
    | undefined,
): void {
  if (level?.last === undefined) return;
  level.data['Last'] = level.last.reference;
  level.data['Count'] = level.depth <= 1 ? level.count : -level.count;
}
