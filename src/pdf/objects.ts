// Objects of the file written as text at once: hundreds stand on a page, and going through the library for each costs most of a page.
import type PDFDocument from 'pdfkit';
import { packed, packs } from './packed-objects.ts';

type Document = InstanceType<typeof PDFDocument>;

/** Takes a number for an object that is written later. */
export function reserve(doc: Document): number {
  doc._offsets.push(null);
  doc._waiting += 1;
  return doc._offsets.length;
}

/** Writes an object whose number was taken; `body` is its text, in plain characters. It has no stream of its own. */
export function writeObject(doc: Document, number: number, body: string): void {
  const pack = packs(doc);
  pack.texts.push(body);
  pack.numbers.push(number);
  pack.length += body.length;
  doc._waiting -= 1;
  packed(doc, pack);
}

/** A reference to an object by its number. */
export function reference(number: number): string {
  return String(number) + ' 0 R';
}

/** A text as a string of hexadecimal digits, which every reader takes in any language. */
export function hexText(text: string): string {
  return '<feff' + Buffer.from(text, 'utf16le').swap16().toString('hex') + '>';
}
