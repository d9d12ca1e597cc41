// Pages of a site as pictures, one of each kind, at the width of a desk and of a telephone; drawn by Chromium where the system has it.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium, type Browser } from 'playwright-core';
import type { PagePicture } from './pages.ts';

const browsers = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

const looks = [
  { name: 'desk', width: 1280, height: 1280, colorScheme: 'light' },
  { name: 'telephone, dark', width: 360, height: 640, colorScheme: 'dark' },
] as const;

/** Pictures of one page of each kind in each look; none, with a word on the terminal, where there is no browser. */
export async function sitePictures(site: string, machine: string): Promise<readonly PagePicture[]> {
  const executablePath = browsers.find((path) => existsSync(path));
  if (executablePath === undefined) {
    console.error('No Chromium was found: the pages of the site are not shown.');
    return [];
  }
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
  try {
    const files = oneOfEachKind(site);
    const found: PagePicture[] = [];
    for (const look of looks) found.push(...(await picturesIn(browser, site, machine, files, look)));
    return found;
  } finally {
    await browser.close();
  }
}

async function picturesIn(
  browser: Browser,
  site: string,
  machine: string,
  files: readonly string[],
  { name, width, height, colorScheme }: (typeof looks)[number],
): Promise<readonly PagePicture[]> {
  const page = await browser.newPage({ viewport: { width, height }, colorScheme });
  const found: PagePicture[] = [];
  for (const [index, file] of files.entries()) {
    await page.goto(pathToFileURL(join(site, file)).href);
    found.push({ machine: `${machine}, ${name}`, sheet: file, page: index + 1, png: await page.screenshot() });
  }
  await page.close();
  return found;
}

/** Every page at the top, and the first two of each folder. */
function oneOfEachKind(site: string): readonly string[] {
  const top = readdirSync(site, { withFileTypes: true }).toSorted((a, b) => (a.name < b.name ? -1 : 1));
  return top.flatMap((entry) => {
    if (entry.name.endsWith('.html')) return [entry.name];
    if (!entry.isDirectory()) return [];
    const pages = readdirSync(join(site, entry.name)).filter((name) => name.endsWith('.html'));
    return pages
      .toSorted()
      .slice(0, 2)
      .map((name) => `${entry.name}/${name}`);
  });
}
