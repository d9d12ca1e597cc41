// Photos in full: by touch and by keyboard, one after another with their words, and as plain links without scripts.
import { rmSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { binderSite } from '../site/binder-site.ts';
import { writeSite } from '../site/site-folder.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { accessibilityFaults, openPage } from './look.ts';

describe.skipIf(!hasBrowser)('photos', () => {
  let browser: Browser;
  let folder: string;
  /** A page with several photos. */
  let file: string;
  beforeAll(async () => {
    const site = await binderSite('demo-bike', '2026-11-14');
    folder = writeSite(site.files);
    const shots = (html: string): number => html.split('class="photo ').length - 1;
    file = [...site.pages].find(([name, html]) => name.startsWith('log') && shots(html) > 2)?.[0] ?? '';
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('open in full by keyboard, turn by keys, close by Escape, and give the place back', async () => {
    expect(file).not.toBe('');
    const { page, faults } = await openPage(browser, folder, file, { width: 1280, scheme: 'light' });
    const links = page.locator('.photo a');
    const count = await links.count();
    await links.first().focus();
    await page.keyboard.press('Enter');
    const view = page.getByRole('dialog', { name: 'Photo' });
    expect(await view.isVisible()).toBe(true);
    const source = (): Promise<string | null> => view.locator('img').getAttribute('src');
    const first = await source();
    expect(first).toContain('photos/large/');
    expect((await view.locator('.words').innerText()).trim()).not.toBe('');
    await page.keyboard.press('ArrowRight');
    expect(await source()).not.toBe(first);
    expect(await view.getByRole('status').innerText()).toBe(`2 of ${String(count)}`);
    await page.keyboard.press('End');
    expect(await view.getByRole('status').innerText()).toBe(`${String(count)} of ${String(count)}`);
    await page.keyboard.press('ArrowRight');
    expect(await source()).toBe(first);
    await page.keyboard.press('ArrowLeft');
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    expect(await view.isVisible()).toBe(false);
    expect(await links.last().evaluate((link) => link === document.activeElement)).toBe(true);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('turn by a finger, fit a telephone, and leave two fingers to enlarge', async () => {
    const context = await browser.newContext({
      viewport: { width: 360, height: 700 },
      hasTouch: true,
      colorScheme: 'dark',
    });
    context.setDefaultTimeout(240_000);
    const page = await context.newPage();
    await page.goto(`file://${encodeURI(folder)}/${file}`);
    await page.locator('.photo a').first().tap();
    const view = page.getByRole('dialog', { name: 'Photo' });
    const place = view.getByRole('status');
    expect(await place.innerText()).toMatch(/^1 of/u);
    const swipe = async (from: number, to: number, fingers = 1): Promise<void> => {
      await view.evaluate(
        (dialog, [start, end, count]) => {
          const touch = (x: number, id: number): Touch =>
            new Touch({ identifier: id, target: dialog, clientX: x, clientY: 200 });
          const all = (x: number): Touch[] => Array.from({ length: count ?? 1 }, (_, id) => touch(x + id, id));
          dialog.dispatchEvent(new TouchEvent('touchstart', { touches: all(start ?? 0) }));
          dialog.dispatchEvent(new TouchEvent('touchend', { changedTouches: all(end ?? 0) }));
        },
        [from, to, fingers],
      );
    };
    await swipe(300, 100);
    expect(await place.innerText()).toMatch(/^2 of/u);
    await swipe(100, 300);
    expect(await place.innerText()).toMatch(/^1 of/u);
    await swipe(300, 280);
    await swipe(300, 100, 2);
    expect(await place.innerText()).toMatch(/^1 of/u);
    const box = await view.locator('img').boundingBox();
    expect(box?.width).toBeLessThanOrEqual(360);
    for (const name of ['Before', 'After', 'Close']) {
      expect((await view.getByRole('button', { name }).boundingBox())?.height).toBeGreaterThanOrEqual(44);
    }
    await view.getByRole('button', { name: 'Close' }).tap();
    expect(await view.isVisible()).toBe(false);
    await context.close();
  });

  it('are lazy, small first, and links to the large picture where scripts are switched off', async () => {
    const { page, faults } = await openPage(browser, folder, file, { width: 360, scheme: 'light', scripting: false });
    const pictures = page.locator('.photo img');
    expect(await pictures.evaluateAll((all) => all.every((one) => one.getAttribute('loading') === 'lazy'))).toBe(true);
    expect(await pictures.first().getAttribute('src')).toContain('photos/small/');
    expect(await page.locator('.photo a').first().getAttribute('href')).toContain('photos/large/');
    await page.locator('.photo a').first().click();
    expect(page.url()).toContain('/photos/large/');
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('leave the record in their words a link', async () => {
    const { page } = await openPage(browser, folder, 'photos.html', { width: 1280, scheme: 'light' });
    await page.locator('figcaption a').first().click();
    expect(page.url()).toContain('/jobs/');
    await page.context().close();
  });

  it('open the first side of a sheet as they do, and lead to its picture by themselves', async () => {
    const { page } = await openPage(browser, folder, 'sheets.html', { width: 1280, scheme: 'light' });
    const side = page.locator('a.side').first();
    expect(await side.getAttribute('href')).toMatch(/^print\/.+\.svg$/u);
    await side.focus();
    await page.keyboard.press('Enter');
    const view = page.getByRole('dialog', { name: 'First side' });
    expect(await view.isVisible()).toBe(true);
    expect(await view.locator('.words').innerText()).toMatch(/^First side: /u);
    await page.keyboard.press('Escape');
    expect(await side.evaluate((link) => link === document.activeElement)).toBe(true);
    await page.context().close();
  });
});
