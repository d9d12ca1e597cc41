// Files carried inside the PDF, said to be the data that its pages were made from.
import { createHash } from 'node:crypto';
import type PDFDocument from 'pdfkit';
import { pdfText } from './structure.ts';

type Document = InstanceType<typeof PDFDocument>;

/** A file carried inside the PDF, such as the record a sheet was made from. */
export interface Attached {
  readonly name: string;
  readonly description: string;
  /** Its media type, such as `application/json`. */
  readonly type: string;
  readonly bytes: Uint8Array;
}

/** Writes files as associated files of the whole document (ISO 32000-2, 14.13), in the order of their names; dates are the records'. */
export function attachFiles(doc: Document, files: readonly Attached[], date: Date): void {
  if (files.length === 0) return;
  const sorted = files.toSorted((a, b) => (a.name < b.name ? -1 : 1));
  const specifications = sorted.map((file) => specification(doc, file, date));
  for (const [index, file] of sorted.entries()) doc.addNamedEmbeddedFile(file.name, specifications[index]);
  doc._root.data['AF'] = specifications;
}

function specification(doc: Document, file: Attached, date: Date): PDFKit.PDFKitReference {
  const checkSum = createHash('md5').update(file.bytes).digest();
  const params = { Size: file.bytes.length, CreationDate: date, ModDate: date, CheckSum: new Uint8Array(checkSum) };
  const subtype = file.type.replace('/', '#2F');
  const embedded = doc.ref({ Type: 'EmbeddedFile', Subtype: subtype, Params: params });
  embedded.end(Buffer.from(file.bytes));
  const about = doc.ref({
    Type: 'Filespec',
    F: pdfText(file.name),
    UF: pdfText(file.name),
    Desc: pdfText(file.description),
    AFRelationship: 'Source',
    EF: { F: embedded, UF: embedded },
  });
  about.end(undefined);
  return about;
}
