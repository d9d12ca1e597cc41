// The page of a job on a telephone, opened from a file as it would be: kept when it is closed, saved as a file, taken home.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { phonePages } from '../../src/command/phone-file.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { renderPhonePage } from '../../src/render/phone-page.ts';
import { copyOf, machines, remove, today } from '../forms/job-forms.ts';
import { take } from '../forms/take-here.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { accessibilityFaults, addressOf, openPage } from './look.ts';

const bore = '2026-11-21-top-end-again/bore/left top across/found';
const demo = '2026-11-21-top-end-again.html';

describe.skipIf(!hasBrowser)('a job on a telephone', () => {
  let browser: Browser;
  let folder: string;
  const files: string[] = [];
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'splitpin-phone-'));
    for (const machine of machines) {
      const { binder, textOf } = readMachine(machine, today, {});
      for (const { file, page } of binder === undefined ? [] : phonePages(binder, textOf)) {
        const made = page();
        if (made === undefined) continue;
        const name = file.replace('phone/', '');
        writeFileSync(join(folder, name), renderPhonePage(made));
        files.push(name);
      }
    }
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const field = (page: Page, id: string): ReturnType<Page['locator']> => page.locator(`[name="${id}"]`);

  it.each(['light', 'dark'] as const)(
    'fits 360 pixels, asks for nothing, is accessible: every machine, %s',
    async (scheme) => {
      expect(files.length).toBeGreaterThanOrEqual(3);
      for (const file of files) {
        const { page, faults } = await openPage(browser, folder, file, { width: 360, scheme });
        expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth'), file).toBe(true);
        expect(await accessibilityFaults(page), file).toEqual([]);
        expect(faults, file).toEqual([]);
        const low = await page.evaluate<number>(
          'Math.min(...[...document.querySelectorAll("input[type=text], button:not([hidden]), label.tick, summary")].map((one) => one.getBoundingClientRect().height))',
        );
        expect(low, file).toBeGreaterThanOrEqual(48);
        await page.context().close();
      }
    },
  );

  it('keeps what is typed when it is closed, and forgets it when told to', async () => {
    const { page } = await openPage(browser, folder, demo, { width: 360, scheme: 'light' });
    expect(await page.locator('#kept').textContent()).toContain('is kept in this browser');
    await field(page, bore).fill('50,62');
    expect(await page.locator('.remark:not(:empty)').allTextContents()).toEqual([
      expect.stringContaining('Past the limit'),
    ]);
    await page.getByRole('checkbox').first().check();
    const context = page.context();
    // The browser takes a value into its store a moment after the page gave it: not to be ended before.
    const beside = await context.newPage();
    await beside.goto(addressOf(folder, demo));
    await beside.waitForFunction('JSON.stringify(localStorage).includes("50,62")');
    await page.close();
    await beside.close();
    const again = await context.newPage();
    await again.goto(addressOf(folder, demo));
    expect(await field(again, bore).inputValue()).toBe('50,62');
    expect(await again.getByRole('checkbox').first().isChecked()).toBe(true);
    expect(await again.locator('#count').textContent()).toBe('2 answers are written.');
    again.once('dialog', (dialog) => void dialog.accept());
    await again.getByRole('button', { name: 'Empty all fields' }).click();
    expect(await again.locator('#count').textContent()).toBe('Nothing is written yet.');
    await context.close();
  });

  it('says so where the browser keeps nothing', async () => {
    const context = await browser.newContext({ viewport: { width: 360, height: 800 } });
    context.setDefaultTimeout(240_000);
    const page = await context.newPage();
    await page.addInitScript('Object.defineProperty(window, "localStorage", { get() { throw new Error("no"); } })');
    await page.goto(addressOf(folder, demo));
    expect(await page.locator('#kept').textContent()).toContain('it is gone when the page is closed');
    await field(page, bore).fill('50,52');
    expect(await page.locator('#count').textContent()).toBe('1 answer is written.');
    await context.close();
  });

  it('is reached by keyboard; “not known” is one touch', async () => {
    const { page } = await openPage(browser, folder, demo, { width: 360, scheme: 'light' });
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.type')).toBe('checkbox');
    await page.keyboard.press('Space');
    expect(await page.locator('#count').textContent()).toBe('1 answer is written.');
    await page.getByRole('button', { name: /^Not known: .*left top across, as found/ }).click();
    expect(await field(page, bore).inputValue()).toBe('?');
    await page.context().close();
  });

  it('gives a file that `take` puts into the record', async () => {
    const { page } = await openPage(browser, folder, demo, { width: 360, scheme: 'light' });
    await field(page, bore).fill('50,52');
    await field(page, '2026-11-21-top-end-again/foot/next').fill('order rings [the next size]');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ]);
    const path = join(folder, download.suggestedFilename());
    await download.saveAs(path);
    await page.getByText('The answers as text').click();
    expect(await page.getByLabel('All of it goes home').inputValue()).toBe(readFileSync(path, 'utf8'));
    await page.context().close();
    const machine = copyOf('demo-bike');
    try {
      const took = await take(machine, [path], { yes: true });
      expect(took.code, took.said).toBe(0);
      const record = readFileSync(join(machine, 'jobs/2026-11-21-top-end-again.md'), 'utf8');
      expect(record).toContain('left top across: 50.52 mm');
      expect(record).toContain('order rings [the next size]');
      expect((await take(machine, [path], { yes: true })).said).toContain('Nothing new is in it');
    } finally {
      remove(machine);
    }
  });

  it('says that it needs scripts where they are switched off', async () => {
    const { page } = await openPage(browser, folder, demo, { width: 360, scheme: 'light', scripting: false });
    expect(await page.locator('noscript').textContent()).toContain('needs scripts');
    await page.context().close();
  });
});
