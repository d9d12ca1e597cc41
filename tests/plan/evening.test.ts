// What can be done this evening: what fits, what stands in the way and why, what would free most; and the limits of knowing.
import { describe, expect, test } from 'vitest';
import { eveningOf, type Evening } from '../../src/book/plan/evening.ts';
import { eveningData, eveningLines } from '../../src/book/plan/evening-lines.ts';
import { notOnText } from '../../src/book/not-on-it.ts';
import { oddMinutes } from '../../src/book/plan/odd-minutes.ts';
import { obstacleText } from '../../src/book/plan/plan-text.ts';
import { evening, machineFile } from '../evenings/evening.ts';
import { wagtailBook } from '../evenings/wagtail-book.ts';

const alone = { minutes: 90, helper: false } as const;
const planned = (lines: string): string => `state: planned\n${lines}`;

function ask(jobs: Readonly<Record<string, string>>, asked: Evening['asked'] = alone): Evening {
  return eveningOf(evening('2026-05-20', jobs, { maker: wagtailBook() }).book, asked);
}
const ids = (jobs: readonly { readonly job: { readonly id: string } }[]): readonly string[] =>
  jobs.map(({ job }) => job.id);
function because(one: Evening, id: string): readonly string[] {
  const found = one.notTonight.find(({ planned: { job } }) => job.id === id);
  return (found?.because ?? []).map((each) => obstacleText(each).replaceAll('\u00a0', ' '));
}

describe('ninety minutes, alone', () => {
  test('what is ready and fits is named, and the minutes that are left', () => {
    const one = ask({ '2026-05-21-seat': planned('takes: 50 min'), '2026-05-22-lever': planned('takes: 30 min') });
    expect(ids(one.tonight)).toEqual(['2026-05-21-seat', '2026-05-22-lever']);
    expect(one.left).toBe(10);
  });
  test('what does not fit beside the others says so, and takes an evening of its own', () => {
    const one = ask({ '2026-05-21-seat': planned('takes: 50 min'), '2026-05-22-lever': planned('takes: 60 min') });
    expect(ids(one.tonight)).toEqual(['2026-05-21-seat']);
    expect(because(one, '2026-05-22-lever')).toEqual(['takes about 1 h']);
  });
  test('a time that nobody has said stays unknown, and is asked for', () => {
    const one = ask({ '2026-05-21-seat': planned('for: comfort') });
    expect(ids(one.timeNotKnown)).toEqual(['2026-05-21-seat']);
    expect(one.tonight).toEqual([]);
    expect(one.unlock[0]?.obstacles).toEqual([{ kind: 'time' }]);
  });
  test('parts that are not here hold a job up; one bought only if need be does not', () => {
    const jobs = {
      '2026-05-21-cable': planned('takes: 30 min\nparts: [{part: clutch cable, state: ordered, promised: 2026-05-25}]'),
      '2026-05-22-tap': planned('takes: 30 min\nparts: [{part: tap washer, state: wanted, only if: it drips}]'),
    };
    const one = ask(jobs);
    expect(ids(one.tonight)).toEqual(['2026-05-22-tap']);
    expect(because(one, '2026-05-21-cable')).toEqual(['not here: clutch cable (ordered, promised for 2026-05-25)']);
    expect(ids(ask({ ...jobs, '2026-05-19-came': 'parts: [{part: tap, state: here}]' }).tonight)).toHaveLength(1);
  });
  test('a part that came in another record is here', () => {
    const one = ask({
      '2026-05-10-plan': planned('takes: 30 min\nparts: [{part: clutch cable, state: ordered}]'),
      '2026-05-19-post': 'parts: [{part: clutch cable, from: a shop, state: here}]',
    });
    expect(ids(one.tonight)).toEqual(['2026-05-10-plan']);
  });
  test('a second person is needed where the record, its procedure or its hands say so', () => {
    const jobs = {
      '2026-05-21-lift': planned('takes: 30 min\nhelper: yes'),
      '2026-05-22-two': planned('takes: 30 min\nhands: [owner, helper]'),
      '2026-05-23-no': planned('takes: 30 min\nhands: [owner, helper]\nhelper: no'),
    };
    expect(ids(ask(jobs).tonight)).toEqual(['2026-05-23-no']);
    expect(ids(ask(jobs, { ...alone, helper: true }).tonight)).toHaveLength(3);
    expect(ask(jobs).unlock[0]).toMatchObject({
      obstacles: [{ kind: 'helper' }],
      frees: [{ id: '2026-05-21-lift' }, { id: '2026-05-22-two' }],
    });
  });
  test('one that waits for another comes after it, the same evening where both fit', () => {
    const jobs = {
      '2026-05-21-b': planned('takes: 30 min\nafter: [2026-05-22-a]'),
      '2026-05-22-a': planned('takes: 30 min'),
    };
    expect(ids(ask(jobs).tonight)).toEqual(['2026-05-22-a', '2026-05-21-b']);
    const short = ask(jobs, { minutes: 40, helper: false });
    expect(ids(short.tonight)).toEqual(['2026-05-22-a']);
  });
  test('the hard order holds a job back: the timing waits for the gap', () => {
    const timing = { '2026-05-21-timing': planned('takes: 30 min\nreadings: [{item: ignition-timing}]') };
    expect(because(ask(timing), '2026-05-21-timing')).toEqual([
      'first: Points gap set (in no job yet): the gap moves the timing',
    ]);
    const gap = { '2026-05-22-gap': planned('takes: 20 min\nreadings: [{item: points-gap}]') };
    expect(ids(ask({ ...timing, ...gap }).tonight)).toEqual(['2026-05-22-gap', '2026-05-21-timing']);
  });
  test('a first start is held by its hold point, and what is away or waited for is named', () => {
    const one = ask({
      '2026-05-01-sent': 'work: [{sent out: barrel, to: the reborer, promised: 2026-06-01}]',
      '2026-05-21-on': planned('takes: 60 min\ncontinues: 2026-05-01-sent'),
      '2026-05-22-start': planned('kind: first start\ntakes: 30 min'),
      '2026-05-23-wait': 'state: waiting for dry weather\ntakes: 30 min',
    });
    expect(because(one, '2026-05-21-on')).toEqual(['barrel still away at the reborer, promised for 2026-06-01']);
    expect(because(one, '2026-05-22-start').some((text) => text.startsWith('held: Before the first live kick'))).toBe(
      true,
    );
    expect(because(one, '2026-05-23-wait')).toEqual(['waits for dry weather']);
  });
});

