// The table of contents of the file, compressed (ISO 32000-1, 7.5.8): where each object begins, or in which pack it lies.
import { deflateSync } from 'node:zlib';
import type PDFDocument from 'pdfkit';
import { reference } from './objects.ts';
import { placeOf } from './packed-objects.ts';

type Document = InstanceType<typeof PDFDocument>;

/** One byte says the kind of entry, four where the object is, two its place in a pack. */
const widths = [1, 4, 2] as const;
const columns = widths[0] + widths[1] + widths[2];

/** Ends the file in place of the library, whose table takes twenty bytes an object and knows no packs. */
export function writesCrossReferences(doc: Document): void {
  doc._finalize = () => {
    const start = doc._offset;
    doc._offsets.push(start);
    const number = doc._offsets.length;
    const bytes = deflateSync(entries(doc));
    const id = '<' + Buffer.from(doc._id).toString('hex') + '>';
    const dictionary = [
      '<</Type/XRef',
      `/Size ${String(number + 1)}`,
      `/W[${widths.join(' ')}]`,
      `/Root ${reference(doc._root.id)}`,
      `/Info ${reference(doc._info.id)}`,
      `/ID[${id}${id}]`,
      `/Filter/FlateDecode/DecodeParms<</Predictor 12/Columns ${String(columns)}>>`,
      `/Length ${String(bytes.length)}>>`,
    ].join('');
    doc._write(Buffer.from(`${String(number)} 0 obj\n${dictionary}\nstream\n`, 'latin1'));
    doc._write(bytes);
    doc._write(Buffer.from(`\nendstream\nendobj\nstartxref\n${String(start)}\n%%EOF\n`, 'latin1'));
    doc.push(null);
  };
}

/** Every entry as its difference from the one above it, which is nearly always the same few bytes. */
function entries(doc: Document): Uint8Array {
  const count = doc._offsets.length + 1;
  const out = Buffer.alloc(count * (columns + 1));
  let above = Buffer.alloc(columns);
  let now = Buffer.alloc(columns);
  for (let number = 0; number < count; number += 1) {
    // Number 0 is the head of the list of free objects, which nothing else is on.
    const [kind, where, within] = number === 0 ? [0, 0, 65_535] : placeOf(doc, number);
    now.writeUInt8(kind, 0);
    now.writeUInt32BE(where, widths[0]);
    now.writeUInt16BE(within, widths[0] + widths[1]);
    const from = number * (columns + 1);
    out.writeUInt8(2, from);
    for (let at = 0; at < columns; at += 1) {
      out.writeUInt8(((now[at] ?? 0) - (above[at] ?? 0)) & 255, from + 1 + at);
    }
    [above, now] = [now, above];
  }
  return out;
}
