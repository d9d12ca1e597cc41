// `splitpin next`: plain, with stable ids; what is held is named; what was not understood gets the nearest names.
import { expect, test } from 'vitest';
import { askNext, listNext } from '../../src/book/faults/ask-next.ts';
import { nextCommand } from '../../src/command/next-command.ts';
import type { NextOptions } from '../../src/command/describe-next.ts';
import { evening, machineFile } from '../evenings/evening.ts';
import { machineFor, twoStroke } from './cards.ts';

const asked = { looked: true, working: false, standing: 'long stored' } as const;

async function run(folder: string, options: NextOptions) {
  const said: string[] = [];
  const told: string[] = [];
  const terminal = {
    say: (line: string) => void said.push(line),
    tell: (line: string) => void told.push(line),
  };
  const around = {
    terminal: { ...terminal, width: 100, colour: false, progress: () => undefined },
    folder: process.cwd(),
    clock: () => new Date('2026-11-14T12:00:00Z'),
  };
  const code = await nextCommand(folder, { today: '2026-11-14', ...options }, around);
  return { code, said: said.join('\n'), told: told.join('\n') };
}

test.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])('works on %s', async (folder) => {
  const { code, said } = await run(folder, { saw: ['spark=none'], json: true });
  expect(code).toBe(0);
  const data: unknown = JSON.parse(said);
  expect(data).toMatchObject({ seen: expect.arrayContaining([expect.objectContaining({ saw: 'spark=none' })]) });
  expect(Object.keys(Object(data))).toEqual(
    expect.arrayContaining(['machine', 'standing', 'groups', 'looks', 'next', 'held', 'impossible', 'weights']),
  );
  const lines = await run(folder, { saw: ['spark=none'], working: true });
  expect(lines.said).toContain('All weights are judgement');
  expect(lines.said).not.toMatch(/\d ?%|NaN|undefined/u);
});

test('names are understood by id, mark, and another name, and the order changes nothing', () => {
  const book = machineFor(twoStroke);
  const one = askNext(book, { ...asked, saw: ['thumb=strong', 'spark=none'] });
  const other = askNext(book, { ...asked, saw: ['T06=nothing', 'T04=good'] });
  expect(JSON.stringify(other.data['groups'])).toBe(JSON.stringify(one.data['groups']));
  expect(JSON.stringify(other.data['next'])).toBe(JSON.stringify(one.data['next']));
});

test('what is not understood is refused with the nearest names, and nothing is ranked', async () => {
  const { code, told, said } = await run('demo-bike', { saw: ['sparc=none', 'plug=purple', 'spark'] });
  expect(code).toBe(2);
  expect(told).toContain('“sparc”');
  expect(told).toContain('spark');
  expect(told).toContain('wet-fuel');
  expect(said).toBe('');
});

test('an impossible set is said to be so', async () => {
  const { code, said } = await run('demo-bike', { saw: ['plug=dry', 'plug=wet'] });
  expect(code).toBe(1);
  expect(said).toContain('These cannot all be so');
  const pair = await run('demo-bike', { saw: ['spark=fat', 'lead-end=none'], json: true });
  expect(pair.code).toBe(1);
  expect(JSON.parse(pair.said)).toMatchObject({
    next: [],
    impossible: [[{ saw: 'lead-end=none' }, { saw: 'spark=fat' }]],
  });
});

test('a test whose hold point is held is not offered, and named with what holds it', () => {
  const book = machineFor(twoStroke, true);
  const { data, lines } = askNext(book, { ...asked, saw: ['spark=fat', 'plug=dry'] });
  expect(ids(data['next'])).not.toContain('prime');
  expect(ids(data['held'])).toContain('prime');
  expect(ids(data['next'])).toContain('fuel-flow');
  expect(lines.join('\n')).toMatch(/Before the first live kick is held, so these wait: .*\[prime\]/u);
});

