// Reads the content folder beforehand, so that the compiled program need not at every start.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'esbuild';
import { manualProse } from '../compose/manual-prose.ts';
import { readContentFolder } from '../disk.ts';
import { readContent } from '../records/read-content.ts';
import { packContent } from '../records/packed-content.ts';
import { manualParts } from '../views/wording/manual-parts.ts';

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

/** Stands in for compose/manual-prose.ts; `manual-prose.json` holds the parts of the manual as paragraphs, by their pages. */
const proseModule = `import { readFileSync } from 'node:fs';
let known;
export function manualProse({ file }) {
  known ??= JSON.parse(readFileSync(new URL('./manual-prose.json', import.meta.url), 'utf8'));
  return known[file];
}
`;

/** For the bundle: the modules that read what `writePackedManual` wrote. */
export const packedManualPlugin: Plugin = {
  name: 'packed-manual',
  setup(building) {
    const put = (filter: RegExp, contents: string, folder: string): void =>
      building.onLoad({ filter }, () => ({
        contents,
        loader: 'js',
        resolveDir: join(import.meta.dirname, '..', folder),
      }));
    put(/command[\\/]manual\.ts$/, module, 'command');
    put(/compose[\\/]manual-prose\.ts$/, proseModule, 'compose');
  },
};

/** Writes `manual.json` and `manual-prose.json` into the folder of the compiled program. Content with a problem is not published. */
export function writePackedManual(into: string): void {
  const { value, problems } = readContent(readContentFolder());
  const [first] = problems;
  if (first !== undefined) throw new Error(`${first.at.file}: ${first.message}`);
  writeFileSync(join(into, 'manual.json'), packContent(value));
  const parts = [...value.pages].flatMap(([id, { body }]) => manualParts(id, body));
  const set = Object.fromEntries(parts.map((part) => [part.file, manualProse(part)]));
  writeFileSync(join(into, 'manual-prose.json'), JSON.stringify(set));
}
