// On a telephone: no sheet and no table has to be moved sideways, no figure of a drawing is too small, folded tables say what their first column is.
import { rmSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { binderSite } from '../site/binder-site.ts';
import { oneOfEachKind } from '../site/kinds-of-page.ts';
import { writeSite } from '../site/site-folder.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { addressOf, openPage } from './look.ts';

/** What is broader than the screen, but for a table that says so. */
async function tooBroad(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('.wide')]
      .filter((one) => one.scrollWidth > one.clientWidth + 1 && one.querySelector('.sideways') === null)
      .map((one) => one.textContent.slice(0, 60)),
  );
}

/** Letters of a picture that stand lower than eight pixels. */
async function tooSmall(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('svg text')]
      .filter((one) => one.getBoundingClientRect().height > 0 && one.getBoundingClientRect().height < 11)
      .map((one) => one.textContent),
  );
}

describe.skipIf(!hasBrowser)('on a telephone', async () => {
  const site = await binderSite('demo-bike', '2026-11-14');
  const files = site.files.map(({ file }) => file).filter((file) => file.endsWith('.html'));
  const folder = writeSite(site.files);
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await openBrowser();
    ({ page } = await openPage(browser, folder, 'index.html', { width: 360, scheme: 'light' }));
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  it('every kind of page and every sheet is whole on the screen, and its pictures are read', async () => {
    const broad = files.filter((file) => /^(?:sheets|tables|part-by-part)\//u.test(file));
    const found: string[] = [];
    for (const file of new Set([...oneOfEachKind(files), ...broad])) {
      await page.goto(addressOf(folder, file));
      for (const one of await tooBroad(page)) found.push(`${file} is broader: ${one}`);
      for (const one of await tooSmall(page)) found.push(`${file} is too small: ${one}`);
    }
    expect(found).toEqual([]);
  });

  it('the first figure of a table that moves sideways is whole before it is moved', async () => {
    await page.goto(addressOf(folder, 'tables/values-fastener-strength.html'));
    const { rows, cut } = await page.evaluate(() => {
      const first = [...document.querySelectorAll<HTMLTableRowElement>('.sideways tbody tr')].flatMap(
        (one) => [...one.cells].slice(1).find((cell) => /^[−-]?\d/u.test(cell.textContent)) ?? [],
      );
      const endOf = (one: Element): number => {
        const text = document.createRange();
        text.selectNodeContents(one);
        return text.getBoundingClientRect().right;
      };
      return {
        rows: first.length,
        cut: first.filter((one) => endOf(one) > innerWidth).map((one) => one.textContent),
      };
    });
    expect(rows).toBeGreaterThan(100);
    expect(cut).toEqual([]);
  });

  it('a folded table has the head of its first column once above it, and the others before their cells', async () => {
    await page.goto(addressOf(folder, 'history.html'));
    const heads = await page.evaluate(() => {
      const table = [...document.querySelectorAll('.stacks')].find((one) => one.textContent.includes('What became'));
      const shown = (of: Element | undefined): boolean => (of?.getBoundingClientRect().height ?? 0) > 10;
      const all = [...(table?.querySelectorAll('thead th') ?? [])];
      const second = table?.querySelector('tbody td:nth-child(2)');
      return {
        shown: all.filter(shown).map((one) => one.textContent),
        before: second === null || second === undefined ? '' : getComputedStyle(second, '::before').content,
      };
    });
    expect(heads).toEqual({ shown: ['Weight'], before: '"Seen"' });
  });

  it('what a tick is for stands beside it', async () => {
    await page.goto(addressOf(folder, 'off.html'));
    const rows = page.locator('.stacks tr', { hasText: 'left side panel' }).first();
    const tick = await rows.locator('td').nth(0).boundingBox();
    const thing = await rows.locator('td').nth(1).boundingBox();
    expect(thing?.x ?? 0).toBeGreaterThan((tick?.x ?? 0) + (tick?.width ?? 0));
    expect(thing?.y ?? 0).toBeLessThan((tick?.y ?? 0) + (tick?.height ?? 0));
  });
});
