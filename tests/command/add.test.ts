// `add` plans a job that is ready to print and ready to fill in, by options, by questions and by lines of a pipe.
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { addCommand, type AddOptions } from '../../src/command/add-command.ts';
import { fillCommand } from '../../src/command/fill-command.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { stops } from '../../src/build.ts';
import { machines } from '../entry/open-jobs.ts';
import { copyOf, listening, typing } from './typing.ts';

const finch = 'tests/fixtures/finch-125';

async function add(
  folder: string,
  procedures: readonly string[],
  options: AddOptions = {},
  lines: readonly string[] = [],
) {
  const heard = listening(folder);
  const before = new Set(readdirSync(join(folder, 'jobs')));
  const { asker, asked } = typing(lines);
  const code = await addCommand(folder, procedures, options, heard.around, asker);
  const fresh = readdirSync(join(folder, 'jobs')).filter((name) => !before.has(name));
  return {
    code,
    asked,
    fresh,
    ...heard,
    text: fresh.map((name) => readFileSync(join(folder, 'jobs', name), 'utf8')).join(''),
  };
}

describe.each(machines)('on %s', (machine) => {
  test('every procedure of the machine can be planned, printed and filled in', async () => {
    const folder = copyOf(machine);
    const list = (await add(folder, ['list'])).said.map((line) => line.split(' ')[0] ?? '');
    expect(list.length).toBeGreaterThan(8);
    for (const id of list) expect((await add(folder, [id], { date: '2026-12-05', name: `new-${id}` })).code).toBe(0);
    const read = readMachine(folder, '2026-11-28', {});
    const ours = stops(read.problems).filter(({ at }) => at.file.startsWith('jobs/new-'));
    expect(ours).toEqual([]);
    const measures = new Set(read.binder?.book.plans.flatMap(({ job, blanks }) => (blanks.length > 0 ? [job.id] : [])));
    const sheetsFor = (job: string) => read.binder?.sheets.filter((sheet) => sheet.job === job).length;
    // What measures nothing has no sheet to measure on.
    for (const id of list) expect([id, sheetsFor(`new-${id}`)]).toEqual([id, measures.has(`new-${id}`) ? 3 : 2]);
    expect(measures.size).toBeGreaterThan(0);
  });

  test('no bag number is promised twice', async () => {
    const folder = copyOf(machine);
    for (const name of ['one', 'two'])
      await add(folder, ['wheel-front-out', 'carburettor-clean'], { name: `new-${name}` });
    const plans = readMachine(folder, '2026-11-28', {}).binder?.book.plans.filter(({ job }) =>
      job.id.startsWith('new-'),
    );
    const [one, two] = plans ?? [];
    const bags = one?.procedures.flatMap(({ steps }) => steps).filter(({ bag }) => bag).length ?? 0;
    expect(bags).toBeGreaterThan(0);
    expect(two?.bagFrom).toBeGreaterThanOrEqual((one?.bagFrom ?? 0) + bags);
  });
});

test('the record has title, date, kind, readings, bags and its steps in the printed order', async () => {
  const { text, fresh, said } = await add(copyOf(finch), ['wheel-rear-out'], {
    date: '2026-12-05',
    for: 'wheel bearing rumbles',
    hands: 'owner, helper',
    reading: ['seat height'],
    part: ['wheel bearing'],
  });
  expect(fresh).toEqual(['2026-12-05-rear-wheel-out-and-back.md']);
  for (const line of [
    'title: Rear wheel out and back',
    'date: 2026-12-05',
    'kind: repair',
    'state: planned',
    'for: wheel bearing rumbles',
    'hands: [owner, helper]',
    'procedures: [wheel-rear-out]',
    '  - {item: chain-slack}',
    '  - {item: seat height}',
    '  - {part: wheel bearing, state: wanted}',
  ])
    expect(text.split('\n')).toContain(line);
  expect(text).toMatch(/^bags from: \d+$/mu);
  const steps = [...text.matchAll(/^# +(\d+) {2}/gmu)].map((found) => Number(found[1]));
  expect(steps).toEqual([1, 2, 3, 4, 5, 6, 1, 2, 3, 4, 5, 6, 7]);
  expect(said.join('\n')).toContain('splitpin print');
});

test('a title alone makes a job with room for what nobody foresaw', async () => {
  const folder = copyOf(finch);
  const { code, fresh } = await add(folder, [], { title: 'Seat: off & on #2', date: '2026-12-05' });
  expect([code, fresh]).toEqual([0, ['2026-12-05-seat-off-on-2.md']]);
  const heard = listening(folder);
  const lines = ['seat', 'rack; two bolts', '', '', '', '', 'q'];
  const { asker } = typing(lines);
  expect(await fillCommand(folder, 'seat', { today: '2026-12-05' }, heard.around, asker)).toBe(0);
  expect(readFileSync(join(folder, 'jobs', fresh[0] ?? ''), 'utf8')).toContain('{removed: seat}');
});

test('asks at a terminal: procedures by number, title, day', async () => {
  const { code, asked, text } = await add(copyOf(finch), [], {}, [
    '99',
    'wheel-rear-out',
    '',
    '5 December',
    '2026-12-05',
  ]);
  expect(code).toBe(0);
  expect(asked.length).toBe(5);
  expect(text).toContain('procedures: [wheel-rear-out]');
  expect(text).toContain('date: 2026-12-05');
});

test('a record that is there already is never touched', async () => {
  const folder = copyOf(finch);
  await add(folder, ['wheel-rear-out'], { name: 'mine' });
  const second = await add(folder, ['wheel-front-out'], { name: 'mine' });
  expect(second.fresh).toEqual(['mine-2.md']);
  writeFileSync(join(folder, 'jobs', 'odd.md'), 'not a record');
  const third = await add(folder, ['wheel-front-out'], { name: 'odd' });
  expect(readFileSync(join(folder, 'jobs', 'odd.md'), 'utf8')).toBe('not a record');
  expect(third.fresh).toEqual(['odd-2.md']);
});

test('what is wrong is told all at once, and nothing is made', async () => {
  const { code, fresh, told } = await add(copyOf(finch), ['wheel-reer-out', 'top-end-strip-two-stroke'], {
    date: 'soon',
    kind: 'fun',
  });
  expect([code, fresh]).toEqual([2, []]);
  expect(told.join('\n')).toMatch(/no procedure called “wheel-reer-out”\. The nearest: wheel-rear-out/u);
  expect(told.join('\n')).toContain('top-end-strip-two-stroke is not for this machine');
  expect(told.length).toBe(4);
});
