// An evening as it is walked: the binder of a small machine in a folder, opened at its first page, and gone through by the words that are seen.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { machineFile, record } from '../evenings/evening.ts';
import { binderSite } from '../site/binder-site.ts';
import { writeSite } from '../site/site-folder.ts';
import { openPage } from './look.ts';

export interface EveningFiles {
  readonly jobs: Readonly<Record<string, string>>;
  readonly machine?: string;
  readonly maker?: string;
  readonly workshop?: string;
}

export interface Walk {
  readonly page: Page;
  readonly faults: readonly string[];
  /** Presses the first link with these words, as they are seen. */
  readonly follow: (words: string | RegExp) => Promise<void>;
  /** Goes to the search by the contents, writes the words and presses the result of this name. */
  readonly lookFor: (words: string, result: string | RegExp) => Promise<void>;
  /** What stands on the page, one space for every space. */
  readonly read: () => Promise<string>;
}

/** Writes the machine and its site; gives the folder of the site, to be removed by `leave`. */
async function siteOf(today: string, files: EveningFiles): Promise<string> {
  const machine = mkdtempSync(join(tmpdir(), 'splitpin-evening-'));
  const put = (file: string, text: string): void => {
    mkdirSync(dirname(join(machine, file)), { recursive: true });
    writeFileSync(join(machine, file), text);
  };
  put('machine.yaml', files.machine ?? machineFile());
  if (files.maker !== undefined) put('maker/book.yaml', files.maker);
  if (files.workshop !== undefined) put('workshop.yaml', files.workshop);
  for (const [id, lines] of Object.entries(files.jobs)) put(`jobs/${id}.md`, record(id, lines));
  try {
    return writeSite((await binderSite(machine, today)).files);
  } finally {
    rmSync(machine, { recursive: true, force: true });
  }
}

/** Opens the first page on a telephone and walks; whatever went wrong in the browser is a fault of the walk. */
export async function walked(
  browser: Browser,
  today: string,
  files: EveningFiles,
  walk: (walk: Walk) => Promise<void>,
): Promise<readonly string[]> {
  const folder = await siteOf(today, files);
  const { page, faults } = await openPage(browser, folder, 'index.html', { width: 360, scheme: 'light' });
  const follow = async (words: string | RegExp): Promise<void> => {
    const link = page.getByRole('link', { name: words, exact: typeof words === 'string' }).first();
    // What is not seen on the page is looked for where a person would look: in the contents, folded on a telephone.
    if ((await link.count()) === 0) await page.getByRole('link', { name: 'Contents', exact: true }).click();
    await link.click();
  };
  const read = async (): Promise<string> => (await page.locator('main').innerText()).replaceAll(/[^\S\n]+/gu, ' ');
  const lookFor = async (words: string, result: string | RegExp): Promise<void> => {
    await follow('Search');
    await page.getByLabel('Words, part number, frame number or size').fill(words);
    await page.locator('.found').getByRole('link', { name: result }).first().click();
  };
  try {
    await walk({ page, faults, follow, lookFor, read });
  } finally {
    await page.context().close();
    rmSync(folder, { recursive: true, force: true });
  }
  return faults;
}
