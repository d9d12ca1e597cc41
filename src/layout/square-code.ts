// A square code as runs of dark modules, with its quiet zone, never with modules too small to read.
import { squareModules } from '../sheet/square-modules.ts';
import type { ModulesItem, PlacedItem, Tag } from './placed.ts';

export interface SquareCode {
  /** Side in points, quiet zone and all. */
  readonly side: number;
  readonly module: number;
  readonly runs: ModulesItem['runs'];
  readonly alt: string;
}

/** Modules are read by a hand-held camera from this size on. */
const leastModule = 1.1;
const quiet = 4;

/** A code of about `wanted` points; larger where its text is long; nothing where the text is too long for a code. */
export function squareCode(text: string, wanted: number): SquareCode | undefined {
  if (text === '' || text.length > 300) return undefined;
  const modules = squareModules(text);
  const module = Math.max(leastModule, wanted / (modules.size + 2 * quiet));
  return {
    side: module * (modules.size + 2 * quiet),
    module,
    runs: runsOf(modules.size, modules.dark),
    alt: 'Square code: ' + text,
  };
}

function runsOf(size: number, dark: (row: number, column: number) => boolean): ModulesItem['runs'] {
  const runs: { row: number; start: number; length: number }[] = [];
  for (let row = 0; row < size; row += 1) {
    let start = -1;
    for (let column = 0; column <= size; column += 1) {
      const on = column < size && dark(row, column);
      if (on && start < 0) start = column;
      if (on || start < 0) continue;
      runs.push({ row, start, length: column - start });
      start = -1;
    }
  }
  return runs;
}

/** Places the modules inside their quiet zone. */
export function drawModules(code: SquareCode, x: number, y: number, tag: Tag, out: PlacedItem[]): void {
  out.push({
    kind: 'modules',
    x: x + quiet * code.module,
    y: y + quiet * code.module,
    module: code.module,
    runs: code.runs,
    tag,
  });
}
