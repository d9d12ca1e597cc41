// Every kind of mistake in a record, at the program itself: it ends with 1, says the place and what to write, and the old binder stays.
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { compiled } from '../set-up/compiled.ts';
import { runProgram } from './process.ts';
import { put, small, smallMachine } from './small-machine.ts';

let program = '';
beforeAll(async () => {
  program = await compiled();
});

function withLines(...lines: readonly string[]): string {
  return ['---', 'title: X', 'date: 2024-05-01', 'kind: cleaning', 'state: done', ...lines, '---', 'Words.', ''].join(
    '\n',
  );
}

const cases: readonly (readonly [what: string, text: string, told: string])[] = [
  ['a bracket left open', withLines('next: [a'), 'jobs/x.md:6:7 yaml-broken'],
  ['a quote left open', withLines('next: "a', 'odometer: 1000 mi'), 'jobs/x.md:6:7 yaml-broken'],
  [
    'a number cut at its comma',
    withLines('readings: [{item: bore, found: {left: 2,5 bar}}]'),
    '“2,5 bar” is cut in two at its comma',
  ],
  [
    'thousands cut at their comma',
    withLines('readings: [{item: bore, found: {left: 2,000 mi}}]'),
    'write 2 000 mi or 2.000 mi, whichever is meant',
  ],
  ['a tab', withLines('findings:', '\t- {id: a, saw: oil}'), 'jobs/x.md:7:1 yaml-tab'],
  ['no front matter', 'Only words.\n', 'jobs/x.md:1:1 front-matter-missing'],
  ['front matter in a language that runs', '---js\nprocess.exit(0)\n---\n', 'jobs/x.md:1:1 front-matter-language'],
  ['a key twice', withLines('next: a', 'next: b'), 'jobs/x.md:7:1 yaml-key-twice'],
  ['an unknown key', withLines('odometr: 1000 mi'), 'jobs/x.md:6:1 key-unknown'],
  ['an anchor', withLines('next: &a words'), 'jobs/x.md:6:7 yaml-anchor'],
  ['an alias', withLines('next: &a words', 'start: *a'), 'jobs/x.md:7:8 yaml-alias'],
  ['a tag', withLines('next: !!binary AAAA'), 'jobs/x.md:6:7 yaml-tag'],
  ['a wrong unit', withLines('time: 3 bar'), 'jobs/x.md:6:7 unit-wrong'],
  ['no unit', withLines('time: 3'), 'jobs/x.md:6:7 unit-missing'],
  ['a day that is none', withLines().replace('2024-05-01', '2024-02-30'), 'jobs/x.md:3:7 date-unreadable'],
  ['an unknown name', withLines('procedures: [nothing-known]'), 'jobs/x.md:6:14 reference-unknown'],
  ['an odometer that goes back', withLines('odometer: 960 mi'), 'odometer-went-back'],
  ['a figure with two readings', withLines('odometer: 12,480 mi'), 'jobs/x.md:6:11 number-ambiguous'],
];

function stamp(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => statSync(join(folder, name)).isFile())
    .map(
      (name) =>
        `${name} ${String(statSync(join(folder, name)).ino)} ${String(readFileSync(join(folder, name)).length)}`,
    )
    .toSorted();
}

test('each is told with its place, exit 1, and the binder that was there stays', async () => {
  const machine = smallMachine();
  const folder = dirname(machine);
  const good = await runProgram(program, ['build', 'bike', '--site-only', '--today', '2024-06-01'], { folder });
  expect([good.code, good.err]).toEqual([0, '']);
  const before = stamp(join(folder, 'out'));
  for (const [what, text, told] of cases) {
    put(machine, { 'jobs/x.md': text });
    const built = await runProgram(program, ['build', 'bike', '--site-only', '--today', '2024-06-01'], { folder });
    const places = built.err.split('\n').filter((line) => line.startsWith('jobs/x.md'));
    expect.soft([what, built.code, built.err.includes(told) ? told : places]).toEqual([what, 1, told]);
    expect(stamp(join(folder, 'out'))).toEqual(before);
    expect(readFileSync(join(machine, 'jobs/x.md'), 'utf8')).toBe(text);
  }
});

test('all at once: three mistakes in three files are three reports', async () => {
  const machine = smallMachine({
    'jobs/x.md': withLines('odometr: 1000 mi'),
    'jobs/y.md': withLines('time: 3 bar'),
    'maker/book.yaml': (small['maker/book.yaml'] ?? '').replace('20 N·m', '20 ftlb·x'),
  });
  const { code, err } = await runProgram(program, ['check', 'bike', '--today', '2024-06-01'], {
    folder: dirname(machine),
  });
  expect(code).toBe(1);
  for (const told of ['jobs/x.md:6:1 key-unknown', 'jobs/y.md:6:7 unit-wrong', 'maker/book.yaml:4:', 'unit-unknown'])
    expect(err).toContain(told);
});
