// A PDF made and read back: what a reading program sees of it.
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { writePdf, type PdfOptions, type Written } from '../../src/pdf/write-pdf.ts';

export interface Made extends Written {
  readonly bytes: Buffer;
}

export async function makePdf(sheet: Sheet, more: Partial<PdfOptions> = {}): Promise<Made> {
  const chunks: Uint8Array[] = [];
  const written = await writePdf(sheet, { out: (chunk) => void chunks.push(chunk), photo: () => undefined, ...more });
  return { ...written, bytes: Buffer.concat(chunks) };
}

export async function openPdf(bytes: Buffer): Promise<PDFDocumentProxy> {
  return getDocument({ data: new Uint8Array(bytes), verbosity: 0, isEvalSupported: false }).promise;
}

/** Text of a page in the order of its content. */
export async function pageText(document: PDFDocumentProxy, number: number): Promise<string> {
  const page = await document.getPage(number);
  const content = await page.getTextContent();
  return content.items.map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : '')).join('');
}

export interface Node {
  readonly role: string;
  readonly alt?: string;
  readonly children: readonly Node[];
}

/** The reading structure of a page. */
export async function structureOf(document: PDFDocumentProxy, number: number): Promise<Node> {
  const page = await document.getPage(number);
  return nodeOf(await page.getStructTree());
}

function nodeOf(tree: unknown): Node {
  if (typeof tree !== 'object' || tree === null) return { role: '', children: [] };
  const role = 'role' in tree && typeof tree.role === 'string' ? tree.role : 'content';
  const children = 'children' in tree && Array.isArray(tree.children) ? tree.children.map(nodeOf) : [];
  return 'alt' in tree && typeof tree.alt === 'string' ? { role, alt: tree.alt, children } : { role, children };
}

export function everyNode(node: Node): readonly Node[] {
  return [node, ...node.children.flatMap(everyNode)];
}
