// A font file with only some glyphs of another: outlines are copied as they stand, never read, so that it costs next to nothing (ISO/IEC 14496-22).
import { readFileSync } from 'node:fs';

interface Table {
  readonly name: string;
  readonly bytes: Buffer;
}

/** A font file taken apart into its tables. */
export interface FontTables {
  readonly tables: ReadonlyMap<string, Buffer>;
  /** Where each outline begins in `glyf`, and one more place where the last ends. */
  readonly outlines: readonly number[];
  /** Glyphs with a width of their own; all further ones have that of the last of them. */
  readonly metrics: number;
}

/** The tables of a TrueType file. */
export function readFontTables(path: string): FontTables {
  const file = readFileSync(path);
  const tables = new Map<string, Buffer>();
  for (let at = 12; at < 12 + 16 * file.readUInt16BE(4); at += 16) {
    const from = file.readUInt32BE(at + 8);
    tables.set(file.toString('latin1', at, at + 4), file.subarray(from, from + file.readUInt32BE(at + 12)));
  }
  const loca = tableOf(tables, 'loca');
  const long = tableOf(tables, 'head').readUInt16BE(50) === 1;
  const count = loca.length / (long ? 4 : 2);
  const outlines = Array.from({ length: count }, (_, index) =>
    long ? loca.readUInt32BE(4 * index) : 2 * loca.readUInt16BE(2 * index),
  );
  return { tables, outlines, metrics: tableOf(tables, 'hhea').readUInt16BE(34) };
}

function tableOf(tables: ReadonlyMap<string, Buffer>, name: string): Buffer {
  const table = tables.get(name);
  if (table === undefined) throw new Error('A font of ours lacks a table: ' + name);
  return table;
}

/** A font of the glyphs of `glyphs`, in their order; `include` gives the place of a further glyph that one is made of, and adds it there. */
export function subsetFont(font: FontTables, glyphs: readonly number[], include: (glyph: number) => number): Buffer {
  const glyf = tableOf(font.tables, 'glyf');
  const parts: Buffer[] = [];
  const loca: number[] = [0];
  // What glyphs are made of joins the list while it is walked.
  for (let index = 0; index < glyphs.length; index += 1) {
    const glyph = glyphs[index] ?? 0;
    const outline = composed(glyf.subarray(font.outlines[glyph], font.outlines[glyph + 1]), include);
    parts.push(outline, Buffer.alloc(-outline.length & 3));
    loca.push((loca.at(-1) ?? 0) + outline.length + (-outline.length & 3));
  }
  const changed = (name: string, at: number, value: number): Table => {
    const bytes = Buffer.from(tableOf(font.tables, name));
    bytes.writeUInt16BE(value, at);
    return { name, bytes };
  };
  const offsets = Buffer.alloc(4 * loca.length);
  for (const [index, offset] of loca.entries()) offsets.writeUInt32BE(offset, 4 * index);
  const kept = ['cvt ', 'fpgm', 'prep'].flatMap((name) => {
    const bytes = font.tables.get(name);
    return bytes === undefined ? [] : [{ name, bytes }];
  });
  return fileOf([
    ...kept,
    { name: 'glyf', bytes: Buffer.concat(parts) },
    changed('head', 50, 1),
    changed('hhea', 34, glyphs.length),
    { name: 'hmtx', bytes: widths(font, glyphs) },
    { name: 'loca', bytes: offsets },
    changed('maxp', 4, glyphs.length),
  ]);
}

/** Flags of a part of a composed glyph, as the standard numbers them: what follows the number of the part, and whether another comes. */
const flag = { words: 1, scale: 8, more: 32, scales: 64, matrix: 128 } as const;

/** An outline; where it is made of other glyphs, with the numbers that these have in the subset. */
function composed(outline: Buffer, include: (glyph: number) => number): Buffer {
  if (outline.length === 0 || outline.readInt16BE(0) >= 0) return outline;
  const copy = Buffer.from(outline);
  let at = 10;
  for (let more = true; more;) {
    const flags = copy.readUInt16BE(at);
    copy.writeUInt16BE(include(copy.readUInt16BE(at + 2)), at + 2);
    at += 4 + (flags & flag.words ? 4 : 2);
    at += flags & flag.scale ? 2 : flags & flag.scales ? 4 : flags & flag.matrix ? 8 : 0;
    more = (flags & flag.more) !== 0;
  }
  return copy;
}

/** Width and left bearing of each glyph. */
function widths({ tables, metrics }: FontTables, glyphs: readonly number[]): Buffer {
  const hmtx = tableOf(tables, 'hmtx');
  const out = Buffer.alloc(4 * glyphs.length);
  for (const [index, glyph] of glyphs.entries()) {
    out.writeUInt16BE(hmtx.readUInt16BE(4 * Math.min(glyph, metrics - 1)), 4 * index);
    const bearing = glyph < metrics ? 4 * glyph + 2 : 4 * metrics + 2 * (glyph - metrics);
    out.writeInt16BE(hmtx.readInt16BE(bearing), 4 * index + 2);
  }
  return out;
}

/** Tables behind their directory, each at a multiple of four bytes; `head` says what is missing to a fixed sum over the file. */
function fileOf(tables: readonly Table[]): Buffer {
  const power = Math.floor(Math.log2(tables.length));
  const start = Buffer.alloc(12 + 16 * tables.length);
  start.writeUInt32BE(0x0001_0000, 0);
  start.writeUInt16BE(tables.length, 4);
  start.writeUInt16BE(16 * 2 ** power, 6);
  start.writeUInt16BE(power, 8);
  start.writeUInt16BE(16 * (tables.length - 2 ** power), 10);
  let at = start.length;
  let headAt = 0;
  const parts: Buffer[] = [start];
  for (const [index, { name, bytes }] of tables.entries()) {
    if (name === 'head') {
      headAt = at;
      bytes.writeUInt32BE(0, 8);
    }
    const padded = Buffer.concat([bytes, Buffer.alloc(-bytes.length & 3)]);
    const entry = 12 + 16 * index;
    start.write(name, entry, 'latin1');
    start.writeUInt32BE(sumOf(padded), entry + 4);
    start.writeUInt32BE(at, entry + 8);
    start.writeUInt32BE(bytes.length, entry + 12);
    parts.push(padded);
    at += padded.length;
  }
  const file = Buffer.concat(parts);
  file.writeUInt32BE((0xb1b0_afba - sumOf(file)) >>> 0, headAt + 8);
  return file;
}

function sumOf(bytes: Buffer): number {
  let sum = 0;
  for (let at = 0; at < bytes.length; at += 4) sum = (sum + bytes.readUInt32BE(at)) >>> 0;
  return sum;
}
