// All files below a folder, in one order.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Paths from the folder, with forward slashes, sorted. */
export function filesBelow(folder: string): readonly string[] {
  const visit = (below: string): readonly string[] =>
    readdirSync(join(folder, below), { withFileTypes: true }).flatMap((each) => {
      const path = below === '' ? each.name : `${below}/${each.name}`;
      return each.isDirectory() ? visit(path) : [path];
    });
  return visit('').toSorted((a, b) => (a < b ? -1 : 1));
}