describe('with the head off', () => {
  const maker = { maker: wagtailBook() };
  const off = { '2026-05-01-strip': 'work: [{removed: cylinder head}]' };
  const reading = {
    '2026-05-21-reading': planned('takes: 20 min\nreadings: [{item: compression}]\nchecks: [turned-by-hand]'),
  };
  test('a compression reading is put off until it is back on, and let in after the job that puts it back', () => {
    const first =
      'first: cylinder head back on (off since 2026-05-01; in no job yet), for: Compression read, engine assembled';
    expect(because(ask({ ...off, ...reading }), '2026-05-21-reading')).toContain(first);
    const freed = ask({ ...off, ...reading }).unlock.flatMap(({ obstacles }) => obstacles);
    expect(freed.map(({ kind }) => kind)).toContain('not on');
    expect(because(ask(reading), '2026-05-21-reading').some((text) => text.includes('back on'))).toBe(false);
    const on = { '2026-05-22-on': planned('takes: 30 min\nwork: [{refitted: cylinder head}]') };
    const both = ask({ ...off, ...reading, ...on });
    expect(because(both, '2026-05-21-reading').some((text) => text.includes('back on'))).toBe(false);
    expect(both.plan.jobs.map(({ job }) => job.id)).toEqual(['2026-05-22-on', '2026-05-21-reading']);
  });
  test('a strip that has begun is not held up by a reading that is gone', () => {
    const strip = { '2026-05-22-strip': planned('takes: 60 min\nprocedures: [top-end-strip-two-stroke]') };
    expect(because(ask(strip), '2026-05-22-strip').some((text) => text.includes('Compression read'))).toBe(true);
    expect(because(ask({ ...off, ...strip }), '2026-05-22-strip')).toEqual([]);
  });
  test('odd minutes name what is put off, with what is off, and offer it once that is on again', () => {
    const start = { '2026-05-22-start': planned('kind: first start\ntakes: 30 min') };
    const carb = { '2026-05-02-carb': 'work: [{removed: carburettor}]' };
    const { firstSteps, putOff } = oddMinutes(evening('2026-05-20', { ...carb, ...start }, maker).book);
    expect(firstSteps.map(({ step }) => step.id)).not.toContain('float-valve-tested');
    expect(putOff.map(({ id, line }) => `${id}: ${notOnText(line)}`)).toEqual([
      'float-valve-tested: carburettor off since 2026-05-02',
    ]);
    const back = { '2026-05-03-carb': 'work: [{refitted: carburettor}]' };
    const now = oddMinutes(evening('2026-05-20', { ...carb, ...back, ...start }, maker).book);
    expect(now.putOff).toEqual([]);
    expect(now.firstSteps.map(({ step }) => step.id)).toContain('float-valve-tested');
  });
  test('a step that waits says in the plan what has to be on before it', () => {
    const start = { '2026-05-22-start': planned('kind: first start\ntakes: 30 min') };
    const one = ask({ '2026-05-02-carb': 'work: [{removed: carburettor}]', ...start });
    expect(because(one, '2026-05-22-start')).toContain(
      'first: Float valve tested for leaks (in no job yet; first back on: carburettor): a leaking float valve floods the crankcase, and burns',
    );
  });
});

