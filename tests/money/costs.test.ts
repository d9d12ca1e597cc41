// Money: what is paid, ordered, agreed, wanted and shared; each amount once; what cannot be summed is named.
import { describe, expect, test } from 'vitest';
import { outlookOf } from '../../src/book/costs/outlook.ts';
import { formatMoney } from '../../src/quantity/money-arithmetic.ts';
import { evening, machineFile, type Evening } from '../evenings/evening.ts';

function made(
  jobs: Readonly<Record<string, string>>,
  machine: Readonly<Record<string, string>> = {},
  workshop?: string,
): Evening {
  return evening('2026-05-20', jobs, {
    machine: machineFile(machine),
    ...(workshop === undefined ? {} : { workshop }),
  });
}
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const total = (one: Evening): string => plain(formatMoney(one.book.costs.total));
const committed = (one: Evening): string => plain(formatMoney(one.book.costs.committed));

describe('each buy once', () => {
  test('ordered, come and fitted in three records, the price written each time', () => {
    const one = made({
      '2026-05-01-a': 'parts: [{part: chain, from: a shop, price: 31.00 GBP, state: ordered}]',
      '2026-05-05-b': 'parts: [{part: chain, price: 31.00 GBP, state: here}]',
      '2026-05-09-c': 'parts: [{part: chain, price: 31.00 GBP, state: fitted}]',
    });
    expect(total(one)).toBe('31.00 GBP');
    expect(committed(one)).toBe('0.00 GBP');
    expect(one.codes.filter((code) => code === 'part-counted-twice')).toHaveLength(2);
  });
  test('ordered at one price, come at another: what it came at counts, and the change is named', () => {
    const one = made({
      '2026-05-01-a': 'parts: [{part: chain, from: a shop, price: 31.00 GBP, state: ordered}]',
      '2026-05-09-b': 'parts: [{part: chain, price: 33.50 GBP, state: fitted}]',
    });
    expect([total(one), committed(one)]).toEqual(['33.50 GBP', '0.00 GBP']);
    expect(one.book.costs.leftOut.map(plain)).toEqual([
      'chain: ordered at 31.00 GBP in 2026-05-01-a, came at 33.50 GBP in 2026-05-09-b; what it came at is counted',
    ]);
  });
  test('one of two that were ordered came: the rest is still committed', () => {
    const order = 'parts: [{part: tyre, count: 2, from: a shop, price: 90.00 GBP, state: ordered}]';
    const came = 'parts: [{part: tyre, price: 46.00 GBP, state: here}]';
    const one = made({ '2026-05-01-a': order, '2026-05-05-b': came });
    expect([total(one), committed(one)]).toEqual(['90.00 GBP', '44.00 GBP']);
    const both = made({ '2026-05-01-a': order, '2026-05-05-b': came, '2026-05-06-c': came });
    expect([total(both), committed(both)]).toEqual(['92.00 GBP', '0.00 GBP']);
  });
  test('from another shop, or of another number, it is another buy', () => {
    const order = 'parts: [{part: chain, number: A1, from: a shop, price: 31.00 GBP, state: ordered}]';
    for (const other of ['from: another shop', 'number: B2'])
      expect(
        total(
          made({
            '2026-05-01-a': order,
            '2026-05-05-b': `parts: [{part: chain, ${other}, price: 9.00 GBP, state: here}]`,
          }),
        ),
      ).toBe('40.00 GBP');
  });
  test('the same part bought again a year later is another buy', () => {
    const one = made({
      '2025-05-01-a': 'parts: [{part: gearbox oil, from: a shop, price: 9.00 GBP, state: fitted}]',
      '2026-05-01-b': 'parts: [{part: gearbox oil, from: a shop, price: 9.00 GBP, state: fitted}]',
    });
    expect(total(one)).toBe('18.00 GBP');
  });
  test('what a planned job ordered is committed; what it wants is not spent', () => {
    const one = made({
      '2026-06-01-plan': `state: planned
parts:
  - {part: gasket, from: a shop, price: 4.00 GBP, state: ordered}
  - {part: seal, from: a shop, price: 3.00 GBP, state: wanted}`,
    });
    expect([total(one), committed(one)]).toEqual(['4.00 GBP', '4.00 GBP']);
    expect(plain(formatMoney(outlookOf(one.book).wanted))).toBe('3.00 GBP');
  });
  test('work sent out: what was paid on account is part of the price', () => {
    const sent =
      'kind: machining\nwork: [{sent out: barrels, to: the reborer, price: 90.00 GBP}]\nmoney: [{paid: 30.00 GBP, for: "rebore, on account", group: machining}]';
    const away = made({ '2026-05-01-sent': sent });
    expect([total(away), committed(away)]).toEqual(['90.00 GBP', '60.00 GBP']);
    const back = made({
      '2026-05-01-sent': sent,
      '2026-05-10-back':
        'work: [{come back: barrels}]\nmoney: [{paid: 60.00 GBP, for: "rebore, the rest", group: machining}]',
    });
    expect([total(back), committed(back)]).toEqual(['90.00 GBP', '0.00 GBP']);
  });
});

