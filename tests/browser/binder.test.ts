// The site of the demo machine in a browser: every page opens and fits, one of each kind is looked at closely.
import { rmSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { binderSite } from '../site/binder-site.ts';
import { oneOfEachKind } from '../site/kinds-of-page.ts';
import { writeSite } from '../site/site-folder.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { accessibilityFaults, addressOf, openPage } from './look.ts';

// Over a hundred pages are opened in one test.
describe.skipIf(!hasBrowser)('the demo in a browser', { timeout: 240_000 }, () => {
  let browser: Browser;
  let folder: string;
  let pages: readonly string[];
  beforeAll(async () => {
    const site = await binderSite('demo-bike', '2026-11-14');
    folder = writeSite(site.files);
    pages = [...site.pages.keys()];
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('opens every page on a telephone; none sticks out, none asks for anything outside its folder', async () => {
    const { page, faults } = await openPage(browser, folder, 'index.html', { width: 360, scheme: 'light' });
    const broad: string[] = [];
    for (const file of pages) {
      await page.goto(addressOf(folder, file));
      if (await page.evaluate('document.documentElement.scrollWidth > innerWidth')) broad.push(file);
    }
    await page.context().close();
    expect(pages.length).toBeGreaterThan(50);
    expect(broad).toEqual([]);
    expect(faults).toEqual([]);
  });

  it.each([
    { width: 1280, scheme: 'light' },
    { width: 360, scheme: 'light' },
    // Only the colours differ in the dark.
    { width: 1280, scheme: 'dark', rules: ['color-contrast'] },
  ] as const)('is accessible at $width, $scheme', async ({ width, scheme, rules }) => {
    const found: string[] = [];
    const { page } = await openPage(browser, folder, 'index.html', { width, scheme });
    for (const file of oneOfEachKind(pages)) {
      await page.goto(addressOf(folder, file));
      found.push(...(await accessibilityFaults(page, rules)).map((fault) => `${file} ${fault}`));
    }
    await page.context().close();
    expect(found).toEqual([]);
  });
});
