// The reading structure, written as the pages go by: an element is written and let go as soon as reading has left it.
import type PDFDocument from 'pdfkit';
import type { Tag } from '../layout/placed.ts';
import { around, type Extent } from './extent.ts';
import { points } from './numbers.ts';
import { hexText, reference, reserve, writeObject } from './objects.ts';

type Document = InstanceType<typeof PDFDocument>;

interface OpenElement {
  readonly tag: Tag;
  readonly number: number;
  readonly parent: number;
  readonly children: string[];
  /** Number of the page where its content begins. */
  page: number | undefined;
  /** Of a figure: what it takes on its page. */
  extent?: Extent;
}

export interface Structure {
  /** Begins the page with this number; its marked content is numbered from 0. Gives the key of the page in the parent tree. */
  readonly beginPage: (page: number) => number;
  /** Number of a new piece of marked content that belongs to a tag. */
  readonly mark: (tag: Tag) => number;
  /** Makes sure that an element exists, though nothing is drawn for it. */
  readonly touch: (tag: Tag) => void;
  /** Says what of a page a figure takes, in points from the upper left corner. */
  readonly takes: (tag: Tag, part: Extent, pageHeight: number) => void;
  /** Hangs an annotation below a tag; gives its key in the parent tree. */
  readonly annotation: (tag: Tag, annotation: number) => number;
  readonly endPage: () => void;
  readonly end: () => void;
}

/** Keeps the structure of one document. Tags must come in reading order; a tag come back to is a new element. */
export function structure(doc: Document): Structure {
  const kids = doc.ref({});
  const tree = doc.ref({});
  const root = doc.ref({ Type: 'StructTreeRoot', K: kids, ParentTree: tree });
  const tops: string[] = [];
  /** Numbers of the objects that own what stands under each key; a long history has tens of thousands. */
  const parents: number[] = [];
  const open: OpenElement[] = [];
  let page = 0;
  let pageKey = 0;
  let nextKey = 0;
  let marked: string[] = [];

  const begin = (tag: Tag): void => {
    const above = open.at(-1);
    const number = reserve(doc);
    (above?.children ?? tops).push(reference(number));
    open.push({ tag, number, parent: above?.number ?? root.id, children: [], page: undefined });
  };
  const close = (): void => {
    const element = open.pop();
    if (element !== undefined) writeObject(doc, element.number, elementBody(element));
  };
  const isOpen = (tag: Tag): boolean => open.some((element) => element.tag === tag);
  /** Closes what is not above a tag and opens what is missing down to it. */
  const touch = (tag: Tag): void => {
    const fresh: Tag[] = [];
    let step: Tag | undefined = tag;
    for (; step !== undefined && !isOpen(step); step = step.parent) fresh.push(step);
    while (open.length > 0 && open.at(-1)?.tag !== step) close();
    for (let at = fresh.length - 1; at >= 0; at -= 1) begin(fresh[at] ?? tag);
  };
  const at = (tag: Tag): OpenElement => {
    if (open.at(-1)?.tag !== tag) touch(tag);
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
      marked.push(reference(element.number));
      element.page ??= page;
      element.children.push(
        element.page === page ? String(id) : '<</Type/MCR/Pg ' + reference(page) + '/MCID ' + String(id) + '>>',
      );
      return id;
    },
    takes: (tag, { left, top, right, bottom }, pageHeight) => {
      const element = at(tag);
      const turned = { left, top: pageHeight - bottom, right, bottom: pageHeight - top };
      element.extent = around(element.extent, turned);
    },
    annotation: (tag, annotation) => {
      const element = at(tag);
      element.children.push('<</Type/OBJR/Obj ' + reference(annotation) + '/Pg ' + reference(page) + '>>');
      const key = nextKey;
      nextKey += 1;
      parents[key] = element.number;
      return key;
    },
    endPage: () => {
      const list = reserve(doc);
      writeObject(doc, list, '[' + marked.join(' ') + ']');
      parents[pageKey] = list;
    },
    end: () => {
      while (open.length > 0) close();
      writeObject(doc, kids.id, '[' + tops.join(' ') + ']');
      const pairs = parents.map((owner, key) => String(key) + ' ' + reference(owner));
      writeObject(doc, tree.id, '<</Nums[' + pairs.join(' ') + ']>>');
      // The library writes both when the document ends.
      doc._root.data['StructTreeRoot'] = root;
      doc._root.data['MarkInfo'] = doc.ref({ Marked: true });
    },
  };
}

function elementBody(element: OpenElement): string {
  const { tag, children, page } = element;
  const on = page === undefined ? '' : '/Pg ' + reference(page);
  return (
    '<</S/' +
    tag.role +
    '/P ' +
    reference(element.parent) +
    attributes(element) +
    on +
    '/K[' +
    children.join(' ') +
    ']>>'
  );
}

function attributes({ tag, extent }: OpenElement): string {
  if (tag.alt !== undefined) {
    const { left, top, right, bottom } = extent ?? { left: 0, top: 0, right: 0, bottom: 0 };
    const box = [left, top, right, bottom].map(points).join(' ');
    return '/Alt ' + hexText(tag.alt) + '/A<</O/Layout/Placement/Block/BBox[' + box + ']>>';
  }
  if (tag.heads !== undefined) return '/A<</O/Table/Scope/' + tag.heads + '>>';
  if (tag.span !== undefined) return '/A<</O/Table/ColSpan ' + String(tag.span) + '>>';
  return '';
}

/** Text, as against a name: the library tells them apart by this. */
export function pdfText(text: string): unknown {
  return Object(text);
}