describe('deposits on exchange', () => {
  const bought = (core: string): string =>
    `parts: [{part: cylinder, from: a shop, price: 70.00 GBP, state: fitted, core: {${core}}}]`;
  test('are spent until the old one is back', () => {
    expect(total(made({ '2026-05-01-a': bought('deposit: 25.00 GBP, return by: 2026-06-30') }))).toBe('95.00 GBP');
    expect(total(made({ '2026-05-01-a': bought('deposit: 25.00 GBP, returned: 2026-05-10') }))).toBe('70.00 GBP');
  });
  test('are not counted again where payments tell of them', () => {
    const paid = `${bought('deposit: 25.00 GBP')}\nmoney: [{deposit: 25.00 GBP, for: cylinder, group: deposits}]`;
    expect(total(made({ '2026-05-01-a': paid }))).toBe('95.00 GBP');
    const back = { '2026-05-09-b': 'money: [{deposit back: 25.00 GBP, for: cylinder, group: deposits}]' };
    expect(total(made({ '2026-05-01-a': paid, ...back }))).toBe('70.00 GBP');
    expect(total(made({ '2026-05-01-a': bought('deposit: 25.00 GBP'), ...back }))).toBe('70.00 GBP');
    const twice = bought('deposit: 25.00 GBP, returned: 2026-05-09');
    expect(total(made({ '2026-05-01-a': twice, ...back }))).toBe('70.00 GBP');
  });
});

