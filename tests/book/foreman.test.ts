// What an experienced reader would challenge on the paper: for each of 27 things the codes that say it. Each code's smallest records, raising it and not,
// stand in queries.test.ts and on the manual's pages; this list holds that none is forgotten.
import { expect, it, test } from 'vitest';
import { codes } from '../../src/problem/codes.ts';
import { evening } from '../evenings/evening.ts';
import { problemEntries } from '../manual/problem-examples.ts';

const challenges: Readonly<Record<string, readonly (keyof typeof codes)[]>> = {
  '1 a reading without unit, condition or date': ['unit-missing', 'reading-without-condition', 'key-missing'],
  '2 a limit without source': ['key-missing', 'limit-without-page'],
  '3 past its limit, and no reason': ['left-past-its-limit'],
  '4 wear that goes backwards': ['wear-backwards', 'better-than-new'],
  '5 odometer back, or a day too far': ['odometer-went-back', 'too-far-in-a-day'],
  '6 a unit slip': ['unit-slip', 'torque-unit-slip'],
  '7 timing before the gap': ['setting-older-than-its-mover'],
  '8 compression before tappets': ['compression-before-tappets'],
  '9 head torque hot, or not again after heat': ['head-torque-hot', 'no-re-torque-after-heat'],
  '10 ridden while held': ['ridden-while-held'],
  '11 safety work with no check': ['safety-work-unchecked', 'not-tightened-again'],
  '12 a part from nowhere, or on two machines': ['part-from-nowhere', 'part-on-two-machines'],
  '13 a bag half emptied': ['bag-half-emptied', 'fasteners-left-over'],
  '14 removed, not on, and closed': ['done-with-things-open'],
  '15 a frame number one slip apart': ['number-differs'],
  '16 a mixture written two ways': ['mixture-written-two-ways'],
  '17 the wrong label': ['label-against-oiling', 'petrol-without-oil'],
  '18 a service with no reading': ['service-without-reading'],
  '19 oil with no quantity or grade': ['oil-without-quantity-or-grade'],
  '20 a tyre code of three digits': ['tyre-code-of-three-digits'],
  '21 cold against hot': ['reading-in-other-condition'],
  '22 a value for another model or year': ['data-for-other-frames'],
  '23 a general table on a joint that carries': ['torque-from-general-table', 'duty-against-its-name'],
  '24 an advisory never answered': ['finding-never-answered', 'finding-past-its-day'],
  '25 money counted and not there': ['part-counted-twice', 'returned-still-counted', 'deposit-not-back'],
  '26 a copy with a name, an address or a key number in it': ['private-in-open-text'],
  '27 signed, then changed': ['changed-after-signing', 'signed-before-its-work'],
};

it('names a code for each', () => {
  const numbers = Object.keys(challenges).map((one) => Number.parseInt(one, 10));
  expect(numbers).toEqual(Array.from({ length: 27 }, (_, index) => index + 1));
});

test.each(Object.entries(challenges))('%s', (_what, said) => {
  const entries = new Set(problemEntries().map((entry) => entry.code));
  for (const code of said) expect(entries.has(code), code).toBe(true);
});

it('asks what can hurt before what is only paper', () => {
  const made = evening('2026-06-01', {
    '2025-01-01-a': 'findings: [{id: a, saw: horn is dull}]',
    '2026-02-01-b': 'money: [{deposit: 20.00 GBP, for: old drum}]',
    '2026-03-01-c': 'kind: strip\nwork: [{removed: front brake cable}]',
    '2026-03-02-d': 'kind: ride\nride: {weather: dry}',
  });
  const order = made.book.queries.map((one) => one.code);
  const places = ['ridden-with-thing-open', 'finding-never-answered', 'deposit-not-back'].map((code) =>
    order.findIndex((one) => one === code),
  );
  expect(places).not.toContain(-1);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(made.page('problems.html')).toContain('front brake cable is off since 2026-03-01');
});

test('a signed record prints what to write beside the signature, and says when it was changed', () => {
  const signed = (print: string, body: string): string => `signed: {by: owner, date: 2026-05-01${print}}\nfor: ${body}`;
  const first = evening('2026-06-01', { '2026-05-01-a': signed('', 'chain') });
  const print = first.book.records.jobs[0]?.print ?? '';
  expect(first.page('jobs/2026-05-01-a.html')).toContain(`Print of this record: ${print}`);
  expect(evening('2026-06-01', { '2026-05-01-a': signed(`, print: ${print}`, 'chain') }).codes).not.toContain(
    'changed-after-signing',
  );
  const changed = evening('2026-06-01', { '2026-05-01-a': signed(`, print: ${print}`, 'chains') });
  expect(changed.codes).toContain('changed-after-signing');
});

test('a query that was answered rests until what it says changes', () => {
  const jobs = (miles: string, answers = ''): Readonly<Record<string, string>> => ({
    '2026-05-01-a': 'odometer: 1000 km',
    '2026-05-02-b': `odometer: ${miles}`,
    '2026-05-03-c': `kind: paperwork${answers}`,
  });
  const asked = evening('2026-06-01', jobs('3000 km')).page('problems.html');
  const print = /too-far-in-a-day, ([0-9a-z]{7})/u.exec(asked)?.[1] ?? '';
  const answer = `\nanswers: [{query: ${print}, by: owner, why: carried on a lorry with the wheel turning}]`;
  const rested = evening('2026-06-01', jobs('3000 km', answer));
  expect(rested.codes).not.toContain('too-far-in-a-day');
  expect(rested.page('problems.html')).toMatch(/Looked at, and let stand[^]*carried on a lorry[^]*owner/u);
  expect(evening('2026-06-01', jobs('3100 km', answer)).codes).toContain('too-far-in-a-day');
});
