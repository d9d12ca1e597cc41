// The page of the next test in a browser: outcomes are tried without a server, at the width of a telephone, and say what the paper says.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityFaults, openPage } from './look.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { buildCommand } from '../../src/command/build-command.ts';

const phone = { width: 360, scheme: 'light' } as const;

describe.runIf(hasBrowser)('the page of the next test', () => {
  const folder = mkdtempSync(join(tmpdir(), 'splitpin-next-'));
  const out = join(folder, 'out');
  let browser: Browser | undefined;
  const opened = async (scripting = true) => {
    if (browser === undefined) throw new Error('the browser is open');
    return openPage(browser, out, 'next-test.html', { ...phone, scripting });
  };
  beforeAll(async () => {
    const quiet = { say: () => undefined, tell: () => undefined, progress: () => undefined, colour: false };
    const around = { terminal: quiet, folder: process.cwd(), clock: () => new Date('2026-11-14T12:00:00Z') };
    await buildCommand('tests/fixtures/finch-125', { out, siteOnly: true, today: '2026-11-14' }, around);
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test('an outcome that is chosen changes what leads and what is next, and nothing is asked of anybody', async () => {
    const { page, faults } = await opened();
    const answer = page.locator('#bench [role=status]');
    await page.getByText('What was tried').click();
    await page.getByLabel('Spark at a new plug of known good, in the shade').selectOption('none');
    await page.getByLabel('Thumb on the plug hole, kick').selectOption('strong');
    expect(await answer.innerText()).toContain('Stop switch, key or neutral wire: earthing, or open');
    const next = await answer.locator('ol').last().innerText();
    expect(next).toContain('Stop wire off at the engine');
    await page.getByLabel('Spark from the end of the lead, cap off, 6 mm to the head').selectOption('jumps');
    expect(await answer.innerText()).toContain('Plug cap or high-tension lead broken down');
    await page.getByLabel('Plug out at once after eight kicks: wet, dry, colour').selectOption('dry');
    await page.getByLabel('Spark at a new plug of known good, in the shade').selectOption('fat');
    await page.getByLabel('Spark from the end of the lead, cap off, 6 mm to the head').selectOption('none');
    expect(await answer.innerText()).toContain('These cannot all be so');
    expect(faults).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.width);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  test('pressing an outcome of an offered test takes it', async () => {
    const { page } = await opened();
    const answer = page.locator('#bench [role=status]');
    const before = await answer.locator('ol').last().locator('li').first().innerText();
    await answer.locator('ol').last().locator('li').first().getByRole('button').first().click();
    expect(await answer.locator('ol').last().locator('li').first().innerText()).not.toBe(before);
    await page.getByRole('button', { name: 'As the records say' }).click();
    expect(await answer.locator('ol').last().locator('li').first().innerText()).toBe(before);
  });

  test('without a script it is a plain page of the same', async () => {
    const { page, faults } = await opened(false);
    expect(await page.locator('#bench').isVisible()).toBe(false);
    expect(await page.locator('main').innerText()).toContain('Then, what tells most for its effort');
    expect(faults).toEqual([]);
  });
});
