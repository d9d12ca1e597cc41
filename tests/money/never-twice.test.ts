// Never counted twice, whatever the records look like: the sums agree with each other, and no order, repetition or division adds a penny.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sharesOf } from '../../src/book/costs/shared-purchases.ts';
import { outlookOf } from '../../src/book/costs/outlook.ts';
import type { Costs } from '../../src/book/book.ts';
import { evening, machineFile } from '../evenings/evening.ts';
import { day, money, nowhere } from '../book/records.ts';

const states = ['ordered', 'here', 'fitted'] as const;
const names = ['chain', 'seal', 'piston', 'cable'] as const;

/** One buy: which part, at what price, and in which of the states its price is written. */
const buy = fc.record({
  part: fc.constantFrom(...names),
  price: fc.integer({ min: 1, max: 99_999 }),
  written: fc.uniqueArray(fc.constantFrom(...states), { minLength: 1, maxLength: 3 }),
});
const price = (minor: number): string =>
  `${String(Math.floor(minor / 100))}.${String(minor % 100).padStart(2, '0')} GBP`;

/** Each buy in records of its own, a day a state; buys follow each other, so that one is over before the next begins. */
function records(
  buys: readonly { readonly part: string; readonly price: number; readonly written: readonly string[] }[],
): Record<string, string> {
  const jobs: Record<string, string> = {};
  for (const [index, one] of buys.entries())
    for (const [step, state] of states.entries()) {
      const said = one.written.includes(state) ? `, price: ${price(one.price)}` : '';
      const number = `, number: N${String(index)}`;
      const date = `2025-${String(1 + Math.floor(index / 8)).padStart(2, '0')}-${String(1 + (index % 8) * 3 + step).padStart(2, '0')}`;
      jobs[`${date}-${state}`] = `parts: [{part: ${one.part}${number}, from: a shop${said}, state: ${state}}]`;
    }
  return jobs;
}
const costsOf = (jobs: Readonly<Record<string, string>>): Costs =>
  evening('2026-05-20', jobs, { machine: machineFile() }).book.costs;
const minorOf = (all: readonly { readonly total: { readonly minor: number } }[]): number =>
  all.reduce((sum, { total }) => sum + total.minor, 0);

describe('the sums', () => {
  test('each buy counts once, however often its price is written on the way', () => {
    fc.assert(
      fc.property(fc.array(buy, { maxLength: 8 }), (buys) => {
        expect(costsOf(records(buys)).total.minor).toBe(buys.reduce((sum, one) => sum + one.price, 0));
      }),
      { numRuns: 40 },
    );
  });
  test('groups, years and entries come to the whole', () => {
    const payment = fc.record({
      minor: fc.integer({ min: 1, max: 50_000 }),
      kind: fc.constantFrom('paid', 'deposit', 'refund', 'deposit back'),
      group: fc.constantFrom('fees', 'buying', 'tools'),
      month: fc.integer({ min: 1, max: 9 }),
      year: fc.constantFrom(2024, 2025),
    });
    fc.assert(
      fc.property(fc.array(payment, { maxLength: 8 }), fc.array(buy, { maxLength: 3 }), (payments, buys) => {
        const paid = Object.fromEntries(
          payments.map(({ minor, kind, group, month, year }, index) => [
            `${String(year)}-0${String(month)}-28-p${String(index)}`,
            `money: [{${kind}: ${price(minor)}, for: thing ${String(index)}, group: ${group}}]`,
          ]),
        );
        const { total, fees, byGroup, byYear, entries } = costsOf({ ...paid, ...records(buys) });
        expect(minorOf(byGroup)).toBe(total.minor);
        expect(minorOf(byYear)).toBe(total.minor);
        expect(entries.reduce((sum, { inOwn }) => sum + (inOwn?.minor ?? 0), 0)).toBe(total.minor);
        expect(fees.minor).toBe(byGroup.find(({ group }) => group === 'fees')?.total.minor ?? 0);
      }),
      { numRuns: 40 },
    );
  });
  test('the order of the files does not matter', () => {
    fc.assert(
      fc.property(fc.array(buy, { maxLength: 6 }), fc.infiniteStream(fc.nat()), (buys, order) => {
        const jobs = Object.entries(records(buys));
        const keyed = jobs.map((job) => [order.next().value, job] as const);
        const mixed = keyed.toSorted(([a], [b]) => a - b).map(([, job]) => job);
        expect(costsOf(Object.fromEntries(mixed)).total).toEqual(costsOf(Object.fromEntries(jobs)).total);
      }),
      { numRuns: 20 },
    );
  });
  test('what is committed is never more than the whole, and nothing is left of it when all has come', () => {
    fc.assert(
      fc.property(fc.array(buy, { maxLength: 6 }), fc.nat(40), (buys, cut) => {
        const jobs = Object.entries(records(buys));
        const some = costsOf(Object.fromEntries(jobs.slice(0, cut)));
        expect(some.committed.minor).toBeLessThanOrEqual(some.total.minor);
        expect(costsOf(Object.fromEntries(jobs)).committed.minor).toBe(0);
      }),
      { numRuns: 30 },
    );
  });
});

describe('shares', () => {
  const machines = fc.uniqueArray(fc.string({ minLength: 1, maxLength: 8 }), { minLength: 1, maxLength: 6 });
  test('of all machines come to what was paid, to the penny, and lie within a penny of what is due', () => {
    fc.assert(
      fc.property(
        machines,
        fc.integer({ min: 0, max: 10_000_000 }),
        fc.infiniteStream(fc.integer({ min: 1, max: 1000 })),
        (all, minor, many) => {
          const between = all.map((machine) => ({ machine, shares: many.next().value }));
          const whole = between.reduce((sum, { shares }) => sum + shares, 0);
          const purchase = {
            paid: { ...money('1.00 GBP'), minor },
            date: day('2026-05-01'),
            for: 'a tin',
            group: 'other',
            between,
            at: nowhere,
          };
          const found = sharesOf(purchase);
          expect([...found.values()].reduce((sum, one) => sum + one, 0)).toBe(minor);
          for (const { machine, shares } of between)
            expect(Math.abs((found.get(machine) ?? -1) - (minor * shares) / whole)).toBeLessThan(1);
          expect(sharesOf({ ...purchase, between: between.toReversed() })).toEqual(new Map([...found].toReversed()));
        },
      ),
    );
  });
});

test('what is to be expected is the machine, the wanted and the allowance, and no more', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 200 }),
      fc.integer({ min: 1, max: 90_000 }),
      fc.integer({ min: 1, max: 90_000 }),
      (share, wanted, paid) => {
        const jobs = {
          '2026-05-01-a': `money: [{paid: ${price(paid)}, for: the machine, group: buying}]`,
          '2026-06-01-b': `state: planned\nparts: [{part: seal, price: ${price(wanted)}, state: wanted}]`,
        };
        const { book } = evening('2026-05-20', jobs, { machine: machineFile({ allowance: `${String(share)} %` }) });
        const outlook = outlookOf(book);
        expect(outlook.expected.minor).toBe(paid + wanted + (outlook.allowance?.amount.minor ?? Number.NaN));
        expect(Math.abs((outlook.allowance?.amount.minor ?? 0) - (wanted * share) / 100)).toBeLessThanOrEqual(0.5);
      },
    ),
    { numRuns: 40 },
  );
});
