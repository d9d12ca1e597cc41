// A sheet as a PDF: pages are laid out, drawn and handed out one by one; the same sheet gives the same bytes.
import PDFDocument from 'pdfkit';
import { layOut } from '../layout/layout.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { destinations } from './destinations.ts';
import { drawPage } from './draw-page.ts';
import type { PhotoAt } from './draw-photo.ts';
import { widthOf } from './faces.ts';
import { sink } from './sink.ts';
import { pdfText, structure } from './structure.ts';
import { total } from './total.ts';
import { typesetter } from './type.ts';

/** A file carried inside the PDF, such as the record a sheet was made from. */
export interface Attached {
  readonly name: string;
  readonly description: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}
export interface PdfOptions {
  /** Takes the bytes as they are made. */
  readonly out: (chunk: Uint8Array) => void;
  readonly photo: PhotoAt;
  readonly attach?: readonly Attached[];
}
export interface Written {
  readonly pages: number;
  /** Characters that no font has; they are printed as U+XXXX. */
  readonly missingCharacters: readonly string[];
}

/**
 * Writes a sheet as a tagged PDF. Dates come from the records, never from the clock.
 * Pages are handed out as they are drawn, so memory does not grow with what is on them.
 */
export async function writePdf(sheet: Sheet, options: PdfOptions): Promise<Written> {
  const date = dateOf(sheet.recordsDate);
  const doc = new PDFDocument({
    autoFirstPage: false,
    font: '',
    pdfVersion: '1.7',
    lang: sheet.language,
    displayTitle: true,
    info: {
      Title: sheet.title + ' · ' + sheet.machine,
      Creator: 'Splitpin',
      Producer: 'Splitpin',
      CreationDate: date,
      ModDate: date,
    },
  });
  const ended = new Promise<void>((resolve, reject) => void doc.once('end', resolve).once('error', reject));
  const bytes = sink(options.out);
  doc.on('data', (chunk: Uint8Array) => bytes.take(chunk));
  // Only after a turn of the loop does the stream hand chunks out at once instead of keeping them.
  await turn();
  const type = typesetter(doc);
  const printing = {
    doc,
    type,
    structure: structure(doc),
    destinations: destinations(doc),
    total: total(doc, type),
    photo: options.photo,
  };
  let pages = 0;
  for (const page of layOut(sheet, { width: widthOf, photo: options.photo })) {
    drawPage(page, printing);
    pages += 1;
    if (pages % 50 === 0) await turn();
  }
  printing.total.end(pages);
  printing.structure.end();
  printing.destinations.end();
  doc._root.data['PageLabels'] = { Nums: [0, { S: 'D', P: pdfText(sheet.code + '-') }] };
  for (const file of options.attach ?? []) attach(doc, file, date);
  doc.end();
  // Everything above is written at once; an object that was begun and never ended would make the stream wait for ever.
  if (doc._waiting > 0) throw new Error('Objects of the PDF were begun and never ended: ' + String(doc._waiting));
  await ended;
  bytes.end();
  return { pages, missingCharacters: [...type.missing].toSorted() };
}

function attach(doc: InstanceType<typeof PDFDocument>, file: Attached, date: Date): void {
  const about = { name: file.name, description: file.description, type: file.type, relationship: 'Source' as const };
  doc.file(Buffer.from(file.bytes), { ...about, creationDate: date, modifiedDate: date });
}

function turn(): Promise<void> {
  return new Promise((resolve) => void setImmediate(resolve));
}

/** Midnight of the records' date; a date that is none gives a fixed day, never the clock. */
function dateOf(text: string): Date {
  const found = /\d{4}-\d{2}-\d{2}/.exec(text)?.[0];
  const date = new Date((found ?? '1970-01-01') + 'T00:00:00Z');
  return Number.isNaN(date.getTime()) ? new Date(0) : date;
}
