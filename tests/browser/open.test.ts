// Every kind of page opens from a folder in a real browser: light and dark, on a desk and on a telephone.
import { rmSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sampleFiles } from '../site/sample-site.ts';
import { writeSite } from '../site/site-folder.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { accessibilityFaults, openPage } from './look.ts';

const views = [
  { width: 1280, scheme: 'light' },
  { width: 1280, scheme: 'dark' },
  { width: 360, scheme: 'light' },
] as const;

const files = await sampleFiles();
const pages = files.map(({ file }) => file).filter((file) => file.endsWith('.html'));

describe.skipIf(!hasBrowser)('in a browser', () => {
  let browser: Browser;
  const folder = writeSite(files);
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  it.each(pages.flatMap((file) => views.map((view) => ({ file, ...view }))))(
    '$file opens at $width, $scheme',
    async ({ file, ...view }) => {
      const { page, faults } = await openPage(browser, folder, file, view);
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(faults).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
      expect(await page.evaluate('document.fonts.check("600 16px \\"Splitpin Sans\\"")')).toBe(true);
      await page.context().close();
    },
  );

  it('is reached by keyboard: first the way past the contents, then the contents', async () => {
    const { page } = await openPage(browser, folder, 'index.html', { width: 1280, scheme: 'light' });
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Skip to the page');
    expect((await page.locator('.skip').boundingBox())?.y).toBeGreaterThanOrEqual(0);
    await page.keyboard.press('Enter');
    expect(await page.evaluate('document.activeElement.id')).toBe('page');
    await page.context().close();
  });

  it('reads the same with scripting off', async () => {
    const { page, faults } = await openPage(browser, folder, 'log.html', {
      width: 1280,
      scheme: 'light',
      scripting: false,
    });
    expect(await page.locator('tbody tr').count()).toBe(41);
    expect(await page.locator('input').count()).toBe(0);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('narrows a long table to the rows that have all words, and says how many', async () => {
    const { page } = await openPage(browser, folder, 'log.html', { width: 1280, scheme: 'light' });
    await page.getByLabel('Only entries with').fill('JOB 12');
    expect(await page.getByRole('status').textContent()).toBe('1 of 40');
    expect(await page.locator('tbody tr:visible').allTextContents()).toEqual(['2024', '2024-12Job 12']);
    await page.getByLabel('Only entries with').fill('');
    expect(await page.locator('tbody tr:visible').count()).toBe(41);
    await page.context().close();
  });

  it('prints the page without its frame, black on white in a dark scheme too', async () => {
    const { page } = await openPage(browser, folder, 'log.html', { width: 1280, scheme: 'dark' });
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.contents').isVisible()).toBe(false);
    expect(await page.locator('.narrowing').isVisible()).toBe(false);
    expect(await page.evaluate('getComputedStyle(document.documentElement).backgroundColor')).toBe(
      'rgb(255, 255, 255)',
    );
    await page.context().close();
  });
});
