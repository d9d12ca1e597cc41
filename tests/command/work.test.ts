// `splitpin work`: every calculation by its own example, and on both machines with what their records say.
import { join } from 'node:path';
import { tmpdir } from 'node:os';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculations } from '../../src/calc/list.ts';
import { groups } from '../../src/calc/groups.ts';
import { takenInputs } from '../../src/book/taken/inputs.ts';
import { workCommand } from '../../src/command/work-command.ts';
import { openTerminal } from '../../src/command/terminal.ts';
import { packageFolder } from '../../src/disk.ts';
import { compiled } from '../set-up/compiled.ts';
import { runProgram } from './process.ts';
import { small, smallMachine } from './small-machine.ts';

interface Said {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the command in this process, with a terminal that keeps what it is told. */
async function work(id: string | undefined, words: readonly string[] = [], folder?: string): Promise<Said> {
  const [out, err]: [string[], string[]] = [[], []];
  const stream = (kept: string[]): { write: (text: string) => void } => ({ write: (text) => void kept.push(text) });
  const terminal = openTerminal(stream(out), stream(err), {});
  const options = { today: '2026-11-14', ...(folder === undefined ? {} : { in: folder }) };
  const around = { terminal, folder: packageFolder(), clock: () => new Date(0) };
  const code = await workCommand(id, words, options, around);
  return { code, out: out.join(''), err: err.join('') };
}

const pipit = join(packageFolder(), 'demo-bike');
const tern = join(packageFolder(), 'tests/fixtures/tern-350');

describe('the list', () => {
  test('has every calculation once, in a group with a name', async () => {
    const { code, out } = await work(undefined);
    expect(code).toBe(0);
    expect(groups().flatMap((group) => group.calculations)).toEqual(calculations);
    expect(groups().map((group) => group.name)).not.toContain('Others');
    for (const one of calculations)
      expect(out.split('\n').filter((line) => line.startsWith('  ' + one.id + ' '))).toHaveLength(1);
  });
  test('an unknown name is answered with what it may mean: near in letters, or a word of what it is for', async () => {
    const meant = async (name: string): Promise<readonly string[]> =>
      (await work(name)).err
        .split('\n')
        .filter((line) => line.startsWith('  '))
        .map((line) => line.trim());
    expect(await meant('sprocket')).toEqual(['sprocket-diameter', 'clock-factor']);
    expect(await meant('xqzv')).toEqual([]);
  });
  test('an unknown name is answered with the nearest', async () => {
    const { code, err } = await work('displacment');
    expect([code, err.split('\n')[1]?.trim()]).toEqual([2, 'displacement']);
  });
});

describe.each(calculations.map((one) => [one.id, one] as const))('%s', (id, one) => {
  const words = Object.entries(one.example.given).map(([name, value]) => name + '=' + value);
  test('alone shows its values with units and its example', async () => {
    const { code, out } = await work(id);
    expect(code).toBe(0);
    for (const name of Object.keys(one.inputs)) expect(out).toContain('  ' + name + ': ');
    expect(out).toContain('example: splitpin work ' + id);
  });
  test('gives its example, with formula and source', async () => {
    const { code, out, err } = await work(id, words);
    expect([code, err.includes('problem')], err).toEqual([0, false]);
    for (const [name, value] of Object.entries(one.example.gives)) {
      const output = one.outputs[name];
      // A torque is printed in three units; its own is the first where it is N·m.
      const line = out.split('\n').filter((text) => text.startsWith('  ' + (output?.name ?? name) + ': '));
      if (output?.kind === 'quantity' && output.unit.dimension === 'torque') expect(line.length).toBeGreaterThan(0);
      else expect(line.join('\n').replace(/\s/gu, ' ')).toContain(value.replace(/\s/gu, ' '));
    }
    expect(out).toContain('formula: ' + one.formula);
    expect(out).toContain('source: ' + one.source);
  });
});

/** Calculation, values given besides, and what a line of the answer must say. */
type OnMachine = readonly [string, readonly string[], RegExp];

const onPipit: readonly OnMachine[] = [
  ['displacement', [], /displacement: 174\.8 cc/],
  ['cranking-pressure', [], /gauge pressure: 9\.4 to 12\.9 bar/],
  ['compression-spread', [], /between cylinders: \d+ %/],
  ['crank-angle', [], /before top dead centre: 22\.6/],
  ['piston-position', [], /piston below the top: 2\.09\d mm/],
  ['rim-arc', ['rim=120 mm'], /along the rim: 23\.67 mm/],
  ['oil-in-fuel', ['fuel=5 l'], /oil: 200\.0 ml/],
  ['tank-top-up', ['in tank=2 l', 'ratio in tank=25:1', 'added=5 l'], /oil to add: 200 ml/],
  ['oil-pump-use', [], /fuel to oil: \d+:1/],
  ['overall-ratio', ['in-gear=1'], /overall: 23\.233:1/],
  ['road-speed', ['in-gear=4'], /for each 1000 rpm: 12\.93 to 13\.46 km\/h/],
  ['rolling-circumference', ['wheel=front'], /nominal outside diameter: 571\.5 mm/],
  ['chain-length', ['centre=540 mm'], /links/],
  ['chain-centre', [], /centre/],
  ['chain-wear', [], /elongation: 0\.59 %/],
  ['chain-worn-length', ['elongation=2 %'], /length: 259\.080 mm/],
  ['sprocket-diameter', [], /pitch diameter: 57\.07/],
  ['tyre-marking', [], /nominal outside diameter: 584\.2 mm/],
  ['tyre-date', ['wheel=front'], /made: week 6 of 2025/],
  ['tyre-pressure', ['temperature=15 °C', 'other temperature=35 °C'], /pressure then: 2\.\d+ bar/],
  ['tread-depth', [], /left/],
  ['battery-volts', [], /charge: 86 to 100 %/],
  ['rested-volts', ['charge=100 %'], /volts at rest: 6\.3/],
  ['bore-wear', ['at=right'], /rule used: difference of diameters/],
  ['piston-clearance', ['at=left'], /clearance: 0\.030 mm/],
  ['next-oversize', ['at=left'], /oversize: 0\.75 mm/],
  ['ring-gap', [], /common gap: 0\.15 to 0\.20 mm/],
  ['thread-geometry', ['fastener=cylinder-head-nut'], /stress area: 36\.61 mm²/],
  ['bolt-strength', ['fastener=clutch-cover-screw'], /proof load: \d/],
  [
    'cover-torque',
    ['fastener=clutch-cover-screw'],
    /torque: 4\.3 to 5\.3 N·m · 0\.44 to 0\.54 kgf·m · 3\.2 to 3\.9 lbf·ft/,
  ],
  ['torque-slip', ['fastener=cylinder-head-nut'], /nothing to say/],
  ['torque-stages', ['fastener=cylinder-head-nut', 'stages=2'], /first/],
  ['wrench-setting', ['fastener=cylinder-head-nut', 'length=350 mm', 'extension=50 mm'], /18\.9 N·m/],
  ['wrench-range', ['fastener=cylinder-head-nut', 'wrench=click-wrench'], /wrench/],
  ['limit-verdict', ['item=rear-brake-lining', 'at=leading'], /verdict: worn, usable/],
  ['wear-to-limit', ['item=chain-20-links'], /limit reached at: [\d\s]+ to [\d\s]+ mi/],
  ['standard-atmosphere', [], /temperature/],
  ['jet-change', ['density now=1.1 kg/m³', 'numbering=bore'], /nearest jet: \d+/],
  ['gap-change', ['slope=0.02 mm'], /timing moves earlier by: /],
];

const onTern: readonly OnMachine[] = [
  ['displacement', [], /displacement: 349\.9 cc/],
  ['clearance-volume', [], /clearance volume: 28\.22 cc/],
  ['cranking-pressure', [], /gauge pressure: 137 to 188 psi/],
  ['crank-angle', [], /before top dead centre: 39\.34°/],
  ['piston-position', [], /piston below the top: 8\.590 mm/],
  ['road-speed', ['in-gear=4'], /15\.31 to 15\.94 mph/],
  ['rolling-circumference', [], /rolling circumference: 1962 to 2042 mm/],
  ['chain-wear', [], /left to the maker’s limit: 0\.13 in[^]*verdict: inside the maker’s limit/],
  ['bore-wear', ['at=left'], /out-of-round: 0\.0005 in/],
  ['next-oversize', ['at=left'], /oversize: 0\.010 in/],
  ['thread-geometry', ['fastener=cylinder-base-nut'], /major diameter: 7\.938 mm/],
  ['cover-torque', ['fastener=primary-cover-screw'], /what governs: bolt/],
  ['torque-slip', ['fastener=magneto-nut'], /nothing to say/],
  ['wrench-range', ['fastener=cylinder-head-nut'], /wrench/],
  ['limit-verdict', ['item=front-brake-lining', 'at=leading'], /verdict: worn, usable/],
];

describe.each([
  ['the demo machine', pipit, onPipit],
  ['the four-stroke in inch threads', tern, onTern],
] as const)('on %s', (_, folder, asked) => {
  test.each(asked)('%s %j', async (id, words, answer) => {
    const { code, out, err } = await work(id, words, folder);
    expect(code, out + err).toBe(0);
    expect(out.replaceAll('\u00a0', ' ')).toMatch(answer);
    const taken = out.split('\n').filter((line) => /^ {2}[\w -]+ = .* · /.test(line));
    expect(out).toContain('taken from the machine');
    expect(taken.length).toBeGreaterThan(0);
  });
});

describe('what is asked for wrongly', () => {
  test('a value in the wrong unit says what to write', async () => {
    const { code, err } = await work('displacement', ['bore=2 bar', 'stroke=44.5 mm', 'cylinders=2']);
    expect(code).toBe(1);
    expect(err).toContain('calculation-value-wrong: bore');
    expect(err).toContain("write 'bore=50 mm'");
  });
  test('a value that the machine does not say is asked for', async () => {
    const { code, err } = await work('oil-in-fuel', [], pipit);
    expect([code, err.includes('the machine does not say it')]).toEqual([1, true]);
  });
  test('an unknown fastener is answered with the nearest ids', async () => {
    const { code, err } = await work('thread-geometry', ['fastener=cylinder-hed-nut'], pipit);
    expect(code).toBe(2);
    expect(err).toMatch(/one of cylinder-head-nut, /);
  });
  test('a choice without a machine, a word without = and an unknown value end with 2', async () => {
    const ends = await Promise.all([
      work('thread-geometry', ['fastener=cylinder-head-nut']),
      work('displacement', ['fifty']),
      work('displacement', ['bord=50 mm']),
    ]);
    expect(ends.map((one) => one.code)).toEqual([2, 2, 2]);
  });
  test('a folder that is no machine ends with 1', async () => {
    const empty = mkdtempSync(join(tmpdir(), 'splitpin-empty-'));
    const { code } = await work('displacement', [], empty);
    rmSync(empty, { recursive: true });
    expect(code).toBe(1);
  });
});

test('what is taken belongs to inputs that exist', () => {
  const inputs = new Set(
    calculations.flatMap((one) => Object.keys(one.inputs).flatMap((name) => [name, one.id + '/' + name])),
  );
  expect(takenInputs.filter((name) => !inputs.has(name))).toEqual([]);
});

describe('as a process', () => {
  test('help, list and a calculation on a machine; control characters are never raw', async () => {
    const program = await compiled();
    const name = 'bell \u0007 and escape \u001b[31m';
    const machine = smallMachine(small);
    const help = await runProgram(program, ['work', '--help'], { folder: tmpdir() });
    expect([help.code, help.out.includes('Examples'), help.out.includes('Exit codes')]).toEqual([0, true, true]);
    const worked = await runProgram(program, ['work', 'displacement', '--in', machine], { folder: tmpdir() });
    expect([worked.code, /98\.2\scc/u.test(worked.out)], worked.out + worked.err).toEqual([0, true]);
    const odd = await runProgram(program, ['work', 'thread-geometry', 'thread=' + name], { folder: tmpdir() });
    for (const raw of ['\u0007', '\u001b']) expect(odd.out + odd.err).not.toContain(raw);
    expect(odd.out + odd.err).toContain(String.raw`\u{7}`);
  });
  test('a record with a mistake is not taken from, and that is said', async () => {
    const program = await compiled();
    const machine = smallMachine(small);
    writeFileSync(join(machine, 'jobs', '2024-05-02-odd.md'), '---\ntitle: Odd\ndate: never\n---\n');
    const { code, out, err } = await runProgram(program, ['work', 'displacement', '--in', machine], {
      folder: tmpdir(),
    });
    expect([code, /98\.2\scc/u.test(out)]).toEqual([0, true]);
    expect(err).toContain('in the records');
  });
});
