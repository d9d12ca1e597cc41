// One picture of every page of every sheet, and of one page of each kind of the site, for looking over: `npm run contact` builds the machines and writes out/contact/contact.png.
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { contactPicture } from './contact/picture.ts';
import { hasPoppler, picturesOf, type PagePicture } from './contact/pages.ts';
import { sitePictures } from './contact/site-pictures.ts';

const project = fileURLToPath(new URL('../../', import.meta.url));
const machines = ['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'] as const;

/** A fixed day, so that two contact sheets differ only by what was changed between them. */
const day = '2026-11-28';

/** Builds a machine folder into `out` with the program from sources; undefined and a word on the terminal when it does not build. */
function built(folder: string, out: string): string | undefined {
  const program = join(project, 'src/command/splitpin.ts');
  const words = ['--import', 'tsx', program, 'build', folder, '--out', out, '--today', day];
  const run = spawnSync(process.execPath, words, { cwd: project, encoding: 'utf8' });
  if (run.status === 0) return join(out, 'print');
  console.error(`${folder} does not build:\n${run.stdout}${run.stderr}`);
  return undefined;
}

async function makeContactSheet(folders: readonly string[]): Promise<boolean> {
  if (!hasPoppler()) {
    console.error(
      'The contact sheet needs pdftoppm, which is part of poppler (apt-get install poppler-utils). Nothing was made.',
    );
    return false;
  }
  const out = join(project, 'out/contact');
  rmSync(out, { recursive: true, force: true });
  mkdirSync(out, { recursive: true });
  const all: PagePicture[] = [];
  for (const folder of folders) {
    const print = built(folder, join(out, basename(folder)));
    if (print === undefined) return false;
    const pages = await picturesOf(print, basename(folder));
    await contactPicture(pages, join(out, `${basename(folder)}.png`));
    const site = await sitePictures(join(out, basename(folder)), basename(folder));
    if (site.length > 0) await contactPicture(site, join(out, `${basename(folder)}-site.png`));
    all.push(...pages);
    console.log(
      `${folder}: ${String(pages.length)} pages of paper, ${String(site.length)} of the site, out/contact/${basename(folder)}.png`,
    );
  }
  await contactPicture(all, join(out, 'contact.png'));
  console.log(`${String(all.length)} pages in out/contact/contact.png`);
  return true;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const asked = process.argv.slice(2);
  const made = await makeContactSheet(asked.length === 0 ? machines : asked);
  process.exitCode = made ? 0 : 1;
}