describe('how long it takes', () => {
  test('is as the last record took it, before any estimate', () => {
    const wheel = planned('procedures: [wheel-rear-out]');
    const before = ask({ '2026-05-21-wheel': wheel });
    expect(before.plan.jobs[0]?.estimate).toEqual({ minutes: 60, from: 'a plain estimate' });
    const after = ask({
      '2026-05-01-wheel': 'time: 1 h 20 min\nprocedures: [wheel-rear-out]',
      '2026-05-21-wheel': wheel,
    });
    expect(after.plan.jobs[0]?.estimate).toEqual({ minutes: 80, from: 'as it took before' });
  });
});

describe('what would free most', () => {
  test('is the order that frees two jobs, before the one that frees one', () => {
    const one = ask({
      '2026-05-21-a': planned('takes: 10 min\nparts: [{part: bulb, from: the shop, state: wanted}]'),
      '2026-05-22-b': planned('takes: 10 min\nparts: [{part: cable, from: the shop, state: wanted}]'),
      '2026-05-23-c': planned('takes: 10 min\nparts: [{part: seal, from: another, state: wanted}]'),
    });
    expect(one.unlock.map(({ supplier, frees }) => [supplier, frees.length])).toEqual([
      ['the shop', 2],
      ['another', 1],
    ]);
  });
});

describe('jobs in a ring', () => {
  test('by their own words are a problem with its place', () => {
    const made = evening('2026-05-20', {
      '2026-05-21-a': planned('after: [2026-05-22-b]'),
      '2026-05-22-b': planned('after: [2026-05-21-a]'),
    });
    const found = made.problems.find(({ code }) => code === 'order-in-a-ring');
    expect(found?.at).toEqual({ file: 'jobs/2026-05-22-b.md', path: ['after', 0] });
    expect(found?.message).toBe('2026-05-22-b → 2026-05-21-a → 2026-05-22-b: it would have to come before itself.');
    expect(evening('2026-05-20', { '2026-05-21-a': planned('after: [2026-05-21-a]') }).codes).toContain(
      'order-in-a-ring',
    );
    expect(evening('2026-05-20', { '2026-05-21-a': planned('after: [nobody]') }).codes).toContain('reference-unknown');
  });
  test('by their steps are done in two goes, and none is lost', () => {
    const one = ask({
      '2026-05-21-x': planned('takes: 5 min\nreadings: [{item: points-gap}]\nchecks: [turned-by-hand]'),
      '2026-05-22-y': planned('takes: 5 min\nreadings: [{item: ignition-timing}]\nchecks: [bores-oiled]'),
    });
    expect(one.plan.jobs).toHaveLength(2);
    expect(one.plan.inTwoGoes.map(({ id }) => id)).toEqual(['2026-05-21-x', '2026-05-22-y']);
    expect(one.tonight).toEqual([]);
  });
});

test('the lines and the data say the same, and never a verdict', () => {
  const { book } = evening(
    '2026-05-20',
    { '2026-05-21-seat': planned('takes: 50 min') },
    { machine: machineFile(), maker: wagtailBook() },
  );
  const text = eveningLines(book, alone).join('\n').replaceAll('\u00a0', ' ');
  expect(text).toContain(
    'In 1 h 30 min, alone:\n  2026-05-21-seat (2026-05-21-seat)\n    about 50 min, as you reckoned',
  );
  expect(eveningData(book, alone)).toMatchObject({
    tonight: [{ job: '2026-05-21-seat', minutes: 50 }],
    minutesLeft: 40,
  });
  expect(text).not.toMatch(/\b(?:safe|legal)\b/iu);
});
