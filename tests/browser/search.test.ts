// The search in a real browser, opened from a folder: found and followed by keyboard, kept when going back, and a list from A to Z without scripts.
import { rmSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { binderSite } from '../site/binder-site.ts';
import { writeSite } from '../site/site-folder.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { accessibilityFaults, openPage } from './look.ts';

const field = 'Words, part number, frame number or size';

describe.skipIf(!hasBrowser)('the search', () => {
  let browser: Browser;
  let folder: string;
  beforeAll(async () => {
    folder = writeSite((await binderSite('demo-bike', '2026-11-14')).files);
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('is reached and used by keyboard alone, and goes to the very place', async () => {
    const { page, faults } = await openPage(browser, folder, 'search.html', { width: 1280, scheme: 'light' });
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    // Past the contents; the field is the first thing of the page.
    await page.keyboard.press('Tab');
    await page.keyboard.type('gearbox sprocket nut');
    const found = page.locator('.found li');
    expect(await found.first().innerText()).toMatch(/^Gearbox sprocket nuts? fastener/u);
    expect(await page.getByRole('status').innerText()).toMatch(/found/u);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.waitForURL(/torque\.html#torque-/u);
    const place = new URL(page.url()).hash.slice(1);
    expect(await page.evaluate((id) => document.getElementById(id)?.textContent ?? '', place)).toContain(
      'Gearbox sprocket',
    );
    await page.goBack();
    expect(await page.getByLabel(field).inputValue()).toBe('gearbox sprocket nut');
    expect(await found.count()).toBeGreaterThan(0);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('says what each thing is and the words around what was found, as text', async () => {
    const { page } = await openPage(browser, folder, 'search.html', { width: 360, scheme: 'dark' });
    await page.getByLabel(field).fill('crankcase pressure');
    expect(await page.locator('.found .about').first().innerText()).not.toBe('');
    expect(await page.locator('.found .words').count()).toBeGreaterThan(0);
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
    await page.getByLabel(field).fill('<img src=x onerror=alert(1)>');
    expect(await page.locator('.found img').count()).toBe(0);
    await page.getByLabel(field).fill('qqqqzzzz');
    expect(await page.getByRole('status').innerText()).toContain('Nothing is found');
    await page.getByLabel(field).fill('');
    expect(await page.getByRole('status').innerText()).toBe('');
    await page.context().close();
  });

  it('leaves a list from A to Z where scripts are switched off, which leads to the same places', async () => {
    const { page, faults } = await openPage(browser, folder, 'search.html', {
      width: 360,
      scheme: 'light',
      scripting: false,
    });
    expect(await page.getByRole('searchbox').count()).toBe(0);
    await page.locator('main a').last().click();
    const link = page.getByRole('link', { name: 'Rear wheel spindle nut', exact: true });
    expect(await page.locator('main li').count()).toBeGreaterThan(50);
    await link.first().click();
    expect(page.url()).toContain('torque.html#torque-');
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