describe('beside the sum', () => {
  const jobs = {
    '2026-05-01-bought':
      'kind: buying\nodometer: 1000 km\ntime: 2 h\nmoney: [{paid: 400.00 GBP, for: the machine, group: buying}, {paid: 60.00 GBP, for: test, group: fees}]',
    '2026-05-10-ride': 'kind: ride\nodometer: 1400 km\ntime: 30 min',
    '2026-06-01-plan':
      'state: planned\nparts: [{part: seal, price: 40.00 GBP, state: wanted}, {part: gasket, state: wanted}]',
  };
  const keys = { 'spending limit': '500.00 GBP', allowance: '25 %', 'hour rate': '12.00 GBP' };
  test('fees stand apart, the allowance lies on what is to come, and the limit is held against both', () => {
    const page = made(jobs, keys).page('costs.html');
    expect(page).toContain('Together: 460.00 GBP');
    expect(page).toContain('Of it fees: 60.00 GBP');
    expect(page).toContain('The machine, fees apart: 400.00 GBP');
    expect(page).toContain('Wanted, by prices seen: 40.00 GBP (without a price: gasket)');
    expect(page).toContain('Allowance, 25 %: 10.00 GBP');
    expect(page).toContain('To be expected: 450.00 GBP');
    expect(page).toMatch(/The limit I will spend: 500\.00 GBP \(50\.00 GBP left/u);
    expect(page).toContain('For every 100 km: 100.00 GBP');
  });
  test('a limit that is passed says by how much', () => {
    const one = made(jobs, { ...keys, 'spending limit': '390.00 GBP' });
    expect(one.page('costs.html')).toContain('passed by 60.00 GBP');
    expect(one.codes).toContain('spending-limit-passed');
    expect(made(jobs, keys).codes).not.toContain('spending-limit-passed');
  });
  test('hours are valued at the owner’s rate and at no other, and never added', () => {
    const valued = made(jobs, keys).page('costs.html');
    expect(valued).toContain('Own time on record: 2 h 30 min; 30.00 GBP at your rate, not in the sums.');
    const plainly = made(jobs).page('costs.html');
    expect(plainly).toContain('Own time on record: 2 h 30 min.');
    expect(plainly).toContain('Together: 460.00 GBP');
  });
  test('a distance that is not known gives no cost of it', () => {
    expect(
      made({ '2026-05-01-bought': 'money: [{paid: 400.00 GBP, for: the machine}]' }).page('costs.html'),
    ).not.toContain('For every 100');
  });
  test('nor does one that is shorter than the measure', () => {
    const short = { ...jobs, '2026-05-10-ride': 'kind: ride\nodometer: 1099 km' };
    expect(made(short, keys).page('costs.html')).not.toContain('For every 100');
    const just = { ...jobs, '2026-05-10-ride': 'kind: ride\nodometer: 1100 km' };
    expect(made(just, keys).page('costs.html')).toContain('For every 100 km: 400.00 GBP');
  });
});

describe('currencies', () => {
  test('one without a rate is left out of the sum, and the sum says so', () => {
    const jobs = { '2026-05-01-a': 'money: [{paid: 100.00 USD, for: a tank}, {paid: 10.00 GBP, for: post}]' };
    const none = made(jobs);
    expect(total(none)).toBe('10.00 GBP');
    expect(none.page('costs.html')).toMatch(/Left out of the sums[^#]*100\.00 USD in [^\n]*no rate for USD/u);
    expect(total(made(jobs, { rates: '{USD: 0.80}' }))).toBe('90.00 GBP');
    const wanted = made({ '2026-06-01-p': 'state: planned\nparts: [{part: seal, price: 5.00 USD, state: wanted}]' });
    expect(plain(outlookOf(wanted.book).unpriced.join())).toBe('seal (5.00 USD: no rate for USD)');
  });
});

describe('workshop.yaml', () => {
  const tin =
    'splitpin: 1\nshared:\n  - {paid: 10.00 GBP, date: 2026-05-01, for: cleaner, between: {Wagtail one: 2, Wagtail two: 1}}\n';
  test('a shared purchase is borne by its shares', () => {
    const [one, two, three] = ['Wagtail one', 'Wagtail two', 'another'].map((name) => made({}, { name }, tin));
    expect([one, two, three].map((each) => (each === undefined ? '' : total(each)))).toEqual([
      '6.67 GBP',
      '3.33 GBP',
      '0.00 GBP',
    ]);
    expect(one?.page('costs.html')).toContain('cleaner, its share');
  });
  test('what is wrong in it has its place', () => {
    const wrong = (text: string) =>
      made({}, {}, `splitpin: 1\n${text}`).problems.map(({ code, at }) => [code, at.path.join('.')]);
    expect(wrong('shared: [{paid: 10.00 GBP, date: 2026-05-01, for: cleaner, between: {}}]')).toEqual([
      ['value-missing', 'shared.0.between'],
    ]);
    expect(wrong('suppliers: [{name: a, hours: {Caturday: 9:00 to 12:00}}]')).toEqual([
      ['hours-unreadable', 'suppliers.0.hours.Caturday'],
    ]);
    expect(wrong('suppliers: [{name: a, hours: {Saturday: 12:00 to 9:00}}]')).toEqual([
      ['hours-unreadable', 'suppliers.0.hours.Saturday'],
    ]);
  });
});
