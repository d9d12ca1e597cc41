// The front page of a workshop of the demo and both fixture machines, opened from its folder: in light, dark, on a telephone and on paper.
import { cpSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { packageFolder } from '../../src/disk.ts';
import { put } from '../command/small-machine.ts';
import { buildShed, record, shed, type Built } from '../workshop/shed.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { accessibilityFaults, openPage, type View } from './look.ts';

const machines = { 'demo-bike': 'demo-bike', tern: 'tests/fixtures/tern-350', finch: 'tests/fixtures/finch-125' };

describe.skipIf(!hasBrowser)('the front page of a workshop', () => {
  let browser: Browser;
  let folder = '';
  let built: Built = { code: 0, said: '', out: '' };
  beforeAll(async () => {
    browser = await openBrowser();
    folder = shed({}, { 'workshop.yaml': 'splitpin: 1\nstock: [{part: split pin 3.2×32, count: 12}]\n' });
    for (const [name, from] of Object.entries(machines))
      cpSync(join(packageFolder(), from), join(folder, name), { recursive: true });
    // A move that one side is silent of, so that every part of the page has something in it.
    const parts = 'parts: [{part: petrol tank, moved to: tern, worth: 40.00 EUR}]';
    put(join(folder, 'finch'), { 'jobs/2026-05-01-tank.md': record('Tank to the other', '2026-05-01', parts) });
    built = await buildShed(folder);
  });
  afterAll(async () => {
    await browser.close();
    rmSync(dirname(folder), { recursive: true, force: true });
  });

  const looks: readonly View[] = [
    { width: 1280, scheme: 'light' },
    { width: 1280, scheme: 'dark' },
    { width: 360, scheme: 'light' },
    { width: 360, scheme: 'dark' },
    { width: 658, scheme: 'light', print: true },
  ];

  it.each(looks)(
    '%o: nothing fails, leaves the folder, is broader than its window or shuts anybody out',
    async (look) => {
      expect(built.code, built.said).toBe(0);
      const { page, faults } = await openPage(browser, built.out, 'index.html', look);
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(look.width);
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(faults).toEqual([]);
      const said = await page.evaluate('document.body.innerText');
      expect(said).toContain('The workshop');
      expect(said).toContain('the records there do not say that it came');
      expect(said).toContain('set for parts that left');
      await page.context().close();
    },
  );

  it('leads into each binder and to what it says', async () => {
    const { page, faults } = await openPage(browser, built.out, 'index.html', { width: 1280, scheme: 'light' });
    for (const name of ['Larkmoor Pipit 175', 'Brackwell Tern 350', 'Tollgate Finch 125']) {
      await page.goto(`file://${join(built.out, 'index.html')}`);
      await page.getByRole('table').first().getByRole('link', { name }).click();
      expect(await page.title()).toContain(name);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
