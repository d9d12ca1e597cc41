// Small objects packed together and compressed (ISO 32000-1, 7.5.7): tags and links are most of a long history, and much alike.
import type PDFDocument from 'pdfkit';
import { writeStream } from './stream.ts';

type Document = InstanceType<typeof PDFDocument>;

/** Objects of one document that wait to be written together. */
interface Pack {
  texts: string[];
  numbers: number[];
  length: number;
}

/** So many objects, or so many characters, are packed together: a reader unpacks all of them to get at one. */
const mostObjects = 500;
const mostCharacters = 60_000;

/** The place of a packed object is kept beside the offsets of the others, below zero: number of its pack, place in it. */
const placesInPack = 1024;

const waiting = new WeakMap<Document, Pack>();

/** What waits to be packed in a document. */
export function packs(doc: Document): Pack {
  const known = waiting.get(doc);
  if (known !== undefined) return known;
  const pack: Pack = { texts: [], numbers: [], length: 0 };
  waiting.set(doc, pack);
  return pack;
}

/** Writes what waits, if it is enough. */
export function packed(doc: Document, pack: Pack): void {
  if (pack.texts.length >= mostObjects || pack.length >= mostCharacters) writePack(doc);
}

/** Writes what waits, however little it is. */
export function writePack(doc: Document): void {
  const pack = packs(doc);
  if (pack.texts.length === 0) return;
  let at = 0;
  const places = pack.texts.map((text, index) => {
    const place = String(pack.numbers[index]) + ' ' + String(at);
    at += text.length + 1;
    return place;
  });
  const head = places.join(' ') + '\n';
  const about = `/Type/ObjStm/N ${String(pack.texts.length)}/First ${String(head.length)}`;
  const whole = writeStream(doc, about, Buffer.from(head + pack.texts.join('\n'), 'latin1'));
  for (const [index, number] of pack.numbers.entries()) doc._offsets[number - 1] = -(whole * placesInPack + index);
  Object.assign(pack, { texts: [], numbers: [], length: 0 });
}

/** Where the object with this number is: in a pack, or so many bytes from the beginning of the file. */
export function placeOf(doc: Document, number: number): readonly [kind: 1 | 2, where: number, within: number] {
  const offset = doc._offsets[number - 1];
  if (offset === null || offset === undefined) throw new Error('An object was never written: ' + String(number));
  if (offset >= 0) return [1, offset, 0];
  return [2, Math.floor(-offset / placesInPack), -offset % placesInPack];
}
