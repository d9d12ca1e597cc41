// The ride log typed in: a line a ride, a record each, nothing kept that the records could not be read with.
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stops } from '../../src/build.ts';
import { addCommand } from '../../src/command/add-command.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { copyOf, listening, typing } from './typing.ts';

const day = '2026-11-28';

async function rides(folder: string, lines: readonly string[], atTerminal = true) {
  const heard = listening(folder);
  const { asker, asked } = typing(lines, atTerminal);
  const code = await addCommand(folder, ['rides'], { today: day }, heard.around, asker);
  return { code, asked, ...heard };
}

/** What is wrong in the machine’s own records. */
function stopsIn(problems: Parameters<typeof stops>[0]) {
  return stops(problems).filter(({ at }) => at.file.startsWith('jobs/'));
}

/** What the clock of a machine reads last, and its unit. */
function lastRead(folder: string): { readonly reads: number; readonly unit: string } {
  const { binder } = readMachine(folder, day, {});
  const clock = binder?.book.odometer.now.clock;
  if (clock === undefined) throw new Error('no clock');
  return {
    reads: Number.parseFloat(
      clock.unit.symbol === 'mi' ? String(clock.quantity / 1609.344) : String(clock.quantity / 1000),
    ),
    unit: clock.unit.symbol,
  };
}

test.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])(
  '%s takes two rides',
  async (machine) => {
    const folder = copyOf(machine);
    const { reads, unit } = lastRead(folder);
    const [a, b, c] = [Math.ceil(reads) + 2, Math.ceil(reads) + 10, Math.ceil(reads) + 22];
    const { code, said } = await rides(folder, [
      `${day}; ${String(a)}; ${String(b)}; 0,6; 30; dry; ran well: "no drip"`,
      `t; ${String(b)}; ${String(c)}; ; ; wet`,
      '',
    ]);
    expect(code).toBe(0);
    expect(said.join('\n')).toContain('2 rides written down');
    const first = readFileSync(join(folder, 'jobs', `${day}-ride.md`), 'utf8');
    expect(first).toContain(`out: ${String(a)} ${unit}, in: ${String(b)} ${unit}, fuel: 0.6 l, oil: 30 ml`);
    const read = readMachine(folder, day, {});
    expect(stopsIn(read.problems)).toEqual([]);
    const jobs = read.binder?.book.records.jobs ?? [];
    expect(jobs.find(({ id }) => id === `${day}-ride`)?.ride?.whatHappened).toBe('ran well: "no drip"');
    expect(jobs.find(({ id }) => id === `${day}-ride-2`)?.ride?.weather).toBe('wet');
  },
);

test('a clock that went back is said at once, and left out when it was a slip', async () => {
  const folder = copyOf('tests/fixtures/finch-125');
  const { told, said } = await rides(folder, ['t; 1; 5', 'n', '']);
  expect(told.join('\n')).toContain('A clock counts one way');
  expect(said.join('\n')).toContain('no rides written down');
  expect(existsSync(join(folder, 'jobs', `${day}-ride.md`))).toBe(false);
});

test.each(['2027-01-01; 5; 6', 'yesterday; 5; 6', 't', '2026-11; 5; 6', 't; a lot; 6', 't; 1; 2; 3; 4; 5; 6; 7'])(
  '%j is no ride, and nothing is written',
  async (line) => {
    const folder = copyOf('tests/fixtures/finch-125');
    const before = readdirSync(join(folder, 'jobs')).toSorted();
    const { code } = await rides(folder, [line], false);
    expect(code).toBe(1);
    expect(readdirSync(join(folder, 'jobs')).toSorted()).toEqual(before);
  },
);

test('any words are kept as they were written, or refused in words', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 40 }), async (words) => {
      const folder = copyOf('tests/fixtures/finch-125');
      await rides(folder, [`t; ; ; ; ; dry; ${words.replaceAll(/[;|\t\r\n]/gu, ' ')}`], false);
      expect(stopsIn(readMachine(folder, day, {}).problems)).toEqual([]);
    }),
    { numRuns: 8 },
  );
});
