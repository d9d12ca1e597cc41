// Machines made one after another by one process, as a workshop's threads make them: each is what it is alone, to the last byte, on screen and on paper.
import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { keptTerminal } from '../../src/command/workshop/kept-terminal.ts';
import { buildMachine } from '../../src/command/workshop/machine-build.ts';
import { run } from '../command/beside.ts';
import { small, smallMachine } from '../command/small-machine.ts';
import { filesIn } from './shed.ts';

const today = '2026-06-01';
const base = realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-one-after-another-')));
/** Ids of the fixtures under other values, and letters that no other machine has: each font, name and unit is met first in another order. */
const odd = smallMachine(
  {
    'machine.yaml': (small['machine.yaml'] ?? '')
      .replace('Test machine', 'Übung “Ω” №7 ﬁ ½ ⅜ ✓ 漢')
      .replace('units: metric', 'units: imperial'),
    'maker/book.yaml': `splitpin: 1
source: {title: Another book, edition: "1971"}
fasteners:
  - {id: head-nut, name: Zylinderkopfmutter, of: head, thread: 1/4 BSF, count: 4, torque: 12 lbf·ft, page: 3}
limits:
  - {id: ring-gap, name: Кольцо, unit: in, standard: 0.008 to 0.012 in, limit: 0.031 in max, page: 4}
`,
  },
  'odd',
);
afterAll(() => {
  rmSync(base, { recursive: true, force: true });
  rmSync(dirname(odd), { recursive: true, force: true });
});

type Files = Readonly<Record<string, string>>;

/** What stands in an output folder, but for the list of what was made by which program. */
const made = (out: string): Files => filesIn(out, (file) => file !== '.splitpin.json');

async function alone(machine: string): Promise<Files> {
  const out = join(base, 'alone', basename(machine));
  const { code } = await run(machine, ['build', basename(machine), '--out', out, '--today', today]);
  expect(code).toBe(0);
  return made(out);
}

/** In this very process, whatever was made in it before. */
async function here(machine: string, turn: number): Promise<Files> {
  const out = join(base, String(turn), basename(machine));
  const job = { machine, out, today, options: {}, program: 'one', choices: 'one', printThreads: 0 };
  const { code } = await buildMachine(job, keptTerminal(false).terminal);
  expect(code).toBe(0);
  return made(out);
}

test('a machine is the same after others as it is alone', async () => {
  const tern = resolve('tests/fixtures/tern-350');
  const wanted = new Map([
    [odd, await alone(odd)],
    [tern, await alone(tern)],
  ]);
  for (const [turn, machine] of [odd, tern, odd].entries()) {
    const own = wanted.get(machine) ?? {};
    const files = await here(machine, turn);
    expect(Object.keys(files)).toEqual(Object.keys(own));
    expect(Object.keys(own).filter((file) => file.endsWith('.pdf')).length).toBeGreaterThan(10);
    expect([turn, Object.keys(own).filter((file) => files[file] !== own[file])]).toEqual([turn, []]);
  }
});
