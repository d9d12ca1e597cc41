// `npm run bench`: our compiled program against others on the same records; ratios, each beside what must and what should be reached.
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundle } from '../../src/tools/bundle.ts';
import { bookRows } from './book-rows.ts';
import { calcRows } from './calc-rows.ts';
import { demoRows } from './demo-rows.ts';
import { htmlRows } from './html-rows.ts';
import { faultRows } from './fault-rows.ts';
import { planRows } from './plan-rows.ts';
import { printRows } from './print-rows.ts';
import { editRow } from './edit-row.ts';
import { workshopRows } from './workshop-rows.ts';
import { table, type Line } from './rows.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const wanted = process.argv.slice(2);
const short = wanted.includes('--short');
const only = wanted.filter((word) => !word.startsWith('--'));

/** Each part can be run alone: `npm run bench -- html`. */
const parts: Readonly<Record<string, (folder: string, program: string) => Promise<readonly Line[]>>> = {
  demo: async (folder, program) => demoRows(folder, program, join(root, 'demo-bike'), short ? 3 : 7),
  html: async (folder, program) => htmlRows(folder, program, root, short ? [1000] : [1000, 5000], short ? 3 : 5),
  edit: async (folder, program) => editRow(folder, program, 1000, short ? 10 : 30),
  calc: () => Promise.resolve(calcRows()),
  book: () => Promise.resolve(bookRows()),
  plan: () => Promise.resolve(planRows()),
  faults: () => Promise.resolve(faultRows()),
  workshop: async (folder, program) => workshopRows(folder, program, short ? 8 : 20),
  print: async (folder, program) => printRows(folder, program, short),
};

const program = join(root, 'dist', 'splitpin.js');
await bundle(join(root, 'dist'));
const folder = mkdtempSync(join(tmpdir(), 'splitpin-bench-'));
try {
  const lines: Line[] = [];
  for (const [name, part] of Object.entries(parts)) {
    if (only.length > 0 && !only.includes(name)) continue;
    console.error('measuring: ' + name);
    const place = join(folder, name);
    mkdirSync(place);
    lines.push(...(await part(place, program)));
  }
  console.log(['Node', process.version, '·', String(cpus().length), 'cores ·', cpus()[0]?.model ?? ''].join(' '));
  console.log(table(lines));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
