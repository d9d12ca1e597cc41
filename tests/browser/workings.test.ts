// The workings at the bench in a real browser, opened from a folder: the very figures that the command line gives, for every calculation.
import { rmSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { calculationIds } from '../../src/build.ts';
import { calculationById, calculations } from '../../src/calc/list.ts';
import { workOut } from '../../src/calc/work.ts';
import { resultLines, workingLines } from '../../src/calc/work-text.ts';
import { benchFile, benchWorkings } from '../../src/views/bench/workings-at-bench.ts';
import { binderSite } from '../site/binder-site.ts';
import { writeSite } from '../site/site-folder.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { accessibilityFaults, addressOf, openPage } from './look.ts';

const phone = { width: 360, scheme: 'light' } as const;

/** The form of a calculation. */
const formOf = (page: Page, id: string) => page.locator('form.working', { has: page.locator(`[id^="${id}-"]`) });

function begun(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

async function type(page: Page, id: string, given: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(given)) {
    const field = page.locator(`[id="${`${id}-${name}`.replaceAll(' ', '-')}"]`);
    const input = calculationById(id)?.inputs[name];
    if (input?.kind === 'words' && input.among !== undefined) await field.selectOption(text);
    else await field.fill(text);
  }
}

/** Puts all fields of a form as if they were typed, without the browser's waiting for each to be seen. */
async function put(page: Page, id: string, given: Readonly<Record<string, string>>): Promise<void> {
  const fields = Object.entries(given).map(([name, text]) => [`${id}-${name}`.replaceAll(' ', '-'), text]);
  await page.evaluate(`for (const [id, text] of ${JSON.stringify(fields)}) {
    const field = document.getElementById(id);
    field.value = text;
    if (field.value !== text) throw new Error(id + ' does not take ' + text);
    for (const kind of ['input', 'change']) field.dispatchEvent(new Event(kind, { bubbles: true }));
  }`);
}

describe.skipIf(!hasBrowser)('the workings at the bench', () => {
  let browser: Browser;
  let folder: string;
  beforeAll(async () => {
    const { files } = await binderSite('demo-bike', '2026-11-14');
    folder = writeSite(files);
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('give what the command line gives, results and working, for the example of every calculation', async () => {
    const { page, faults } = await openPage(browser, folder, 'index.html', phone);
    const differing: string[] = [];
    for (const one of calculations) {
      await page.goto(addressOf(folder, `calculations/${one.id}.html`));
      const form = formOf(page, one.id);
      // Only what the example gives, nothing of the machine.
      const empty = Object.fromEntries(Object.keys(one.inputs).map((name) => [name, '']));
      await put(page, one.id, { ...empty, ...one.example.given });
      const worked = workOut(one.id, one.example.given);
      const wanted = [...resultLines(one, worked).map(begun), ...workingLines(one, worked)];
      const shown = [
        ...(await form.locator('.results li').allTextContents()),
        ...(await form.locator('details li').allTextContents()),
      ];
      if (wanted.join('\n') !== shown.join('\n'))
        differing.push(`${one.id}: ${wanted.join(' | ')} ≠ ${shown.join(' | ')}`);
    }
    await page.context().close();
    expect(calculationIds().length).toBeGreaterThan(60);
    expect(differing).toEqual([]);
    expect(faults).toEqual([]);
  });

  it('take a bare number in the unit beside it, a comma, and other units of the trade', async () => {
    const { page } = await openPage(browser, folder, benchFile('oil-in-fuel'), phone);
    const oil = formOf(page, 'oil-in-fuel').locator('.results li').first();
    for (const [fuel, ratio] of [
      ['0,25', '25'],
      ['250 ml', '25:1'],
      ['0.25', '1:25'],
    ] as const) {
      await type(page, 'oil-in-fuel', { fuel, ratio });
      expect((await oil.textContent())?.replaceAll('\u00a0', ' '), fuel).toMatch(/: 10(?:\.0)? ml$/u);
    }
    await page.goto(addressOf(folder, benchFile('unit-slips')));
    await page.getByLabel('Value with its unit').fill('14 thou');
    const table = page.getByRole('table').first();
    expect((await table.innerText()).replaceAll('\u00a0', ' ')).toMatch(/0\.3556 mm[\s\S]*14 mm\s+551\.2 thou/u);
    await page.context().close();
  });

  it('say what cannot be read and what is still needed, in the words of a record', async () => {
    const { page } = await openPage(browser, folder, benchFile('oil-in-fuel'), phone);
    const form = formOf(page, 'oil-in-fuel');
    await type(page, 'oil-in-fuel', { fuel: '6?.8', ratio: '25:1' });
    expect(await form.locator('.doubts').innerText()).toContain('6?.8');
    expect(await page.locator('#oil-in-fuel-fuel').getAttribute('aria-invalid')).toBe('true');
    expect(await form.locator('.results').count()).toBe(0);
    await type(page, 'oil-in-fuel', { fuel: '' });
    expect(await form.innerText()).toContain('Still needed: fuel.');
    await page.getByRole('button', { name: 'As the machine stands' }).click();
    expect(await page.locator('#oil-in-fuel-ratio').inputValue()).toBe('25:1');
    await page.context().close();
  });

  it('pass a result on to the next question, and keep what is written there by hand', async () => {
    const { page } = await openPage(browser, folder, benchFile('mixture'), phone);
    await type(page, 'humid-air', { altitude: '1500 m', temperature: '30 °C', humidity: '40 %' });
    const now = page.locator('#mixture-shift-density-now');
    const passed = await now.inputValue();
    expect(passed).toMatch(/^0\.9\d+ kg\/m³$/u);
    await now.fill('1.1 kg/m³');
    await type(page, 'humid-air', { temperature: '10 °C' });
    expect(await now.inputValue()).toBe('1.1 kg/m³');
    expect(await page.locator('#jet-change-density-now').inputValue()).not.toBe(passed);
    // A span that went in comes out as one, and is a point again once a value is written over it.
    await page.goto(addressOf(folder, benchFile('gearing')));
    const speed = formOf(page, 'road-speed').locator('.results li').first();
    expect(await speed.innerText()).toMatch(/: 12\.93\sto\s13\.46\skm\/h$/u);
    await page.locator('#road-speed-circumference').fill('1800 mm');
    expect(await speed.innerText()).not.toMatch(/\sto\s/u);
    await page.context().close();
  });

  it('bring the thread and the maker’s torque of a fastener, and no figure for one without', async () => {
    const { page } = await openPage(browser, folder, benchFile('threads'), phone);
    await page.getByLabel('Fastener of this machine').selectOption('1');
    const thread = await page.locator('#thread-geometry-thread').inputValue();
    expect(thread).not.toBe('');
    expect(await page.locator('#bench .says').innerText()).toContain(thread);
    expect(await page.locator('#torque-slip-torque').inputValue()).toMatch(/N·m|kgf·m|lbf·ft/u);
    const labels = await page.locator('#of-this-machine option').allTextContents();
    for (const label of labels.slice(1)) {
      await page.getByLabel('Fastener of this machine').selectOption({ label });
      const says = await page.locator('#bench .says').innerText();
      if (!says.includes('no value of the maker')) continue;
      expect(await page.locator('#torque-slip-torque').inputValue(), label).toBe('');
    }
    await page.context().close();
  });

  it('are accessible, fit a telephone, and are reached by keyboard', async () => {
    for (const { id } of benchWorkings) {
      const { page, faults } = await openPage(browser, folder, benchFile(id), phone);
      expect(await accessibilityFaults(page), id).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth'), id).toBe(true);
      expect(faults, id).toEqual([]);
      await page.context().close();
    }
    const { page } = await openPage(browser, folder, benchFile('oil-in-fuel'), phone);
    await page.getByRole('button', { name: 'Print' }).focus();
    // The link to formula and source, then the first field.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.type('0,5');
    await page.keyboard.press('Tab');
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('20');
    expect(await formOf(page, 'oil-in-fuel').locator('.results').innerText()).toContain('25');
    await page.context().close();
  });

  it('print with what was typed, and without buttons', async () => {
    const { page } = await openPage(browser, folder, benchFile('oil-in-fuel'), { width: 1280, scheme: 'dark' });
    await type(page, 'oil-in-fuel', { fuel: '1 l' });
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.results').first().isVisible()).toBe(true);
    expect(await page.locator('.caution').first().isVisible()).toBe(true);
    expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    await page.context().close();
  });

  it('stand worked out with this machine’s values where scripts are switched off', async () => {
    const { page, faults } = await openPage(browser, folder, benchFile('gearing'), { ...phone, scripting: false });
    const text = (await page.locator('main').innerText()).replaceAll('\u00a0', ' ');
    expect(await page.locator('form').count()).toBe(0);
    expect(text).toContain('As the machine stands');
    expect(text).toMatch(/Overall: 8\.054:1/u);
    expect(text).toContain('source:');
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
