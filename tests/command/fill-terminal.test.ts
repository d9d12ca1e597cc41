// `add` and `fill` as a person meets them: a real terminal, keys pressed one after the other; and a plain pipe.
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { compiled } from '../set-up/compiled.ts';
import { copyOf, recordOf } from './typing.ts';

const job = '2026-11-28-rear-wheel';
let program = '';
let pty: typeof import('@lydell/node-pty') | undefined;
beforeAll(async () => {
  program = await compiled();
  pty = await import('@lydell/node-pty').catch(() => undefined);
});

interface Sat {
  readonly screen: string;
  readonly code: number;
}

/** Types each line when the prompt that it answers is there; `\u0003` is Ctrl+C and needs no Enter. */
async function sit(words: readonly string[], folder: string, lines: readonly string[]): Promise<Sat> {
  if (pty === undefined) throw new Error('no terminal');
  const terminal = pty.spawn(process.execPath, [program, ...words], {
    cwd: dirname(folder),
    cols: 160,
    rows: 50,
    env: { ...process.env, NO_COLOR: '1' },
  });
  let screen = '';
  let answered = 0;
  let seen = 0;
  terminal.onData((piece) => {
    screen += piece;
    // eslint-disable-next-line no-control-regex
    const fresh = screen.slice(seen).replaceAll(/\u001b\[[\d;?]*[A-Za-z]/gu, '');
    const next = lines[answered];
    if (!fresh.endsWith(': ') || next === undefined) return;
    seen = screen.length;
    answered += 1;
    terminal.write(next === '\u0003' ? next : `${next}\r`);
  });
  const code = await new Promise<number>((done) => {
    terminal.onExit(({ exitCode }) => done(exitCode));
  });
  return { screen, code };
}

test('a job is planned and its sheet typed in at a terminal', async (context) => {
  if (pty === undefined) {
    context.skip('this machine has no pseudo-terminal for tests');
    return;
  }
  const folder = copyOf('tests/fixtures/finch-125');
  const planned = await sit(['add', 'bike', '--today', '2026-11-28'], folder, ['wheel-front-out', 'Front wheel', '']);
  expect(planned.code).toBe(0);
  expect(planned.screen).toContain('splitpin fill bike 2026-11-28-front-wheel');
  const filled = await sit(['fill', 'bike', 'rear-wheel', '--today', '2026-11-28'], folder, [
    'y',
    'y',
    'all but 6',
    'y',
    'q',
  ]);
  expect(filled.code).toBe(0);
  expect(filled.screen).toContain('WARNING');
  expect(recordOf(folder, job)).toContain('removed: rear wheel');
});

test('Ctrl+C keeps what was answered', async (context) => {
  if (pty === undefined) {
    context.skip('this machine has no pseudo-terminal for tests');
    return;
  }
  const folder = copyOf('tests/fixtures/finch-125');
  const { code, screen } = await sit(['fill', 'bike', 'rear-wheel', '--today', '2026-11-28'], folder, [
    'y',
    'y',
    'all',
    '\u0003',
  ]);
  expect(code).toBe(0);
  expect(screen).toContain('go on at any time');
  expect(recordOf(folder, job)).toContain('removed: rear wheel');
});

test('a killed program loses nothing that was answered', async (context) => {
  if (pty === undefined) {
    context.skip('this machine has no pseudo-terminal for tests');
    return;
  }
  const folder = copyOf('tests/fixtures/finch-125');
  const terminal = pty.spawn(process.execPath, [program, 'fill', 'bike', 'rear-wheel'], {
    cwd: dirname(folder),
    cols: 160,
    rows: 50,
  });
  let screen = '';
  let answered = 0;
  const ended = new Promise<void>((done) => {
    terminal.onExit(() => done());
  });
  terminal.onData((piece) => {
    screen += piece;
    if (answered === 0 && screen.includes('front wheel chocked')) {
      answered = 1;
      terminal.write('y\r');
    } else if (answered === 1 && screen.includes('New split pins')) {
      answered = 2;
      terminal.kill('SIGKILL');
    }
  });
  await ended;
  expect(recordOf(folder, job)).toContain('before/wheel-rear-out/1');
});

test('through a pipe each line answers the next question', async () => {
  const folder = copyOf('tests/fixtures/finch-125');
  const child = spawn(process.execPath, [program, 'fill', 'bike', job, '--today', '2026-11-28'], {
    cwd: dirname(folder),
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  child.stdin.end('y\ny\nall\ny\ny\n\n\n\n\n24,5 > 25\n');
  let out = '';
  child.stdout.on('data', (piece: Buffer) => {
    out += piece.toString();
  });
  const code = await new Promise<number | null>((done) => {
    child.on('close', (status) => done(status));
  });
  expect([code, out]).toEqual([0, expect.stringContaining('written into')]);
  expect(readFileSync(join(folder, 'jobs', `${job}.md`), 'utf8')).toContain('found: 24.5 mm, left: 25 mm');
});
