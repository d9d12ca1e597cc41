// The reading structure, written as the pages go by: an element is written and let go as soon as reading has left it.
import type PDFDocument from 'pdfkit';
import type { Tag } from '../layout/placed.ts';

type Document = InstanceType<typeof PDFDocument>;
type Reference = PDFKit.PDFKitReference;

interface OpenElement {
  readonly tag: Tag;
  readonly reference: Reference;
  readonly data: Record<string, unknown>;
  readonly children: unknown[];
  page: Reference | undefined;
}

export interface Structure {
  /** Begins a page; its marked content is numbered from 0. Gives the key of the page in the parent tree. */
  readonly beginPage: (page: Reference) => number;
  /** Number of a new piece of marked content that belongs to a tag. */
  readonly mark: (tag: Tag) => number;
  /** Makes sure that an element exists, though nothing is drawn for it. */
  readonly touch: (tag: Tag) => void;
  /** Hangs an annotation below a tag; gives its key in the parent tree. */
  readonly annotation: (tag: Tag, annotation: Reference) => number;
  readonly endPage: () => void;
  readonly end: () => void;
}

/** Keeps the structure of one document. Tags must come in reading order; a tag come back to is a new element. */
export function structure(doc: Document): Structure {
  const rootData: Record<string, unknown> = { Type: 'StructTreeRoot' };
  const root = doc.ref(rootData);
  const tops: unknown[] = [];
  const parents: unknown[] = [];
  const open: OpenElement[] = [];
  let page: Reference | undefined;
  let pageKey = 0;
  let nextKey = 0;
  let marked: Reference[] = [];

  const close = (): void => {
    const element = open.pop();
    if (element === undefined) return;
    element.data['K'] = element.children;
    if (element.page !== undefined) element.data['Pg'] = element.page;
    element.reference.end(undefined);
    // The parent keeps the reference to the end; its contents are on disk and need not be kept with it.
    element.children.length = 0;
    for (const key of Object.keys(element.data)) delete element.data[key];
  };
  const begin = (tag: Tag): void => {
    const above = open.at(-1);
    const data: Record<string, unknown> = { S: tag.role, P: above?.reference ?? root, ...attributes(tag) };
    const reference = doc.ref(data);
    (above?.children ?? tops).push(reference);
    open.push({ tag, reference, data, children: [], page: undefined });
  };
  const touch = (tag: Tag): void => {
    const path = pathOf(tag);
    let same = 0;
    while (same < path.length && open[same]?.tag === path[same]) same += 1;
    while (open.length > same) close();
    for (const step of path.slice(same)) begin(step);
  };
  const at = (tag: Tag): OpenElement => {
    const last = open.at(-1);
    if (last?.tag === tag) return last;
    touch(tag);
    const element = open.at(-1);
    if (element === undefined) throw new Error('A tag without an element.');
    return element;
  };
  return {
    touch,
    beginPage: (next) => {
      page = next;
      marked = [];
      pageKey = nextKey;
      nextKey += 1;
      return pageKey;
    },
    mark: (tag) => {
      const element = at(tag);
      const id = marked.length;
      marked.push(element.reference);
      element.page ??= page;
      element.children.push(element.page === page ? id : { Type: 'MCR', Pg: page, MCID: id });
      return id;
    },
    annotation: (tag, annotation) => {
      const element = at(tag);
      element.children.push({ Type: 'OBJR', Obj: annotation, Pg: page });
      const key = nextKey;
      nextKey += 1;
      parents.push(key, element.reference);
      return key;
    },
    endPage: () => {
      const list = doc.ref(marked);
      list.end(undefined);
      parents.push(pageKey, list);
      marked.length = 0;
    },
    end: () => {
      while (open.length > 0) close();
      rootData['K'] = tops;
      rootData['ParentTree'] = { Nums: sorted(parents) };
      rootData['ParentTreeNextKey'] = nextKey;
      // The library writes both when the document ends.
      doc._root.data['StructTreeRoot'] = root;
      doc._root.data['MarkInfo'] = doc.ref({ Marked: true });
    },
  };
}

function pathOf(tag: Tag): readonly Tag[] {
  const path: Tag[] = [];
  for (let step: Tag | undefined = tag; step !== undefined; step = step.parent) path.unshift(step);
  return path;
}

function attributes(tag: Tag): Record<string, unknown> {
  if (tag.alt !== undefined) return { Alt: pdfText(tag.alt) };
  if (tag.heads !== undefined) return { A: { O: 'Table', Scope: tag.heads } };
  if (tag.span !== undefined) return { A: { O: 'Table', ColSpan: tag.span } };
  return {};
}

/** Text, as against a name: the library tells them apart by this. */
export function pdfText(text: string): unknown {
  return Object(text);
}

/** Key and value pairs in the order of their keys. */
function sorted(pairs: readonly unknown[]): readonly unknown[] {
  const entries: [number, unknown][] = [];
  for (let at = 0; at < pairs.length; at += 2) entries.push([Number(pairs[at]), pairs[at + 1]]);
  return entries.toSorted((a, b) => a[0] - b[0]).flat();
}
