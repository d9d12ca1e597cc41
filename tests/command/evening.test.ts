// `splitpin evening` and `splitpin to-get`: on the demo, on both other machines and over a workshop; lines, plain data, and what is not understood.
import { join } from 'node:path';
import { Command, Option } from 'commander';
import { describe, expect, test } from 'vitest';
import { describeEvening } from '../../src/command/describe-evening.ts';
import { eveningCommand, toGetCommand, type EveningOptions } from '../../src/command/evening-command.ts';
import { openTerminal } from '../../src/command/terminal.ts';
import { packageFolder } from '../../src/disk.ts';

interface Said {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}
const pipit = join(packageFolder(), 'demo-bike');
const fixtures = join(packageFolder(), 'tests/fixtures');

/** A terminal that keeps what it is told. */
function keeping(): { readonly said: (code: number) => Said; readonly terminal: ReturnType<typeof openTerminal> } {
  const [out, err]: [string[], string[]] = [[], []];
  const stream = (kept: string[]): { write: (text: string) => void } => ({ write: (text) => void kept.push(text) });
  const plain = (kept: string[]): string => kept.join('').replaceAll('\u00a0', ' ');
  return {
    said: (code) => ({ code, out: plain(out), err: plain(err) }),
    terminal: openTerminal(stream(out), stream(err), {}),
  };
}

async function ask(command: typeof eveningCommand, folder: string, options: EveningOptions = {}): Promise<Said> {
  const { said, terminal } = keeping();
  const around = { terminal, folder: packageFolder(), clock: () => new Date(0) };
  return said(await command(folder, { today: '2026-11-14', ...options }, around));
}

describe('evening', () => {
  test('answers for the demo what fits, what does not and why', async () => {
    const { code, out } = await ask(eveningCommand, pipit);
    expect(code).toBe(0);
    expect(out).toContain('In 1 h 30 min, alone:\n  New plugs, battery looked after (2026-11-28-plugs-and-battery)');
    expect(out).toMatch(
      /Top end off again, right cylinder[^]*not here: 2 × head gasket \(ordered\)[^]*needs a second person/u,
    );
    expect(out).toContain('from club spares scheme: 2 × head gasket (ordered)');
  });
  test('a longer evening with a helper takes away what a helper and time take away', async () => {
    const { out } = await ask(eveningCommand, pipit, { minutes: '600', helper: true });
    expect(out).toContain('In 10 h, with a helper:');
    expect(out).not.toContain('needs a second person');
    expect(out).not.toContain('takes about');
  });
  test('gives plain data of one machine, and a list of a workshop', async () => {
    const one: unknown = JSON.parse((await ask(eveningCommand, pipit, { json: true })).out);
    expect(one).toMatchObject({ machine: 'Larkmoor Pipit 175', minutes: 90, alone: true, minutesLeft: 45 });
    const many: unknown = JSON.parse((await ask(eveningCommand, fixtures, { json: true })).out);
    expect(many).toHaveLength(3);
    expect((await ask(eveningCommand, fixtures)).out).toContain('== Brackwell Tern 350');
  });
  test('a folder that is no machine is said to be none', async () => {
    expect((await ask(eveningCommand, join(fixtures, 'nothing-here'))).code).not.toBe(0);
  });
});

describe('to-get', () => {
  test('lists the demo by supplier, with hours, sizes, what is late and what goes back', async () => {
    const { code, out } = await ask(toGetCommand, pipit);
    expect(code).toBe(0);
    expect(out).toMatch(
      /bearing shop; open today, 8:30 to 12:00\n {2}kickstart shaft seal:[^\n]*bring the old seal, 16×28×7 mm/u,
    );
    expect(out).toContain('2 × front brake shoes: promised for 2026-11-07, 7 days late: ask');
    expect(out).toContain('12.00 GBP comes back');
  });
  test('over a workshop names the machine of each line', async () => {
    expect((await ask(toGetCommand, fixtures)).out).toContain('Tollgate Finch 125: split pin for Rear spindle nut');
    const all: unknown = JSON.parse((await ask(toGetCommand, fixtures, { json: true })).out);
    expect(all).toMatchObject({ today: '2026-11-14', suppliers: expect.any(Array), usedUp: expect.any(Array) });
  });
});

test.each([['0'], ['an hour'], ['-5']])('“%s” is not a number of minutes', async (minutes) => {
  const program = new Command().exitOverride().configureOutput({ writeErr: () => undefined });
  const command = (name: string): Command => program.command(name).argument('<folder>');
  const nothing = (): Promise<void> => Promise.resolve();
  describeEvening(command, () => new Option('--today <date>'), { evening: nothing, toGet: nothing });
  const asked = program.parseAsync(['evening', pipit, `--minutes=${minutes}`], { from: 'user' });
  await expect(asked).rejects.toThrow('Write whole minutes, as 90.');
});
