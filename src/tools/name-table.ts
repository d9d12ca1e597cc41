// Gives a font file a new name: the maker of Plex reserves its name, so a changed copy must be called something else.

export interface FontName {
  readonly family: string;
  readonly style: string;
  /** Notices that stay as they are in the original: copyright and licence. */
  readonly copyright: string;
  readonly licence: string;
  readonly licenceAddress: string;
}

interface Table {
  readonly tag: string;
  readonly bytes: Buffer;
}

/** Copies an sfnt font with its `name` table replaced; table order is by tag and all checksums are made anew. */
export function renamed(font: Buffer, name: FontName): Buffer {
  const tables = readTables(font).map((table) =>
    table.tag === 'name' ? { tag: 'name', bytes: nameTable(name) } : table,
  );
  const whole = join(font.subarray(0, 4), tables);
  const head = tables.findIndex((table) => table.tag === 'head');
  const offset = whole.readUInt32BE(12 + head * 16 + 8);
  whole.writeUInt32BE((0xb1b0afba - checksum(whole)) >>> 0, offset + 8);
  return whole;
}

function readTables(font: Buffer): readonly Table[] {
  return Array.from({ length: font.readUInt16BE(4) }, (_, index) => {
    const at = 12 + index * 16;
    const offset = font.readUInt32BE(at + 8);
    const bytes = Buffer.from(font.subarray(offset, offset + font.readUInt32BE(at + 12)));
    const tag = font.toString('latin1', at, at + 4);
    if (tag === 'head') bytes.writeUInt32BE(0, 8);
    return { tag, bytes };
  });
}

function join(version: Buffer, tables: readonly Table[]): Buffer {
  const power = 2 ** Math.floor(Math.log2(tables.length));
  const header = Buffer.alloc(12 + tables.length * 16);
  version.copy(header, 0);
  header.writeUInt16BE(tables.length, 4);
  header.writeUInt16BE(power * 16, 6);
  header.writeUInt16BE(Math.log2(power), 8);
  header.writeUInt16BE((tables.length - power) * 16, 10);
  const parts: Buffer[] = [header];
  let offset = header.length;
  for (const [index, table] of tables.entries()) {
    const at = 12 + index * 16;
    header.write(table.tag, at, 'latin1');
    header.writeUInt32BE(checksum(table.bytes), at + 4);
    header.writeUInt32BE(offset, at + 8);
    header.writeUInt32BE(table.bytes.length, at + 12);
    const padding = Buffer.alloc((4 - (table.bytes.length % 4)) % 4);
    parts.push(table.bytes, padding);
    offset += table.bytes.length + padding.length;
  }
  return Buffer.concat(parts);
}

/** Sum of the big-endian words, the last one filled with zeros. */
function checksum(bytes: Buffer): number {
  let sum = 0;
  for (let at = 0; at < bytes.length; at += 4) {
    const word = at + 4 <= bytes.length ? bytes.readUInt32BE(at) : lastWord(bytes, at);
    sum = (sum + word) >>> 0;
  }
  return sum;
}

function lastWord(bytes: Buffer, at: number): number {
  const word = Buffer.alloc(4);
  bytes.copy(word, 0, at);
  return word.readUInt32BE(0);
}

/** A `name` table with one record a meaning: Windows, Unicode, English. */
function nameTable(name: FontName): Buffer {
  const compact = (text: string): string => text.replaceAll(' ', '');
  const postscript = compact(name.family) + '-' + compact(name.style);
  const records: readonly (readonly [number, string])[] = [
    [0, name.copyright],
    [1, name.style === 'Regular' || name.style === 'Italic' ? name.family : name.family + ' ' + name.style],
    [2, name.style === 'Italic' ? 'Italic' : 'Regular'],
    [3, postscript],
    [4, name.family + ' ' + name.style],
    [5, 'Version 1.000'],
    [6, postscript],
    [13, name.licence],
    [14, name.licenceAddress],
    [16, name.family],
    [17, name.style],
  ];
  const texts = records.map(([, text]) => Buffer.from(text, 'utf16le').swap16());
  const header = Buffer.alloc(6 + records.length * 12);
  header.writeUInt16BE(records.length, 2);
  header.writeUInt16BE(header.length, 4);
  let offset = 0;
  for (const [index, [id]] of records.entries()) {
    const length = texts[index]?.length ?? 0;
    const fields = [3, 1, 0x409, id, length, offset];
    for (const [field, value] of fields.entries()) header.writeUInt16BE(value, 6 + index * 12 + field * 2);
    offset += length;
  }
  return Buffer.concat([header, ...texts]);
}
