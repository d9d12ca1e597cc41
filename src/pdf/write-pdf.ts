// A sheet as a PDF: pages are laid out, drawn and handed out one by one; the same sheet gives the same bytes.
import PDFDocument from 'pdfkit';
import { layOut, type PlacedPage } from '../layout/layout.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { maker, writeAbout } from './about.ts';
import { attachFiles, type Attached } from './attach.ts';
import { writesCrossReferences } from './cross-references.ts';
import { destinations } from './destinations.ts';
import { drawPage } from './draw-page.ts';
import type { PhotoAt } from './draw-photo.ts';
import { widthOf } from './faces.ts';
import type { Form } from './form.ts';
import { formFields } from './form-fields.ts';
import { underForm } from './form-sheet.ts';
import { reference, reserve, writeObject } from './objects.ts';
import { writePack } from './packed-objects.ts';
import { sink } from './sink.ts';
import { pdfText, structure } from './structure.ts';
import { total } from './total.ts';
import { typesetter, type Typesetter } from './type.ts';

export type { Attached } from './attach.ts';

export interface PdfOptions {
  /** Takes the bytes as they are made. */
  readonly out: (chunk: Uint8Array) => void;
  readonly photo: PhotoAt;
  readonly attach?: readonly Attached[];
  /** The sheet is printed as a form to be filled in on a screen. */
  readonly form?: Form;
  /** Is given the first page as it was placed, when it is known how many there are. */
  readonly first?: (page: PlacedPage, pages: number) => void;
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
  const date = dateOf(sheet.recordsDay);
  const title = sheet.title + ' · ' + sheet.machine;
  const doc = new PDFDocument({
    autoFirstPage: false,
    font: '',
    pdfVersion: '1.7',
    lang: sheet.language,
    displayTitle: true,
    info: {
      Title: title,
      Creator: maker,
      Producer: maker,
      CreationDate: date,
      ModDate: date,
    },
  });
  const ended = new Promise<void>((resolve, reject) => void doc.once('end', resolve).once('error', reject));
  const bytes = sink(options.out);
  doc.on('data', (chunk: Uint8Array) => bytes.take(chunk));
  writesCrossReferences(doc);
  // Only after a turn of the loop does the stream hand chunks out at once instead of keeping them.
  await turn();
  const type = typesetter(doc);
  const tree = structure(doc);
  const fields = options.form === undefined ? undefined : formFields(doc, options.form, tree, type);
  const printing = {
    doc,
    type,
    structure: tree,
    destinations: destinations(doc),
    total: total(doc, type),
    photo: options.photo,
    fonts: reserve(doc),
    ...(fields === undefined ? {} : { fields }),
  };
  let pages = 0;
  let first: PlacedPage | undefined;
  for (const page of layOut(options.form === undefined ? sheet : underForm(sheet, options.form), {
    width: widthOf,
    photo: options.photo,
  })) {
    drawPage(page, printing);
    pages += 1;
    first ??= options.first === undefined ? undefined : page;
    if (pages % 50 === 0) await turn();
  }
  if (first !== undefined) options.first?.(first, pages);
  printing.total.end(pages);
  fields?.end();
  printing.structure.end();
  printing.destinations.end();
  writeObject(doc, printing.fonts, fontList(type));
  doc._root.data['PageLabels'] = { Nums: [0, { S: 'D', P: pdfText(sheet.code + '-') }] };
  attachFiles(doc, options.attach ?? [], date);
  writeAbout(doc, { title, language: sheet.language, date });
  writePack(doc);
  doc.end();
  // Everything above is written at once; an object that was begun and never ended would make the stream wait for ever.
  if (doc._waiting > 0) throw new Error('Objects of the PDF were begun and never ended: ' + String(doc._waiting));
  await ended;
  bytes.end();
  return { pages, missingCharacters: [...type.missing].toSorted() };
}

/** The fonts of the document by their names on every page. */
function fontList({ fonts }: Typesetter): string {
  const pairs = [...fonts].map(([name, font]) => '/' + name + ' ' + reference(font.reference.id));
  return '<<' + pairs.join('') + '>>';
}

function turn(): Promise<void> {
  return new Promise((resolve) => void setImmediate(resolve));
}

/** Midnight of the newest record's day; where nothing is recorded yet a fixed day, never the clock. */
function dateOf(day: string): Date {
  const date = new Date((/^\d{4}-\d{2}-\d{2}$/.test(day) ? day : '1970-01-01') + 'T00:00:00Z');
  return Number.isNaN(date.getTime()) ? new Date(0) : date;
}
