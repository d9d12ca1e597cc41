// A page while it is drawn: its number, and what it uses. Its own few words are written by us; all pages share one list of fonts.
import type PDFDocument from 'pdfkit';
import { points } from './numbers.ts';
import { reference, writeObject } from './objects.ts';
import { writeStream } from './stream.ts';

type Document = InstanceType<typeof PDFDocument>;

export interface OpenPage {
  /** The page as others refer to it. */
  readonly self: PDFKit.PDFKitReference;
  readonly width: number;
  readonly height: number;
  /** Pictures and small drawings that are shown on it: their numbers by the names they have on it. */
  readonly drawings: Map<string, number>;
  /** Numbers of its links and fields. */
  readonly annotations: number[];
}

/** Begins a page, after all that were begun before. */
export function openPage(doc: Document, width: number, height: number): OpenPage {
  const self = doc.ref({});
  const { data } = doc._root.data.Pages;
  data.Kids.push(self);
  data.Count += 1;
  return { self, width, height, drawings: new Map(), annotations: [] };
}

/** Writes a page: what is drawn on it, its key in the structure, and the list of fonts by its number. */
export function closePage(doc: Document, page: OpenPage, operators: string, key: number, fonts: number): void {
  const content = writeStream(doc, '', Buffer.from(operators, 'latin1'));
  const drawings = [...page.drawings].map(([name, number]) => `/${name} ${reference(number)}`).join('');
  const annotations = page.annotations.map(reference).join(' ');
  const body = [
    `<</Type/Page/Parent ${reference(doc._root.data.Pages.id)}`,
    `/MediaBox[0 0 ${points(page.width)} ${points(page.height)}]`,
    `/Contents ${reference(content)}`,
    `/Resources<</Font ${reference(fonts)}${drawings === '' ? '' : `/XObject<<${drawings}>>`}>>`,
    annotations === '' ? '' : `/Annots[${annotations}]`,
    `/StructParents ${String(key)}/Tabs/S>>`,
  ];
  writeObject(doc, page.self.id, body.join(''));
}
