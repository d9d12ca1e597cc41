// The square code at the terminal: what a camera sees of the letters on a dark ground leads back to the address.
import { decodeQR } from 'qr/decode.js';
import { expect, test } from 'vitest';
import { squareCodeText } from '../../src/command/square-code-text.ts';

const scale = 6;

/** The letters as a dark terminal shows them: a block is light. */
function seen(lines: readonly string[]) {
  const rows = lines.flatMap((line) => [
    line.split('').map((letter) => letter === '█' || letter === '▀'),
    line.split('').map((letter) => letter === '█' || letter === '▄'),
  ]);
  const width = (rows[0]?.length ?? 0) * scale;
  const height = rows.length * scale;
  const data = new Uint8Array(width * height * 3);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1)
      data.fill(
        rows[Math.floor(y / scale)]?.[Math.floor(x / scale)] === true ? 255 : 0,
        (y * width + x) * 3,
        (y * width + x) * 3 + 3,
      );
  return { data, width, height };
}

test.each(['http://192.0.2.20:8137/?key=AAAAAAAAAAAAAAAAAAAAAA', 'http://10.0.0.5:65535/?key=z-_9z-_9z-_9z-_9z-_9zz'])(
  '%s',
  (address) => {
    const lines = squareCodeText(address);
    expect(new Set(lines.map((line) => line.length)).size).toBe(1);
    expect(decodeQR(seen(lines), { format: 'RGB' })).toBe(address);
  },
);
