// Reads the content folder beforehand, so that the compiled program need not at every start.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'esbuild';
import { readContentFolder } from '../disk.ts';
import { readContent } from '../records/read-content.ts';
import { packContent } from '../records/packed-content.ts';

/** Stands in for command/manual.ts; `manual.json` lies beside the compiled program. */
const module = `import { readFileSync } from 'node:fs';
import { unpackContent } from '../build.ts';
let known;
export function readManual() {
  known ??= {
    content: { value: unpackContent(readFileSync(new URL('./manual.json', import.meta.url), 'utf8')), problems: [] },
    textOf: () => undefined,
  };
  return known;
}
`;

/** For the bundle: the module that reads what `writePackedManual` wrote. */
export const packedManualPlugin: Plugin = {
  name: 'packed-manual',
  setup(building) {
    building.onLoad({ filter: /command[\\/]manual\.ts$/ }, () => ({
      contents: module,
      loader: 'js',
      resolveDir: join(import.meta.dirname, '../command'),
    }));
  },
};

/** Writes `manual.json` into the folder of the compiled program. Content with a problem is not published. */
export function writePackedManual(into: string): void {
  const { value, problems } = readContent(readContentFolder());
  const [first] = problems;
  if (first !== undefined) throw new Error(`${first.at.file}: ${first.message}`);
  writeFileSync(join(into, 'manual.json'), packContent(value));
}
