// Forms through the compiled program, as a person meets it: printed, filled elsewhere, taken at a terminal and through a pipe.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, expect, it } from 'vitest';
import { atTerminal, hasTerminal } from '../command/at-terminal.ts';
import { compiled } from '../set-up/compiled.ts';
import { runProgram } from '../command/process.ts';
import { copyOf, filled, remove, today } from './job-forms.ts';

const id = '2026-11-21-top-end-again';
const bore = `${id}/bore/left top across/found`;

let program: string;
let machine: string;
let away: string;
beforeAll(async () => {
  program = await compiled();
});
afterEach(() => {
  remove(machine);
  rmSync(away, { recursive: true, force: true });
});

/** Prints the measuring sheet as a form with the program, and fills it with another. */
async function filledForm(value: string): Promise<string> {
  machine = copyOf('demo-bike');
  away = mkdtempSync(join(tmpdir(), 'splitpin-take-'));
  const words = ['print', machine, 'measuring', '--form', '--out', away, '--today', today];
  const printed = await runProgram(program, words, { folder: away });
  expect(printed.code, printed.err).toBe(0);
  const form = readFileSync(join(away, `measuring-${id}-form.pdf`));
  const path = join(away, 'filled.pdf');
  writeFileSync(path, await filled(form, { [bore]: value }));
  return path;
}

function record(): string {
  return readFileSync(join(machine, 'jobs', `${id}.md`), 'utf8');
}

it('through a pipe: nothing without --yes, and with it what was shown', async () => {
  const path = await filledForm('50,52');
  const before = record();
  const asked = await runProgram(program, ['take', machine, path, '--today', today], { folder: away });
  expect(asked.out).toContain('left top across, as found: 50.52 mm');
  expect(asked.err).toContain('--yes');
  expect(record()).toBe(before);
  const took = await runProgram(program, ['take', machine, path, '--today', today, '--yes'], { folder: away });
  expect(took.code, took.err).toBe(0);
  expect(record()).toContain('left top across: 50.52 mm');
});

it.skipIf(!hasTerminal)('at a terminal: which wins and whether to write are asked', async () => {
  const path = await filledForm('50,52');
  writeFileSync(
    join(machine, 'jobs', `${id}.md`),
    record().replace('  - item: bore\n', '  - {item: bore, found: {left top across: 50.55 mm}}\n'),
  );
  const sitting = atTerminal(program, ['take', machine, path, '--today', today], away);
  await sitting.answer(/Which wins where they differ\? \(form, record, both\): $/u, 'neither');
  await sitting.answer(/Write one of: form, record, both\.\s+.*: $/u, 'form');
  await sitting.answer(/Write \d+ changes? into jobs\/.*\(yes or no\): $/u, 'yes');
  expect(await sitting.ended, sitting.shown()).toBe(0);
  expect(record()).toContain('left top across: 50.52 mm');
  expect(record()).not.toContain('50.55');
});
