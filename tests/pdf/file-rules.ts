// Rules of ISO 19005-3 (archives) and ISO 14289-1 (reading aids) as far as they can be told from the objects of a file. Our own
// reading of them: a file without a fault here is written by these rules, and nobody has certified it.
import {
  PDFArray,
  PDFBool,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  PDFRawStream,
  PDFRef,
  PDFString,
  decodePDFRawStream,
  type PDFContext,
  type PDFObject,
} from 'pdf-lib';
import { contentFaults } from './content-rules.ts';
import { structureFaults } from './structure-rules.ts';

/** Sentences about what is against the rules; none is what is wanted. */
export async function fileFaults(bytes: Uint8Array): Promise<readonly string[]> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  const { context, catalog } = document;
  const read = reader(context);
  const head = Buffer.from(bytes.subarray(0, 20)).toString('latin1');
  return [
    ...(/^%PDF-1\.7\n%[\u0080-\u00ff]{4}/.test(head)
      ? []
      : ['the head of the file is not that of 1.7 with four high bytes']),
    ...catalogFaults(catalog, read, context),
    ...fontFaults(context, read),
    ...objectFaults(context, read),
    ...structureFaults(document, read),
    ...contentFaults(document, read),
    ...attachmentFaults(catalog, read),
  ];
}

export interface Read {
  readonly at: (object: PDFObject | undefined) => PDFObject | undefined;
  readonly dict: (from: PDFDict | undefined, key: string) => PDFDict | undefined;
  readonly array: (from: PDFDict | undefined, key: string) => readonly PDFObject[];
  readonly text: (from: PDFDict | undefined, key: string) => string | undefined;
  readonly number: (from: PDFDict | undefined, key: string) => number | undefined;
  readonly stream: (from: PDFDict | undefined, key: string) => PDFRawStream | undefined;
}

function reader(context: PDFContext): Read {
  const at = (object: PDFObject | undefined): PDFObject | undefined =>
    object instanceof PDFRef ? context.lookup(object) : object;
  const get = (from: PDFDict | undefined, key: string): PDFObject | undefined => at(from?.get(PDFName.of(key)));
  return {
    at,
    dict: (from, key) => {
      const found = get(from, key);
      return found instanceof PDFDict ? found : found instanceof PDFRawStream ? found.dict : undefined;
    },
    array: (from, key) => {
      const found = get(from, key);
      return found instanceof PDFArray ? found.asArray() : [];
    },
    text: (from, key) => {
      const found = get(from, key);
      if (found instanceof PDFString || found instanceof PDFHexString) return found.decodeText();
      if (found instanceof PDFName) return found.decodeText();
      return found instanceof PDFBool ? String(found.asBoolean()) : undefined;
    },
    number: (from, key) => {
      const found = get(from, key);
      return found instanceof PDFNumber ? found.asNumber() : undefined;
    },
    stream: (from, key) => {
      const found = get(from, key);
      return found instanceof PDFRawStream ? found : undefined;
    },
  };
}

export function bytesOf(stream: PDFRawStream): Buffer {
  return Buffer.from(decodePDFRawStream(stream).decode());
}

