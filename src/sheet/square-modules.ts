// The modules of a square code. Which of the eight masks it wears is decided here, by the penalties of ISO/IEC 18004: the package that
// encodes decides the same, and took more time for it than for all else of a code.
import { create } from 'qrcode/lib/core/qrcode.js';

export interface SquareModules {
  /** Modules along a side, without quiet zone. */
  readonly size: number;
  readonly dark: (row: number, column: number) => boolean;
}

/** The code of a text at error correction level M. Throws when the text is too long for any code. */
export function squareModules(text: string): SquareModules {
  const { modules } = create(text, { errorCorrectionLevel: 'M', maskPattern: 0 });
  const { size } = modules;
  const flips = flipsOf(size, modules.reservedBit);
  const bare = flipped(modules.data, flips[0]);
  let best: Uint8Array = modules.data;
  let least = Infinity;
  for (const [mask, flip] of flips.entries()) {
    const worn = flipped(bare, flip);
    nameMask(worn, size, mask);
    const penalty = penaltyOf(worn, size);
    if (penalty >= least) continue;
    least = penalty;
    best = worn;
  }
  return { size, dark: (row, column) => best[row * size + column] === 1 };
}

/** Whether each mask turns a module, by row and column. */
const masks: readonly ((row: number, column: number) => boolean)[] = [
  (row, column) => (row + column) % 2 === 0,
  (row) => row % 2 === 0,
  (_, column) => column % 3 === 0,
  (row, column) => (row + column) % 3 === 0,
  (row, column) => (Math.floor(row / 2) + Math.floor(column / 3)) % 2 === 0,
  (row, column) => ((row * column) % 2) + ((row * column) % 3) === 0,
  (row, column) => (((row * column) % 2) + ((row * column) % 3)) % 2 === 0,
  (row, column) => (((row * column) % 3) + ((row + column) % 2)) % 2 === 0,
];

const known = new Map<number, readonly Uint8Array[]>();

/** What each mask turns in codes of a size: never their patterns, which are the same in all of them. */
function flipsOf(size: number, reserved: Uint8Array): readonly Uint8Array[] {
  const before = known.get(size);
  if (before !== undefined) return before;
  const flips = masks.map((turns) =>
    reserved.map((kept, at) => (kept === 0 && turns(Math.floor(at / size), at % size) ? 1 : 0)),
  );
  known.set(size, flips);
  return flips;
}

function flipped(modules: Uint8Array, flip: Uint8Array | undefined): Uint8Array {
  const turned = new Uint8Array(modules.length);
  for (let at = 0; at < turned.length; at += 1) turned[at] = (modules[at] ?? 0) ^ (flip?.[at] ?? 0);
  return turned;
}

/** Writes, twice, which mask is worn: five bits, ten more that correct them, and a mask of their own. Level M is named by two noughts. */
function nameMask(modules: Uint8Array, size: number, mask: number): void {
  let rest = mask << 10;
  for (let bit = 14; bit >= 10; bit -= 1) if (((rest >> bit) & 1) === 1) rest ^= 0x537 << (bit - 10);
  const bits = ((mask << 10) | rest) ^ 0x5412;
  for (let bit = 0; bit < 15; bit += 1) {
    const module = (bits >> bit) & 1;
    const row = bit < 8 ? bit + Number(bit > 5) : size - 15 + bit;
    const column = bit < 8 ? size - 1 - bit : 14 - bit + Number(bit === 8);
    modules[row * size + 8] = module;
    modules[8 * size + column] = module;
  }
}

/** Long runs, squares of one shade, what looks like a corner mark, and too much of one shade. */
function penaltyOf(modules: Uint8Array, size: number): number {
  let dark = 0;
  for (let at = 0; at < modules.length; at += 1) dark += modules[at] ?? 0;
  let points = Math.abs(Math.ceil((dark * 20) / modules.length) - 10) * 10;
  for (let line = 0; line < size; line += 1) {
    points += lineAt(modules, line * size, 1, size) + lineAt(modules, line, size, size);
    if (line > 0) points += squaresAt(modules, line * size, size);
  }
  return points;
}

function lineAt(modules: Uint8Array, from: number, step: number, size: number): number {
  let points = 0;
  let last = -1;
  let run = 0;
  let seen = 0;
  for (let index = 0, at = from; index < size; index += 1, at += step) {
    const module = modules[at] ?? 0;
    if (module !== last && run >= 5) points += run - 2;
    run = module === last ? run + 1 : 1;
    last = module;
    seen = ((seen << 1) & 0x7ff) | module;
    if (index >= 10 && (seen === 0x5d0 || seen === 0x05d)) points += 40;
  }
  return run >= 5 ? points + run - 2 : points;
}

function squaresAt(modules: Uint8Array, from: number, size: number): number {
  let points = 0;
  for (let at = from + 1; at < from + size; at += 1) {
    const module = modules[at];
    const same = module === modules[at - 1] && module === modules[at - size] && module === modules[at - size - 1];
    if (same) points += 3;
  }
  return points;
}
