// `npm run audit`: every page of the demo and of all fixture machines: in Chromium accessible in light, dark, at 360 pixels and in print, and no broader than its window; in Firefox whole and without complaints.
import { rmSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { binderSite } from '../site/binder-site.ts';
import { writeSite } from '../site/site-folder.ts';
import { wrongOn } from '../firefox/open-all.ts';
import { openPages } from '../firefox/pages.ts';
import { hasFirefox } from '../firefox/start-firefox.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { accessibilityFaults, addressOf, openPage, type View } from './look.ts';

const machines = ['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'] as const;
const day = '2026-11-14';

/** In the dark and on paper only the colours and what is shown differ; the other rules hold or fail as in the light. */
const looks: readonly (View & { readonly rules?: readonly string[] })[] = [
  { width: 1280, scheme: 'light' },
  { width: 360, scheme: 'light' },
  { width: 1280, scheme: 'dark', rules: ['color-contrast'] },
  { width: 658, scheme: 'light', print: true, rules: ['color-contrast', 'page-has-heading-one'] },
];

/** What is wrong with the pages of one machine, in sentences. */
async function auditMachine(browser: Browser, machine: string): Promise<readonly string[]> {
  const site = await binderSite(machine, day);
  const folder = writeSite(site.files);
  const files = site.files.map(({ file }) => file).filter((file) => file.endsWith('.html'));
  const found: string[] = [];
  try {
    for (const look of looks) {
      const name = `${String(look.width)} ${look.print === true ? 'print' : look.scheme}`;
      const { page, faults } = await openPage(browser, folder, 'index.html', look);
      for (const file of files) {
        await page.goto(addressOf(folder, file));
        await page.evaluate('document.fonts.ready.then(() => undefined)');
        const wide = await page.evaluate('document.documentElement.scrollWidth');
        if (wide !== look.width) found.push(`${name}: ${file} is ${String(wide)} broad`);
        found.push(...(await accessibilityFaults(page, look.rules)).map((fault) => `${name}: ${file} ${fault}`));
      }
      found.push(...faults);
      await page.context().close();
      console.log(`${machine}, ${name}: ${String(files.length)} pages`);
    }
    if (hasFirefox) found.push(...(await auditInFirefox(folder, files)));
    if (hasFirefox) console.log(`${machine}, Firefox: ${String(files.length)} pages`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return found.map((fault) => `${machine}: ${fault}`);
}

async function auditInFirefox(folder: string, files: readonly string[]): Promise<readonly string[]> {
  const firefox = await openPages(folder);
  try {
    await firefox.look({ width: 360, scheme: 'dark' });
    return (await wrongOn(firefox, files)).map((fault) => `Firefox: ${fault}`);
  } finally {
    await firefox.close();
  }
}

if (hasBrowser) {
  const asked = process.argv.slice(2);
  const browser = await openBrowser();
  const all: string[] = [];
  try {
    for (const machine of asked.length === 0 ? machines : asked) all.push(...(await auditMachine(browser, machine)));
  } finally {
    await browser.close();
  }
  for (const fault of new Set(all)) console.log(fault);
  console.log(all.length === 0 ? 'Nothing was found.' : `${String(all.length)} found.`);
  process.exitCode = all.length === 0 ? 0 : 1;
}
