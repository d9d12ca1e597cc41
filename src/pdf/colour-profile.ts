// The colour space that grey and photographs are meant in, as a small ICC profile of our own making: sRGB, exact curve and primaries.

/**
 * Primaries of IEC 61966-2-1 (sRGB), carried to the D50 white of ICC profiles by the Bradford transform; columns are red, green
 * and blue, rows X, Y and Z.
 */
export const primaries = [
  [0.4360747, 0.3850649, 0.1430804],
  [0.2225045, 0.7168786, 0.0606169],
  [0.0139322, 0.0971045, 0.7141733],
] as const;

/** White of the profile's connection space (ICC.1:2010, 7.2.16). */
const white = [0.9642, 1, 0.8249] as const;

/** Bradford transform from the white of sRGB (D65) to D50, row by row. */
const adapted = [1.0478112, 0.0228866, -0.050127, 0.0295424, 0.9904844, -0.0170491, -0.0092345, 0.0150436, 0.7521316];

/** Curve of IEC 61966-2-1 as the third parametric form of ICC.1:2010, table 65: g a b c d. */
const curve = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045];

export const profileName = 'sRGB IEC61966-2.1';

/** Bytes of the profile (ICC.1:2010, version 4.2); the same every time. */
export function colourProfile(): Buffer {
  const column = (at: 0 | 1 | 2): Buffer => element('XYZ ', numbers(primaries.map((row) => row[at])));
  const trc = element('para', Buffer.from([0, 3, 0, 0]), numbers(curve));
  const parts: readonly (readonly [signatures: readonly string[], body: Buffer])[] = [
    [['desc'], words(profileName)],
    [['cprt'], words('No rights reserved')],
    [['wtpt'], element('XYZ ', numbers(white))],
    [['chad'], element('sf32', numbers(adapted))],
    [['rXYZ'], column(0)],
    [['gXYZ'], column(1)],
    [['bXYZ'], column(2)],
    [['rTRC', 'gTRC', 'bTRC'], trc],
  ];
  const count = parts.reduce((sum, [signatures]) => sum + signatures.length, 0);
  let at = 128 + 4 + 12 * count;
  const table = [whole(count)];
  for (const [signatures, body] of parts) {
    for (const signature of signatures) table.push(Buffer.from(signature, 'latin1'), whole(at), whole(body.length));
    at += body.length;
  }
  return Buffer.concat([head(at), ...table, ...parts.map(([, body]) => body)]);
}

/** The 128 bytes at the head: size, version, class, spaces, a fixed day, white. */
function head(size: number): Buffer {
  const bytes = Buffer.alloc(128);
  bytes.writeUInt32BE(size, 0);
  bytes.writeUInt32BE(0x04200000, 8);
  bytes.write('mntrRGB XYZ ', 12, 'latin1');
  for (const [index, part] of [2000, 1, 1].entries()) bytes.writeUInt16BE(part, 24 + 2 * index);
  bytes.write('acsp', 36, 'latin1');
  numbers(white).copy(bytes, 68);
  return bytes;
}

/** Fractions of 65536. */
function numbers(values: readonly number[]): Buffer {
  const bytes = Buffer.alloc(4 * values.length);
  for (const [index, value] of values.entries()) bytes.writeInt32BE(Math.round(value * 65_536), 4 * index);
  return bytes;
}

function whole(value: number): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(value);
  return bytes;
}

/** An element begins with its type and fills whole groups of four bytes. */
function element(type: string, ...bodies: readonly Buffer[]): Buffer {
  const bytes = Buffer.concat([Buffer.from(type, 'latin1'), whole(0), ...bodies]);
  return Buffer.concat([bytes, Buffer.alloc((4 - (bytes.length % 4)) % 4)]);
}

/** Words in one language. */
function words(text: string): Buffer {
  const said = Buffer.from(text, 'utf16le').swap16();
  const record = Buffer.concat([whole(1), whole(12), Buffer.from('enUS', 'latin1'), whole(said.length), whole(28)]);
  return element('mluc', record, said);
}
