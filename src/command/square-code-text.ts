// A square code in letters, two rows of it to a line, for a camera held before a terminal.
import { create } from 'qrcode/lib/core/qrcode.js';

/** Empty modules round the code, so that a camera finds its edge. */
const margin = 2;

/**
 * The lines of the code. Its light is what is drawn, for most terminals are dark: a reader then sees a dark code on light ground.
 */
export function squareCodeText(text: string): readonly string[] {
  const { size, data } = create(text, { errorCorrectionLevel: 'L' }).modules;
  const isLight = (row: number, column: number): boolean =>
    row < 0 || column < 0 || row >= size || column >= size || data[row * size + column] === 0;
  const along = Array.from({ length: size + 2 * margin }, (_, index) => index - margin);
  const lines: string[] = [];
  for (let row = -margin; row < size + margin; row += 2) {
    lines.push(along.map((column) => half(isLight(row, column), isLight(row + 1, column))).join(''));
  }
  return lines;
}

function half(above: boolean, below: boolean): string {
  if (above && below) return '█';
  if (above) return '▀';
  return below ? '▄' : ' ';
}