function catalogFaults(catalog: PDFDict, read: Read, context: PDFContext): readonly string[] {
  const { trailerInfo } = context;
  const info = read.at(trailerInfo.Info);
  const about = info instanceof PDFDict ? info : undefined;
  const metadata = read.stream(catalog, 'Metadata');
  const packet = metadata === undefined ? '' : Buffer.from(metadata.contents).toString('utf8');
  const intent = read.at(read.array(catalog, 'OutputIntents')[0]);
  const profile = intent instanceof PDFDict ? read.stream(intent, 'DestOutputProfile') : undefined;
  const title = read.text(about, 'Title') ?? '';
  const day = (read.text(about, 'ModDate') ?? '').replace(
    /^D:(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d)Z$/,
    '$1-$2-$3T$4:$5:$6Z',
  );
  const said = (name: string): string | undefined => new RegExp(`<${name}>([^<]*)</${name}>`).exec(packet)?.[1];
  const needed: readonly (readonly [string, boolean])[] = [
    ['it is marked as tagged', read.text(read.dict(catalog, 'MarkInfo'), 'Marked') === 'true'],
    ['it has no suspects', read.text(read.dict(catalog, 'MarkInfo'), 'Suspects') !== 'true'],
    ['it says its language', /^[a-z]{2}-[A-Z]{2}$/.test(read.text(catalog, 'Lang') ?? '')],
    ['it shows its title', read.text(read.dict(catalog, 'ViewerPreferences'), 'DisplayDocTitle') === 'true'],
    ['it has a title', title !== ''],
    ['its metadata are plain', metadata !== undefined && metadata.dict.get(PDFName.of('Filter')) === undefined],
    ['its metadata begin and end as a packet', /^<\?xpacket begin="\ufeff"[\s\S]*<\?xpacket end="r"\?>$/.test(packet)],
    ['both titles are one', /x-default">([^<]*)</.exec(packet)?.[1] === marked(title)],
    ['both days are one', said('xmp:ModifyDate') === day && said('xmp:CreateDate') === day],
    ['both makers are one', said('pdf:Producer') === read.text(about, 'Producer')],
    ['it says its part of the archive standard', said('pdfaid:part') === '3' && said('pdfaid:conformance') === 'A'],
    ['it says its part of the reading standard', said('pdfuaid:part') === '1'],
    ['it has a colour space', profile !== undefined && bytesOf(profile).toString('latin1', 36, 40) === 'acsp'],
    ['it has an identity', trailerInfo.ID !== undefined],
    ['it is not locked', trailerInfo.Encrypt === undefined],
    [
      'nothing runs when it is opened',
      catalog.get(PDFName.of('OpenAction')) === undefined && catalog.get(PDFName.of('AA')) === undefined,
    ],
    ['its form needs no drawing', read.text(read.dict(catalog, 'AcroForm'), 'NeedAppearances') !== 'true'],
  ];
  return needed.flatMap(([rule, kept]) => (kept ? [] : ['not kept: ' + rule]));
}

function marked(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

function fontFaults(context: PDFContext, read: Read): readonly string[] {
  const found: string[] = [];
  for (const [, object] of context.enumerateIndirectObjects()) {
    if (!(object instanceof PDFDict) || read.text(object, 'Type') !== 'Font') continue;
    const name = read.text(object, 'BaseFont') ?? 'a font without a name';
    const kind = read.text(object, 'Subtype');
    if (!/^(?:[A-Z]{6}\+)?Splitpin(?:Sans|Signs)-/.test(name)) found.push('a typeface that is not ours: ' + name);
    if (kind !== 'Type0') {
      const file = read.stream(read.dict(object, 'FontDescriptor'), 'FontFile2');
      if (file === undefined) found.push('not embedded: ' + name);
      if (
        kind === 'CIDFontType2' &&
        read.text(object, 'CIDToGIDMap') !== 'Identity' &&
        read.stream(object, 'CIDToGIDMap') === undefined
      )
        found.push('no way from characters to glyphs: ' + name);
      continue;
    }
    const map = read.stream(object, 'ToUnicode');
    if (map === undefined) found.push('no text behind its glyphs: ' + name);
    else if (textsOf(map).some((text) => /^<(?:|0000|fffe|feff)>$/i.test(text)))
      found.push('a glyph whose text is none: ' + name);
  }
  return found;
}

/** The texts behind the glyphs of a font, as they stand in its map. */
function textsOf(map: PDFRawStream): readonly string[] {
  const lists =
    bytesOf(map)
      .toString('latin1')
      .match(/\[[^\]]*\]/g) ?? [];
  return lists.flatMap((list) => list.match(/<[^>]*>/g) ?? []);
}

/** What no object may have: scripts, launches, files outside, other compressions, numbers and names beyond the limits. */
function objectFaults(context: PDFContext, read: Read): readonly string[] {
  const found: string[] = [];
  for (const [ref, object] of context.enumerateIndirectObjects()) {
    const dict = object instanceof PDFRawStream ? object.dict : object instanceof PDFDict ? object : undefined;
    if (dict === undefined) continue;
    for (const [key, value] of dict.entries()) {
      if (
        ['JS', 'AA', 'Launch', 'Movie', 'Sound', 'SMask', 'TR', 'HTP', 'Alternates', 'OPI'].includes(key.decodeText())
      )
        found.push(`${ref.toString()} has /${key.decodeText()}`);
      if (value instanceof PDFName && value.decodeText().length > 127)
        found.push(`${ref.toString()} has a name too long`);
    }
    if (!(object instanceof PDFRawStream)) continue;
    const filter = read.text(dict, 'Filter');
    if (filter !== undefined && !['FlateDecode', 'DCTDecode'].includes(filter)) found.push('compressed by ' + filter);
    if (dict.get(PDFName.of('F')) !== undefined) found.push('a stream outside the file');
    if (read.text(dict, 'Subtype') === 'Image' && read.text(dict, 'Interpolate') === 'true')
      found.push('a picture made smooth');
  }
  return found;
}

function attachmentFaults(catalog: PDFDict, read: Read): readonly string[] {
  const names = read
    .array(read.dict(read.dict(catalog, 'Names'), 'EmbeddedFiles'), 'Names')
    .filter((_, index) => index % 2 === 1);
  const associated = read.array(catalog, 'AF');
  if (names.length !== associated.length)
    return [`${String(names.length)} files inside, ${String(associated.length)} said to belong`];
  return associated.flatMap((each) => {
    const file = read.at(each);
    if (!(file instanceof PDFDict)) return ['an associated file that is none'];
    const name = read.text(file, 'UF') ?? '';
    const inside = read.stream(read.dict(file, 'EF'), 'F');
    const params = read.dict(inside?.dict, 'Params');
    const needed: readonly (readonly [string, boolean])[] = [
      ['its relation', ['Source', 'Data', 'Supplement'].includes(read.text(file, 'AFRelationship') ?? '')],
      ['both names', name !== '' && read.text(file, 'F') === name],
      ['a description', (read.text(file, 'Desc') ?? '') !== ''],
      ['its media type', /^[a-z]+\/[a-z.+-]+$/.test(read.text(inside?.dict, 'Subtype') ?? '')],
      ['its day', /^D:\d{14}Z$/.test(read.text(params, 'ModDate') ?? '')],
      ['its size', inside !== undefined && read.number(params, 'Size') === bytesOf(inside).length],
    ];
    return needed.flatMap(([what, kept]) => (kept ? [] : [`the file ${name} inside lacks ${what}`]));
  });
}
