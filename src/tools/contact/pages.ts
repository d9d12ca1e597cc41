// The pages of a folder of PDFs as small pictures, drawn by poppler where it is installed.
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** One page of one PDF, as a PNG. */
export interface PagePicture {
  readonly machine: string;
  /** Name of the PDF without its ending. */
  readonly sheet: string;
  /** From one. */
  readonly page: number;
  readonly png: Uint8Array;
}

/** Dots per inch: a page of A4 becomes 298 × 421 pixels, enough to judge how it is set. */
const resolution = '36';

/** Is `pdftoppm` there to be run? */
export function hasPoppler(): boolean {
  return spawnSync('pdftoppm', ['-v']).status === 0;
}

/** Every page of every PDF of a folder, by file name and page; three PDFs are drawn at a time. Throws when one cannot be drawn. */
export async function picturesOf(folder: string, machine: string): Promise<readonly PagePicture[]> {
  const waiting = readdirSync(folder)
    .filter((name) => name.endsWith('.pdf'))
    .toSorted();
  const scratch = mkdtempSync(join(tmpdir(), 'splitpin-contact-'));
  const found: PagePicture[] = [];
  const worker = async (): Promise<void> => {
    for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
      const sheet = file.slice(0, -'.pdf'.length);
      await drawn(join(folder, file), join(scratch, sheet));
      found.push(...readPages(scratch, sheet, machine));
    }
  };
  try {
    await Promise.all([worker(), worker(), worker()]);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
  return found.toSorted((a, b) => (a.sheet === b.sheet ? a.page - b.page : a.sheet < b.sheet ? -1 : 1));
}

function drawn(pdf: string, prefix: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const run = spawn('pdftoppm', ['-r', resolution, '-png', '-gray', pdf, prefix], { stdio: 'ignore' });
    run.on('error', reject);
    run.on('exit', (code) => {
      if (code === 0) resolve();
      else reject(new Error(`pdftoppm could not draw ${pdf}`));
    });
  });
}

/** Poppler names pages `<sheet>-01.png`, with as many digits as the last page has. */
function readPages(scratch: string, sheet: string, machine: string): readonly PagePicture[] {
  return readdirSync(scratch).flatMap((name) => {
    const rest = name.startsWith(`${sheet}-`) ? /^(\d+)\.png$/u.exec(name.slice(sheet.length + 1)) : null;
    return rest === null ? [] : [{ machine, sheet, page: Number(rest[1]), png: readFileSync(join(scratch, name)) }];
  });
}
