// The two pictures of the README, from the demo as it is now: a page of a sheet (poppler) and the first page of the site (Chromium).
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import sharp from 'sharp';
import { hasPoppler } from './contact/pages.ts';

const project = fileURLToPath(new URL('../../', import.meta.url));
const pictures = join(project, 'content/pages/pictures');

/** Where a browser of the system usually stands. */
const browsers = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Second page of the demo's teardown sheet, with a thin line around the paper. Throws when it cannot be drawn. */
async function sheetPicture(print: string, scratch: string): Promise<void> {
  const pdf = readdirSync(print).find((name) => name.startsWith('teardown-'));
  if (pdf === undefined) throw new Error('the demo has no teardown sheet');
  const drawn = spawnSync('pdftoppm', [
    '-r',
    '110',
    '-f',
    '2',
    '-singlefile',
    '-png',
    join(print, pdf),
    join(scratch, 'sheet'),
  ]);
  if (drawn.status !== 0) throw new Error('pdftoppm could not draw the sheet');
  const line = { top: 1, bottom: 1, left: 1, right: 1, background: '#999999' };
  await sharp(join(scratch, 'sheet.png'))
    .extend(line)
    .png({ palette: true, colours: 16 })
    .toFile(join(pictures, 'sheet.png'));
}

async function sitePicture(index: string, executablePath: string): Promise<void> {
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 1180 }, colorScheme: 'light' });
    await page.goto(pathToFileURL(index).href);
    const shot = await page.screenshot();
    await sharp(shot).png({ palette: true, colours: 32 }).toFile(join(pictures, 'site.png'));
  } finally {
    await browser.close();
  }
}

async function makePictures(): Promise<void> {
  const scratch = mkdtempSync(join(tmpdir(), 'splitpin-pictures-'));
  try {
    const out = join(scratch, 'demo');
    const words = ['--import', 'tsx', join(project, 'src/command/splitpin.ts'), 'build', 'demo-bike', '--out', out];
    const built = spawnSync(process.execPath, [...words, '--today', '2026-11-14'], { cwd: project, encoding: 'utf8' });
    if (built.status !== 0) throw new Error(`the demo does not build:\n${built.stderr}`);
    if (hasPoppler()) await sheetPicture(join(out, 'print'), scratch);
    else
      console.error('pdftoppm is missing (apt-get install poppler-utils): the picture of the sheet is left as it was.');
    const browser = browsers.find((path) => existsSync(path));
    if (browser === undefined) console.error('No Chromium was found: the picture of the site is left as it was.');
    else await sitePicture(join(out, 'index.html'), browser);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await makePictures();
