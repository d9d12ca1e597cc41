// A new machine folder by a dozen questions: options, a file, lines; whole or not at all, and always one that passes check.
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stops } from '../../src/build.ts';
import type { Asker } from '../../src/command/asker.ts';
import { newFolder } from '../../src/command/intake/machine-folder.ts';
import { questions } from '../../src/command/intake/questions.ts';
import { putInPlace } from '../../src/command/intake/put-in-place.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { put } from '../command/small-machine.ts';
import { allAnswers, emptyFolder, intake } from './here.ts';

const machineText = (folder: string, name: string): string => readFileSync(join(folder, name, 'machine.yaml'), 'utf8');

function isGood(machine: string): void {
  const read = readMachine(machine, '2026-11-14', {});
  expect(stops(read.problems).map(({ code, at, message }) => [code, at.file, message])).toEqual([]);
  expect(read.binder?.book.plans.map((plan) => plan.job.id)).toEqual(['2026-11-14-intake']);
}

describe('intake', () => {
  test('asks for a dozen things, and makes a folder that passes check, with its sheets printed', async () => {
    const folder = emptyFolder();
    const { code, said } = await intake(folder, undefined, {}, allAnswers);
    expect(code).toBe(0);
    expect(readdirSync(folder).toSorted()).toEqual(['larkmoor-pipit-175', 'out']);
    expect(machineText(folder, 'larkmoor-pipit-175')).toBe(`# yaml-language-server: $schema=.schema/machine.json
splitpin: 1
name: Larkmoor Pipit 175
make: Larkmoor
model: Pipit 175
year: 1969
numbers:
  frame: {stamped: LP175-04417, known by: said at the intake}
  engine: {stamped: LE175-04390, known by: said at the intake}
features:
  stroke: two
  cylinders: 2
  lubrication: premix
  ignition: battery and coil
  trigger: points
  volts: 6 V
  battery: yes
  lamps: yes
  gearbox: unit
  front brake: drum
  rear brake: drum
  final drive: chain
  wheels: spoked
clock:
  - {id: clock, unit: mi, from: {date: 2026-11-14, reads: 7512 mi}}
units: imperial # or metric: what blanks and torques are printed in where the book gives none
paper: a4
currency: GBP
`);
    isGood(join(folder, 'larkmoor-pipit-175'));
    const printed = readdirSync(join(folder, 'out/larkmoor-pipit-175-print')).toSorted();
    expect(printed).toEqual(['intake.pdf', 'measuring-2026-11-14-intake.pdf']);
    expect(said).toContain(join('out', 'larkmoor-pipit-175-print', 'intake.pdf'));
    expect(existsSync(join(folder, 'larkmoor-pipit-175/.schema/machine.json'))).toBe(true);
    expect(statSync(join(folder, 'larkmoor-pipit-175')).mode & 0o055).toBe(0o055);
  });

  test('what is left for later stands as not known, is told, and everything for any kind is printed', async () => {
    const folder = emptyFolder();
    const { said } = await intake(folder, 'bike', { given: { make: 'Larkmoor', oil: '?', spark: 'magneto' } });
    const text = machineText(folder, 'bike');
    for (const key of ['model', 'year', 'lubrication', 'trigger', 'front brake', 'cylinders'])
      expect(text).toContain(`${key}: "?"`);
    expect(text).toContain('ignition: magneto');
    expect(text).not.toContain('clock:');
    expect(said).toContain('Engine oil: premix, pump, wet sump or dry sump');
    isGood(join(folder, 'bike'));
    const queries = readMachine(join(folder, 'bike'), '2026-11-14', {}).binder?.book.queries.map((one) => one.code);
    expect(queries).toContain('feature-not-known');
  });

  test('options go before a file of answers, and a file asks nothing', async () => {
    const folder = emptyFolder();
    put(folder, {
      'answers.yaml': '# mine\nname: The grey one\nmake: Other\noil: wet sump\nengine: four, single\nclock: none\n',
    });
    await intake(folder, undefined, { answers: 'answers.yaml', given: { make: 'Larkmoor', year: 'Not known' } }, [
      'never',
      'asked',
    ]);
    const text = machineText(folder, 'the-grey-one');
    expect(text).toContain('make: Larkmoor');
    expect(text).toContain('year: "?"');
    expect(text).toContain('stroke: four\n  cylinders: 1\n  lubrication: wet sump');
    expect(readFileSync(join(folder, 'the-grey-one/jobs/2026-11-14-intake.md'), 'utf8')).toContain('odometer: none');
    isGood(join(folder, 'the-grey-one'));
  });

  test('a folder or file that is there is never touched', async () => {
    const folder = emptyFolder();
    mkdirSync(join(folder, 'empty'));
    put(folder, { 'full/mine.txt': 'mine', file: 'mine' });
    for (const name of ['empty', 'full', 'file', 'full/mine.txt']) {
      const { code, said } = await intake(folder, name, {}, allAnswers);
      expect([name, code, said]).toEqual([name, 2, expect.stringContaining('it was not touched')]);
    }
    put(folder, { 'larkmoor-pipit-175/mine.txt': 'mine' });
    expect((await intake(folder, undefined, {}, allAnswers)).code).toBe(2);
    expect(readdirSync(folder).toSorted()).toEqual(['empty', 'file', 'full', 'larkmoor-pipit-175']);
  });

  test('a wrong answer makes nothing, and all wrong ones are told at once', async () => {
    const folder = emptyFolder();
    const given = {
      make: 'Larkmoor',
      oil: 'castor',
      brakes: 'drum',
      clock: '7512',
      electrics: '9 V',
      engine: 'two, many',
    };
    const { code, said } = await intake(folder, 'bike', { given });
    expect(code).toBe(2);
    for (const id of ['oil', 'brakes', 'clock', 'electrics', 'engine']) expect(said).toContain(`${id}: `);
    expect(readdirSync(folder)).toEqual([]);
    put(folder, { 'a.yaml': 'colour: red\n', 'b.yaml': '- make\n', 'c.yaml': 'make: [a, b]\n', 'd.yaml': 'make: {' });
    for (const answers of ['a.yaml', 'b.yaml', 'c.yaml', 'd.yaml', 'none.yaml'])
      expect([answers, (await intake(folder, 'bike', { answers })).code]).toEqual([answers, 2]);
    expect(existsSync(join(folder, 'bike'))).toBe(false);
  });

  test('at a terminal a wrong option is told before anything is asked', async () => {
    const folder = emptyFolder();
    const asked: string[] = [];
    const asker: Asker = {
      atTerminal: true,
      ask: async (question) => {
        asked.push(question);
        return Promise.resolve('');
      },
      interrupted: () => false,
      close: () => undefined,
    };
    const { code } = await intake(folder, 'bike', { given: { oil: 'castor' } }, asker);
    expect([code, asked, readdirSync(folder)]).toEqual([2, [], []]);
  });

  test('through a pipe a wrong answer is put by in its words, and all the others count', async () => {
    const folder = emptyFolder();
    const lines = [...allAnswers.slice(0, 5), '7512', 'two, twin', 'castor *R*', 'separate magneto, sparkles'];
    const rest = ['6 V, dynamo, positive earth, battery', 'drum', 'separate gearbox, chain, spokes', 'a4, GBP'];
    const { code, said } = await intake(folder, 'bike', {}, [...lines, ...rest]);
    expect(code).toBe(0);
    const text = machineText(folder, 'bike');
    const features = ['stroke: two', 'cylinders: 2', 'lubrication: "?"', 'ignition: magneto', 'magneto: separate'];
    for (const line of [...features, 'trigger: "?"', 'volts: 6 V', 'battery: yes', 'lamps: "?"', 'gearbox: separate'])
      expect(text).toContain(`  ${line}\n`);
    expect(text).not.toContain('clock:');
    const record = readFileSync(join(folder, 'bike/jobs/2026-11-14-intake.md'), 'utf8');
    expect(record.split('---\n').at(-1)?.trimEnd().split('\n')).toEqual([
      '* Said of the clock, and not understood: 7512',
      String.raw`* Said of the oil, and not understood: castor \*R\*`,
      '* Said of the spark, and not understood: separate magneto, sparkles',
      '* Said of the electrics: dynamo, positive earth',
      '* Said of the brakes, and not understood: drum',
    ]);
    expect(said).toContain('clock: 7512. “7512” has no unit');
    expect(said).toContain('“sparkles” is not understood here. For example: flywheel magneto, points.');
    expect(said).toContain('electrics: dynamo, positive earth\n');
    isGood(join(folder, 'bike'));
  });

  test('with nothing said at all, or after Ctrl+C, nothing is made', async () => {
    const folder = emptyFolder();
    expect((await intake(folder, 'bike', {})).code).toBe(2);
    const lines = ['Larkmoor', 'Pipit'];
    const stopped: Asker = {
      atTerminal: true,
      ask: async () => Promise.resolve(lines.shift()),
      interrupted: () => true,
      close: () => undefined,
    };
    expect((await intake(folder, 'bike', {}, stopped)).code).toBe(2);
    expect(readdirSync(folder)).toEqual([]);
  });

  test('at a terminal a wrong answer is asked again', async () => {
    const folder = emptyFolder();
    const lines = ['Larkmoor', '', '', '', '', '7512', '7512 km', ...Array.from({ length: 7 }, () => '')];
    const asked: string[] = [];
    const asker: Asker = {
      atTerminal: true,
      ask: async (question) => {
        asked.push(question);
        return Promise.resolve(lines.shift());
      },
      interrupted: () => false,
      close: () => undefined,
    };
    const { said } = await intake(folder, 'bike', {}, asker);
    expect(said).toContain('has no unit');
    expect(asked.length).toBe(questions.length + 1);
    expect(machineText(folder, 'bike')).toContain('reads: 7512 km');
  });
});

