// An intake typed in: grades of a row at one key, numbers off the metal, the clock held against earlier readings at once.
import { mkdirSync, mkdtempSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { fillCommand, type FillOptions } from '../../src/command/fill-command.ts';
import { gradesSaid } from '../../src/command/fill/grade-words.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { listening, typing } from './typing.ts';

const job = '2026-11-25-intake';

/** A machine that nobody has looked at yet, with its planned intake. */
function freshMachine(more = ''): string {
  const folder = join(realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-intake-'))), 'bike');
  mkdirSync(join(folder, 'jobs'), { recursive: true });
  writeFileSync(
    join(folder, 'machine.yaml'),
    `splitpin: 1\nname: Weir\nmake: Hollin\nmodel: Weir 150\nyear: 1966\nnumbers:\n  frame: {stamped: HW150-2231, known by: read off the metal}\n  engine: {stamped: "?"}\nfeatures: {stroke: two, cylinders: 1, lubrication: premix, ignition: magneto, trigger: points, volts: 6 V, battery: no, lamps: yes, front brake: drum, rear brake: drum, final drive: chain, wheels: spoked}\nclock:\n  - {id: clock, unit: mi, from: {date: 2026-11-20, reads: 8204 mi}}\npaper: a4\ncurrency: GBP\n`,
  );
  writeFileSync(
    join(folder, 'jobs', `${job}.md`),
    `---\ntitle: Intake, as found # mine\ndate: 2026-11-25\nkind: intake\nstate: planned\nreadings:\n  - {item: front tread}\n${more}---\n`,
  );
  return folder;
}

async function fill(folder: string, answer: (question: string) => string | undefined, options: FillOptions = {}) {
  const heard = listening(folder);
  const { asker } = typing([]);
  const asked: string[] = [];
  const ask = async (question: string): Promise<string | undefined> => {
    asked.push(question.replaceAll('\u00a0', ' '));
    return Promise.resolve(answer(asked.at(-1) ?? ''));
  };
  const code = await fillCommand(folder, job, { today: '2026-11-25', ...options }, heard.around, { ...asker, ask });
  return { code, asked, ...heard, text: readFileSync(join(folder, 'jobs', `${job}.md`), 'utf8') };
}

test('a row with several ticks is one question, answered at one key, with a note into its own line', async () => {
  const folder = freshMachine();
  const answers: Readonly<Record<string, string>> = { Mirrors: '3; never had any', 'Seat, strap': 'harmed', Horn: '-' };
  const said = (question: string): string =>
    Object.entries(answers).find(([item]) => question.includes(item))?.[1] ?? '';
  const { code, asked, text } = await fill(folder, said);
  expect(code).toBe(0);
  expect(asked.filter((one) => one.includes('Mirrors'))).toEqual([
    expect.stringContaining('Mirrors (1 there, 2 harmed, 3 not): '),
  ]);
  expect(text).toContain('form/intake-completeness/mirrors/Not');
  expect(text).toContain('{at: form/intake-completeness/mirrors/words, says: never had any}');
  expect(text).toContain('form/intake-completeness/seat/Harmed');
  expect(text).not.toContain('- form/intake-completeness/horn\n');
  expect(text).toContain('title: Intake, as found # mine');
  const again = await fill(folder, () => '');
  expect(again.asked.filter((one) => /Mirrors|Seat, strap/u.test(one))).toEqual([]);
  expect(again.asked.some((one) => one.includes('Tank, cap'))).toBe(true);
});

test.each([
  ['2', [1], ''],
  ['not; gone', [2], 'gone'],
  ['1 2', [0, 1], ''],
  ['-', [], ''],
  ['; hangs loose', [], 'hangs loose'],
])('of there, harmed, not: %j', (said, places, note) => {
  expect(gradesSaid(said, ['There', 'Harmed', 'Not'])).toEqual({ kind: 'these', places, note });
});

test.each(['4', '0', 'x', 'perhaps'])('of there, harmed, not: %j is none', (said) => {
  expect(gradesSaid(said, ['There', 'Harmed', 'Not']).kind).toBe('unclear');
  expect(gradesSaid('s', ['Small', 'Stops']).kind).toBe('unclear');
});

test('a number off the metal is a reading, told at once where machine.yaml has another, asked about where it has none', async () => {
  const folder = freshMachine();
  const answers: Readonly<Record<string, string>> = {
    'Frame number, first': 'HW150-2237',
    'Engine number, first': 'W-4410',
    'Engine number, second': 'W-4410',
  };
  const said = (question: string): string =>
    Object.entries(answers).find(([item]) => question.startsWith(item))?.[1] ?? '';
  const { told, text } = await fill(folder, said);
  expect(told.join('\n')).toContain('machine.yaml has HW150-2231. Read the stamp again');
  expect(text).toContain('{item: frame number, found: HW150-2237}');
  expect(text).toContain('{item: engine number, found: W-4410, by: second reading}');
  const { problems } = readMachine(folder, '2026-11-25', {});
  expect(problems.map(({ code }) => code)).toEqual(expect.arrayContaining(['number-differs', 'number-read-otherwise']));
});

test('a clock that reads less than before is said at once, and kept when it is meant', async () => {
  const folder = freshMachine();
  let turn = 0;
  const said = (question: string): string => {
    if (question.includes('Enter keeps it')) return '8210';
    if (!question.startsWith('Clock reading')) return '';
    turn += 1;
    return '8100';
  };
  const { told, text } = await fill(folder, said);
  expect(turn).toBe(1);
  expect(told.join('\n')).toContain('Less than 8204 mi, which it read before');
  expect(text).toContain('odometer: 8210 mi');
});

test('a bare number in a box that no reading keeps has the unit beside it', async () => {
  const said = (question: string): string => (/fuel drained.*\(ml\)/u.test(question) ? '350; brown' : '');
  const { text } = await fill(freshMachine(), said);
  expect(text).toContain('{at: form/intake-fluids/fuel/value, says: 350 ml}');
});

test('what is not known is written so that every reader of YAML takes it', async () => {
  const { text } = await fill(freshMachine(), (question) => (question.startsWith('front tread') ? '?' : ''));
  expect(text).toContain('{item: front tread, found: "?"}');
});

describe('asked again', () => {
  const said =
    (answers: Readonly<Record<string, string>>) =>
    (question: string): string =>
      Object.entries(answers).find(([item]) => question.includes(item))?.[1] ?? '';
  const seat = 'form/intake-completeness/seat';

  test('another grade takes the place of the one that stands, and other words that of the words', async () => {
    const folder = freshMachine('ticks: [mine/step-1] # kept\n');
    const first = await fill(folder, said({ Mirrors: '3; never had any', 'Seat, strap': 'harmed' }));
    expect(first.text).toContain(`${seat}/Harmed`);
    const { asked, text } = await fill(folder, said({ 'Seat, strap': '1', Mirrors: '3; one in the shed' }), {
      again: true,
    });
    expect(asked.find((one) => one.includes('Seat, strap'))).toContain('now harmed');
    expect(text).not.toContain(`${seat}/Harmed`);
    expect(text.split(seat)).toHaveLength(2);
    expect(text).toContain('form/intake-completeness/mirrors/Not');
    expect(text).toContain('says: one in the shed');
    expect(text).not.toContain('never had any');
    expect(text).toContain('mine/step-1');
    expect(text).toContain('# kept');
    expect(readMachine(folder, '2026-11-25', {}).binder?.book.jobs.get(job)?.ticks).toContain(seat);
  });

  test('more than one grade, none of them, and one after none', async () => {
    const folder = freshMachine();
    await fill(folder, said({ 'Seat, strap': '1' }));
    const two = await fill(folder, said({ 'Seat, strap': '1 2' }), { again: true });
    expect(two.text.split(seat)).toHaveLength(3);
    const none = await fill(folder, said({ 'Seat, strap': '-' }), { again: true });
    expect(none.text.split(seat)).toHaveLength(2);
    expect(none.text).toContain(`{at: ${seat}, says: not done}`);
    const one = await fill(folder, said({ 'Seat, strap': '3' }), { again: true });
    expect(one.text).toContain(`${seat}/Not`);
    expect(one.text).not.toContain('not done');
  });

  test('words alone, or an answer without --again, take no tick back', async () => {
    const folder = freshMachine();
    const before = await fill(folder, said({ 'Seat, strap': '2' }));
    const words = await fill(folder, said({ 'Seat, strap': '; strap gone' }), { again: true });
    expect(words.text).toContain(`${seat}/Harmed`);
    expect(words.text).toContain('says: strap gone');
    const list = join(folder, 'answers.txt');
    writeFileSync(list, `${seat}: yes\n`);
    const beside = await fill(folder, () => '', { answers: list });
    expect(beside.text).toContain(`${seat}/Harmed`);
    expect(before.text).not.toBe(beside.text);
  });

  test('in a file of answers a tick that is cleared is taken back where its row has another', async () => {
    const folder = freshMachine();
    await fill(folder, said({ 'Seat, strap': '2' }));
    const list = join(folder, 'answers.txt');
    writeFileSync(list, `${seat}: yes\n${seat}/Harmed:\n`);
    const { text } = await fill(folder, () => '', { answers: list, again: true });
    expect(text).not.toContain(`${seat}/Harmed`);
    expect(text).toContain(seat);
  });
});
