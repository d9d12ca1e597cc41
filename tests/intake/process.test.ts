// `intake` and `take` as processes: typed at a terminal, given through a pipe, stopped and killed in the middle.
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { atTerminal, hasTerminal } from '../command/at-terminal.ts';
import { compiled } from '../set-up/compiled.ts';
import { smallMachine } from '../command/small-machine.ts';
import { allAnswers, emptyFolder } from './here.ts';

let program = '';
beforeAll(async () => {
  program = await compiled();
});

interface Ended {
  readonly code: number | null;
  readonly said: string;
}

/** Runs the program with lines in a pipe. */
async function piped(words: readonly string[], folder: string, lines: readonly string[]): Promise<Ended> {
  const child = spawn(process.execPath, [program, ...words], { cwd: folder, stdio: ['pipe', 'pipe', 'pipe'] });
  const pieces: string[] = [];
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (piece: Buffer) => pieces.push(piece.toString()));
  child.stdin.on('error', () => undefined);
  child.stdin.end(lines.map((line) => line + '\n').join(''));
  const code = await new Promise<number | null>((done) => child.on('close', done));
  return { code, said: pieces.join('') };
}

describe('through a pipe', () => {
  test('each line answers the next question; what does not come is left for later', async () => {
    const folder = emptyFolder();
    const whole = await piped(['intake', 'bike', '--today', '2026-11-14'], folder, allAnswers);
    expect([whole.code, whole.said]).toEqual([0, expect.stringContaining('intake.pdf')]);
    expect((await piped(['check', 'bike', '--today', '2026-11-14'], folder, [])).code).toBe(0);
    expect((await piped(['intake', 'half'], folder, allAnswers.slice(0, 3))).code).toBe(0);
    expect(readFileSync(join(folder, 'half/machine.yaml'), 'utf8')).toContain('stroke: "?"');
    const wrong = await piped(['intake', 'wrong'], folder, ['Larkmoor', 'x', '1969', '', '', '7512']);
    expect([wrong.code, existsSync(join(folder, 'wrong/machine.yaml'))]).toEqual([0, true]);
    expect(wrong.said).toContain('clock: 7512. “7512” has no unit');
    const nothing = await piped(['intake', 'none'], folder, []);
    expect([nothing.code, existsSync(join(folder, 'none'))]).toEqual([2, false]);
  });

  test('a log is written with --yes, or when a line says yes', async () => {
    const machine = smallMachine();
    const log = join(dirname(machine), 'log.csv');
    writeFileSync(log, 'Date,Text\n2024-04-20,Oil changed\n');
    const unasked = await piped(['take', machine, log], dirname(machine), []);
    expect([unasked.code, unasked.said]).toEqual([0, expect.stringContaining('Write it with --yes')]);
    const agreed = await piped(['take', machine, log], dirname(machine), ['yes']);
    expect([agreed.code, agreed.said]).toEqual([0, expect.stringContaining('1 record written')]);
    expect(existsSync(join(machine, 'jobs/2024-04-20-oil-changed.md'))).toBe(true);
  });
});

describe.runIf(hasTerminal)('at a terminal', () => {
  test('intake asks, asks again, and makes the folder', async () => {
    const folder = emptyFolder();
    const terminal = atTerminal(program, ['intake', '--today', '2026-11-14'], folder);
    await terminal.answer(/1 of 13 {2}Make, as .*: $/u, 'Larkmoor');
    await terminal.answer(/2 of 13 {2}Model, as .*: $/u, 'Pipit 175');
    for (const number of [3, 4, 5]) await terminal.answer(new RegExp(`${String(number)} of 13 .*: $`, 'u'), '');
    await terminal.answer(/6 of 13 .*: $/u, '7512');
    await terminal.answer(/has no unit[^]*6 of 13 .*: $/u, '7512 mi');
    for (const number of [7, 8, 9, 10, 11, 12, 13])
      await terminal.answer(new RegExp(`${String(number)} of 13 .*: $`, 'u'), '');
    expect(await terminal.ended).toBe(0);
    expect(terminal.shown()).toContain('Left for later');
    expect(readFileSync(join(folder, 'larkmoor-pipit-175/machine.yaml'), 'utf8')).toContain('reads: 7512 mi');
  });

  test('Ctrl+C makes nothing', async () => {
    const folder = emptyFolder();
    const terminal = atTerminal(program, ['intake', 'bike'], folder);
    await terminal.answer(/1 of 13 .*: $/u, 'Larkmoor');
    await terminal.until(/2 of 13 .*: $/u);
    terminal.type('\u0003');
    expect(await terminal.ended).toBe(2);
    expect(readdirSync(folder)).toEqual([]);
  });

  test('take asks what a date means and whether to write', async () => {
    const machine = smallMachine();
    const log = join(dirname(machine), 'log.csv');
    writeFileSync(log, 'Date,Text\n03/04/2024,Oil changed\n');
    const terminal = atTerminal(program, ['take', machine, log, '--today', '2024-06-01'], dirname(machine));
    await terminal.answer(/03\/04\/2024 can be read in several ways.*: $/u, 'perhaps');
    await terminal.answer(/Write one of[^]*several ways.*: $/u, 'day-month-year');
    await terminal.answer(/Write 1 record\? \(yes or no\): $/u, 'yes');
    expect(await terminal.ended).toBe(0);
    expect(existsSync(join(machine, 'jobs/2024-04-03-oil-changed.md'))).toBe(true);
  });
});