describe('answers', () => {
  const hear = (id: string, answer: string) => questions.find((question) => question.id === id)?.hear(answer);
  test('are understood as people write them', () => {
    const cases: readonly (readonly [string, string, Readonly<Record<string, string>>])[] = [
      ['engine', 'two-stroke twin', { stroke: 'two', cylinders: '2' }],
      ['engine', '4-stroke single', { stroke: 'four', cylinders: '1' }],
      ['engine', 'four strokes, 4 cylinders', { stroke: 'four', cylinders: '4' }],
      ['engine', 'two, 2', { stroke: 'two', cylinders: '2' }],
      ['engine', '3 cylinders', { cylinders: '3' }],
      ['oil', 'Premix', { lubrication: 'premix' }],
      ['oil', 'oil pump', { lubrication: 'pump' }],
      ['spark', 'coil, electronic', { ignition: 'battery and coil', trigger: 'electronic' }],
      ['spark', 'magneto with points', { ignition: 'magneto', trigger: 'points' }],
      ['electrics', '12V, no battery, lights', { volts: '12 V', battery: 'no', lamps: 'yes' }],
      ['electrics', 'none', { volts: 'none', battery: 'no', lamps: 'no' }],
      ['brakes', 'disc, drum', { 'front brake': 'disc', 'rear brake': 'drum' }],
      ['brakes', 'front disc and rear drum', { 'front brake': 'disc', 'rear brake': 'drum' }],
      ['brakes', 'drums both', { 'front brake': 'drum', 'rear brake': 'drum' }],
      ['oil', 'dry-sump', { lubrication: 'dry sump' }],
      ['oil', 'petroil', { lubrication: 'premix' }],
      ['spark', 'flywheel magneto, points', { ignition: 'magneto', magneto: 'flywheel', trigger: 'points' }],
      ['spark', 'separate magneto, contact breaker', { ignition: 'magneto', magneto: 'separate', trigger: 'points' }],
      ['spark', 'battery and coil ignition, points', { ignition: 'battery and coil', trigger: 'points' }],
      ['spark', 'flywheel magneto, CDI', { ignition: 'magneto', magneto: 'flywheel', trigger: 'electronic' }],
      [
        'drive',
        'separate gearbox, primary chain, rear chain, wire wheels',
        { gearbox: 'separate', 'final drive': 'chain', wheels: 'spoked' },
      ],
      ['drive', 'gearbox in unit, shaft, cast', { gearbox: 'unit', 'final drive': 'shaft', wheels: 'cast' }],
      ['print-on', 'letter, USD, imperial', { paper: 'letter', currency: 'USD', units: 'imperial' }],
      ['print-on', 'a4, GBP, N·m', { paper: 'a4', currency: 'GBP', units: 'metric' }],
      ['print-on', 'a5, GBP, lbf·ft', { paper: 'a5', currency: 'GBP', units: 'imperial' }],
      ['drive', 'shaft, cast wheels', { 'final drive': 'shaft', wheels: 'cast' }],
      ['spark', 'mag', { ignition: 'magneto' }],
      ['print-on', 'letter, USD', { paper: 'letter', currency: 'USD' }],
      ['print-on', 'half-letter', { paper: 'half-letter' }],
      ['print-on', 'eur', { currency: 'EUR' }],
    ];
    for (const [id, answer, facts] of cases) {
      expect([id, answer, hear(id, answer)]).toEqual([id, answer, { ok: true, facts }]);
    }
  });
  test('words that no key says are kept beside what was understood', () => {
    const cases: readonly (readonly [string, string, Readonly<Record<string, string>>, string])[] = [
      ['electrics', '6 V dynamo, battery, lamps', { volts: '6 V', battery: 'yes', lamps: 'yes' }, 'dynamo'],
      ['electrics', '12 V alternator, negative ground', { volts: '12 V' }, 'alternator, negative ground'],
      [
        'engine',
        '500 cc parallel twin, four stroke, overhead valves',
        { stroke: 'four', cylinders: '2' },
        '500 cc, parallel, overhead valves',
      ],
      ['engine', 'side-valve single, 4-stroke', { stroke: 'four', cylinders: '1' }, 'side-valve'],
      ['spark', 'magneto, points, manual advance', { ignition: 'magneto', trigger: 'points' }, 'manual advance'],
      [
        'brakes',
        'twin leading shoe drum, drum',
        { 'front brake': 'drum', 'rear brake': 'drum' },
        'twin leading shoe drum, drum',
      ],
      ['drive', 'four-speed separate gearbox, chain', { gearbox: 'separate', 'final drive': 'chain' }, 'four-speed'],
    ];
    for (const [id, answer, facts, words] of cases)
      expect([id, answer, hear(id, answer)]).toEqual([id, answer, { ok: true, facts, words }]);
  });
  test('that could mean something else are not', () => {
    for (const [id, answer] of [
      ['brakes', 'rear drum, front disc'],
      ['brakes', 'drum'],
      ['oil', 'wet'],
      ['engine', 'three-stroke'],
      ['clock', '12,480 mi'],
      ['clock', '40 kg'],
      ['electrics', '24 V'],
    ] as const)
      expect([id, answer, hear(id, answer)?.ok]).toEqual([id, answer, false]);
  });
  test('whatever words are given, the folder passes check and says the same words', () => {
    const words = fc
      .string({ minLength: 1, maxLength: 40, unit: 'grapheme' })
      .map((text) => text.normalize('NFC').trim());
    const usable = words.filter(
      (text) => text !== '' && !['?', 'none'].includes(text) && !/[\p{Cc}\p{Cs}\p{Co}\u2028\u2029\ufeff]/u.test(text),
    );
    fc.assert(
      fc.property(usable, usable, usable, (make, model, frame) => {
        const folder = emptyFolder();
        const made = newFolder({ make, model, frame }, '2026-11-14');
        put(folder, made.files);
        const read = readMachine(folder, '2026-11-14', { siteOnly: true });
        expect(stops(read.problems).map((problem) => problem.message)).toEqual([]);
        const machine = read.binder?.book.records.machine;
        expect([machine?.make, machine?.model, machine?.numbers[0]?.stamped]).toEqual([make, model, frame]);
      }),
      { numRuns: 25 },
    );
  });
});

describe('the new folder', () => {
  const files = { 'machine.yaml': 'a', 'jobs/b.md': 'b' };
  test('is whole or not there, whatever breaks off', async () => {
    const folder = emptyFolder();
    const place = join(folder, 'bike');
    const breaking = async (): Promise<boolean> => Promise.reject(new Error('the power went'));
    await expect(putInPlace(place, files, breaking)).rejects.toThrow('the power went');
    expect(await putInPlace(place, files, async () => Promise.resolve(false))).toBe(false);
    await expect(
      putInPlace(place, { ...files, 'jobs/b.md/c.md': 'c' }, async () => Promise.resolve(true)),
    ).rejects.toThrow();
    expect(readdirSync(folder)).toEqual([]);
    const meanwhile = async (): Promise<boolean> => {
      mkdirSync(place);
      writeFileSync(join(place, 'mine'), 'mine');
      return Promise.resolve(true);
    };
    expect(await putInPlace(place, files, meanwhile)).toBe(false);
    expect(readdirSync(place)).toEqual(['mine']);
    expect(readdirSync(folder)).toEqual(['bike']);
  });
});
