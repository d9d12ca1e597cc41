// The site of the demo machine in a browser: every page opens and fits, one of each template is looked at closely (`npm run audit`: all of them).
import { rmSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { binderSite } from '../site/binder-site.ts';
import { oneOfEachKind, oneOfEachTemplate } from '../site/kinds-of-page.ts';
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
    { width: 360, scheme: 'dark', rules: ['color-contrast', 'target-size'] },
    { width: 700, scheme: 'light', print: true },
  ] as const)('is accessible at $width, $scheme, print: $print', async (look) => {
    const { width, scheme } = look;
    const rules = 'rules' in look ? look.rules : undefined;
    const found: string[] = [];
    const { page } = await openPage(browser, folder, 'index.html', { width, scheme, print: 'print' in look });
    for (const file of oneOfEachTemplate(pages)) {
      await page.goto(addressOf(folder, file));
      found.push(...(await accessibilityFaults(page, rules)).map((fault) => `${file} ${fault}`));
    }
    await page.context().close();
    expect(found).toEqual([]);
  });

  it('folds the contents on a telephone, and unfolds them without a script; going back folds them again', async () => {
    const view = { width: 360, scheme: 'light', scripting: false } as const;
    const { page } = await openPage(browser, folder, 'jobs/2025-04-05-top-end-on.html', view);
    const seen = async (): Promise<readonly string[]> =>
      (await page.locator('.contents a:visible').allTextContents()).toSorted();
    const folded = await seen();
    expect(folded).toEqual(['Contents', 'Log', 'Search']);
    expect(await page.locator('.running a').getAttribute('href')).toBe('../index.html');
    await page.getByRole('link', { name: 'Contents', exact: true }).click();
    const unfolded = await seen();
    expect(unfolded).toEqual(expect.arrayContaining(['Torque', 'Service', 'Manual', 'Fold the contents']));
    await page.goBack();
    expect(await seen()).toEqual(folded);
    await page.setViewportSize({ width: 1280, height: 800 });
    expect(await page.locator('.contents li a:visible').count()).toBe(unfolded.length - 1);
    await page.context().close();
  });

  it('narrows the log to entries with all words; a year without one of them goes with its heading', async () => {
    const { page } = await openPage(browser, folder, 'log.html', { width: 360, scheme: 'light' });
    expect(await page.locator('[id^="year-"]:visible').allTextContents()).toEqual(['2026', '2025', '2024']);
    await page.getByLabel('Only entries with').fill('COUNTIES two');
    expect(await page.locator('[id^="log-"]:visible a').allTextContents()).toEqual(['Two counties and back']);
    expect(await page.locator('[id^="year-"]:visible').allTextContents()).toEqual(['2026']);
    expect(await page.locator('[id^="log-"]:visible em').textContent()).toMatch(/^13\sJune\s2026, ride, 23\s978\smi$/u);
    expect(await page.getByRole('status').textContent()).toMatch(/^1 of \d+$/u);
    await page.context().close();
  });

  it('is read at 200 % on half a screen, and nothing in it moves by itself', async () => {
    // 1280 pixels at 200 % are 640 to the page.
    const { page } = await openPage(browser, folder, 'index.html', { width: 640, scheme: 'light' });
    const broad: string[] = [];
    const moving: string[] = [];
    for (const file of oneOfEachKind(pages)) {
      await page.goto(addressOf(folder, file));
      if (await page.evaluate('document.documentElement.scrollWidth > innerWidth')) broad.push(file);
      if (await page.evaluate(moves)) moving.push(file);
    }
    await page.context().close();
    expect({ broad, moving }).toEqual({ broad: [], moving: [] });
  });

  it('prints nothing that is only for the screen, and cuts nothing off at the edge of the leaf', async () => {
    // What is left of A4 between its margins.
    const view = { width: 658, scheme: 'dark', print: true } as const;
    const { page } = await openPage(browser, folder, 'index.html', view);
    const found: string[] = [];
    // The broadest tables of all: blanks to fill in, a bore in six places, published rows.
    const broadest = ['sheets/inspection-engine.html', 'measurements/bore.html', 'tables/values-bolt-torque.html'];
    for (const file of new Set([...oneOfEachKind(pages), ...broadest])) {
      await page.goto(addressOf(folder, file));
      await page.evaluate('document.fonts.ready.then(() => undefined)');
      if (await page.evaluate('document.documentElement.scrollWidth > innerWidth')) found.push(`${file} is cut off`);
      const left = await page.evaluate(onlyForTheScreen);
      if (Array.isArray(left) && left.length > 0) found.push(`${file}: ${left.join(', ')}`);
    }
    await page.context().close();
    expect(found).toEqual([]);
  });
});

/** Anything animated, or that glides from one state to another. */
const moves = `[...document.querySelectorAll('*')].some((one) => {
  const style = getComputedStyle(one);
  return style.animationName !== 'none' || style.transitionDuration.split(', ').some((time) => time !== '0s');
})`;

/** What is still to be seen of what only leads about, and paper that is not white with black ink. */
const onlyForTheScreen = `(() => {
  const seen = [...document.querySelectorAll('.contents, .turn, .skip, .to-print, .narrowing')]
    .filter((one) => one.getClientRects().length > 0).map((one) => one.className || one.id);
  const { color, backgroundColor } = getComputedStyle(document.documentElement);
  const white = backgroundColor === 'rgb(255, 255, 255)' && color === 'rgb(27, 26, 24)';
  return white ? seen : [...seen, color + ' on ' + backgroundColor];
})()`;
