// serve in a real browser: mistakes appear over the last good binder and go again; the key leaves the address when it has opened the door.
import type { ChildProcess } from 'node:child_process';
import { dirname } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { errors, type Browser, type Locator } from 'playwright-core';
import { openLanDoor } from '../../src/command/lan-door.ts';
import { startServer } from '../../src/command/local-server.ts';
import { compiled } from '../set-up/compiled.ts';
import { startProgram } from '../command/process.ts';
import { put, small, smallMachine } from '../command/small-machine.ts';
import { hasBrowser, openBrowser } from './chromium.ts';

const file = 'jobs/2024-03-02-bought.md';
const good = small[file] ?? '';

/** Saves the record until it is shown: a page that has not begun to listen yet is told of nothing. */
async function save(machine: string, text: string, shown: Locator): Promise<void> {
  for (let turn = 0; turn < 60; turn += 1) {
    put(machine, { [file]: text });
    try {
      return await shown.waitFor({ timeout: 4000 });
    } catch (cause) {
      if (!(cause instanceof errors.TimeoutError)) throw cause;
    }
  }
  throw new Error('it was never shown');
}

describe.runIf(hasBrowser)('serve', () => {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  const children: ChildProcess[] = [];
  afterAll(async () => {
    for (const child of children) child.kill();
    await browser?.close();
  });

  test('shows mistakes above the last good page, and takes them away again', async () => {
    const program = await compiled();
    const machine = smallMachine();
    const running = startProgram(program, ['serve', machine, '--port', '0', '--today', '2024-06-01'], {
      folder: dirname(machine),
    });
    children.push(running.child);
    const [address = ''] = await running.until(/http:\/\/127\.0\.0\.1:\d+\//u);
    const page = await browser?.newPage();
    if (page === undefined) throw new Error('no page');
    const complaints: string[] = [];
    page.on('console', (message) => {
      // A browser asks every server for a small picture of its own.
      const isIcon = message.location().url.endsWith('/favicon.ico');
      if (message.type() === 'error' && !isIcon) complaints.push(message.text());
    });
    page.setDefaultTimeout(240_000);
    await page.goto(`${address}jobs/2024-03-02-bought.html`);
    await page.getByText('Found in a barn.').waitFor();

    const mistakes = page.getByRole('alert');
    const mistaken = good.replace('barn', 'cellar').replace('1000 mi', '12,480 mi');
    await save(machine, mistaken, mistakes.filter({ hasText: 'number-ambiguous' }));
    expect(await mistakes.innerText()).toMatch(/last good binder[\s\S]*2024-03-02-bought\.md:6:11 number-ambiguous/u);
    expect(await page.getByText('Found in a barn.').isVisible()).toBe(true);
    await running.until(/number-ambiguous[\s\S]*last good binder/u);

    await save(machine, good.replace('barn', 'chapel'), page.getByText('Found in a chapel.'));
    expect(await mistakes.count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.close();
    const ended = new Promise((done) => running.child.on('close', done));
    running.child.kill('SIGTERM');
    await ended;
  });

  test('a phone is shown in by the key, and goes on without it', async () => {
    const html = (text: string, link: string) => ({
      type: 'text/html; charset=utf-8',
      body: `<!doctype html><title>x</title><main>${text}</main><a href="${link}">next</a>`,
    });
    const pages = new Map([
      ['', html('first', '/next.html')],
      ['next.html', html('second', '/')],
    ]);
    const door = openLanDoor('BBBBBBBBBBBBBBBBBBBBBB', ['127.0.0.2']);
    const server = await startServer(
      0,
      async (path) => Promise.resolve(pages.get(path)),
      () => undefined,
      door,
    );
    const page = await browser?.newPage();
    if (page === undefined) throw new Error('no page');
    page.setDefaultTimeout(240_000);
    try {
      const address = door.addresses(server.port)[0] ?? '';
      const refused = await page.goto(address.replace(/\?.*/u, ''));
      expect(refused?.status()).toBe(401);
      await page.goto(address);
      expect(page.url()).toBe(`http://127.0.0.2:${String(server.port)}/`);
      expect(await page.innerText('main')).toBe('first');
      await page.click('a');
      await page.getByText('second').waitFor();
      expect(await page.evaluate(() => document.cookie + document.referrer)).not.toContain('BBBB');
    } finally {
      await page.close();
      server.close();
    }
  });
});