test('a test that needs a thing fitted which is off is put off with what is off, until it is back on', () => {
  const off = { '2026-11-02-strip': 'work: [{removed: cylinder head, bag: 6}]' };
  const on = { '2026-11-03-on': 'work: [{refitted: cylinder head, from bag: 6}]' };
  const machine = { machine: machineFile({}, twoStroke) };
  const ask = (jobs: Readonly<Record<string, string>>) =>
    askNext(evening('2026-11-14', jobs, machine).book, { ...asked, saw: ['spark=fat', 'plug=dry'] });
  const { data, lines } = ask(off);
  const offered = [...ids(data['looks']), ...ids(data['next']), ...ids(data['held'])];
  const needs = ['compression', 'thumb', 'prime', 'pressure-test'];
  expect(needs.filter((id) => offered.includes(id))).toEqual([]);
  expect(offered).toContain('fuel-flow');
  expect(ids(data['apart'])).toEqual(expect.arrayContaining(needs));
  expect(lines.join('\n')).toMatch(/Put off[^\n]*\n {2}cylinder head off since 2026-11-02: .*\[compression\]/u);
  const back = ask({ ...off, ...on });
  expect(ids(back.data['apart'])).toEqual([]);
  expect(back.lines.join('\n')).not.toContain('Put off');
});

test('with the head off already, what is under it is a look and not a strip', () => {
  const jobs = { '2026-11-02-strip': 'work: [{removed: cylinder head, bag: 6}]' };
  const machine = { machine: machineFile({}, twoStroke) };
  const saw = { ...asked, saw: ['thumb=weak'] };
  const look = (given: Readonly<Record<string, string>>) =>
    askNext(evening('2026-11-14', given, machine).book, saw).lines.filter((line) => line.includes('[head-off]'));
  expect(look(jobs)).toEqual([
    expect.stringContaining('The head is off: bore, crown, rings, valves and gasket looked at'),
  ]);
  expect(look(jobs).join()).toContain('10 min');
  expect(look({}).join()).not.toContain('The head is off');
});

test('a magneto on the bench puts off the tests of its spark, and the timing', () => {
  const machine = { machine: machineFile({}, { ...twoStroke, magneto: 'separate' }) };
  const { book } = evening('2026-11-14', { '2026-11-02-magneto': 'work: [{removed: magneto, bag: 1}]' }, machine);
  const { data } = askNext(book, { ...asked, saw: ['prime=no-fire'] });
  expect(ids(data['apart'])).toEqual(expect.arrayContaining(['spark', 'timing']));
});

test('a part that this machine calls otherwise is known by the fasteners that hold it', () => {
  const nuts = `splitpin: 1
source: {title: Rider’s handbook, edition: 1957}
fasteners:
  - {id: cylinder-head-nut, name: Head nuts, of: top casting, count: 4}
`;
  const given = { machine: machineFile({}, twoStroke), maker: nuts };
  const apart = (work: string) => {
    const { book } = evening('2026-11-14', { '2026-11-02-strip': `work: [${work}]` }, given);
    return ids(askNext(book, { ...asked, saw: ['spark=fat', 'plug=dry'] }).data['apart']);
  };
  expect(apart('{removed: top casting}')).toContain('compression');
  expect(apart('{removed: the lid, fasteners: {cylinder-head-nut: 4}}')).toContain('compression');
  expect(apart('{removed: the lid, fasteners: {cylinder-head-nut: 1}}')).toEqual([]);
  expect(apart('{removed: the lid}')).toEqual([]);
});

test('what lies behind an engine that runs holds no test, and is told to be looked at first', () => {
  const book = machineFor(twoStroke, true);
  const { data, lines } = askNext(book, { ...asked, saw: ['choke=better'] });
  expect(ids(data['next'])).toContain('air-leak');
  expect(data['behind']).toContainEqual(expect.objectContaining({ point: 'Before the first live kick' }));
  expect(lines.join('\n')).toContain('Before the first live kick: the engine is past it by what was seen');
});

function ids(of: unknown): readonly unknown[] {
  return Array.isArray(of) ? of.map((one) => Object(one)['id']) : [];
}

test('the list names every outcome once with its words', () => {
  const { lines, data } = listNext(machineFor(twoStroke));
  const refs = lines.flatMap((line) => /^ {6}([a-z-]+=[a-z-]+) {2}\S/u.exec(line)?.[1] ?? []);
  expect(new Set(refs).size).toBe(refs.length);
  expect(refs).toContain('spark=none');
  expect(JSON.stringify(data)).toContain('cut-out-wire');
});

test('asks what a test showed when only its name was written', async () => {
  const { code, told } = await run('demo-bike', { saw: ['spark'] });
  expect([code, told.split('\n')[0]]).toEqual([2, expect.stringContaining('What did “spark” show?')]);
});
