// What a machine stands at once parts have moved: less by what went, more by what came, as it was by what came back, and not known where nothing was set.
import { expect, test } from 'vitest';
import { besideOthers } from '../../src/book/beside-others.ts';
import { movedWorth, withOthersWorth } from '../../src/book/moved-worth.ts';
import type { PartEntry } from '../../src/records/model.ts';
import { book, job, machine, money, part } from './records.ts';

const gbp = (text: string) => money(`${text} GBP`);
const rates = { EUR: 0.8 };
const of = (folder: string, ...parts: readonly (readonly [string, PartEntry])[]) =>
  besideOthers(
    folder,
    book(
      parts.map(([day, one]) => job(day, { parts: [one] })),
      '2026-06-01',
      { records: { machine: machine({ name: folder, model: folder, rates }) } },
    ),
  );
const went = (name: string, worth?: string) =>
  part(name, { movedTo: 'rider', ...(worth === undefined ? {} : { worth: gbp(worth) }) });

test('a part that left takes its worth with it; without one the rest is not known', () => {
  const { moved } = of('donor', ['2026-05-01', went('carburettor', '40.00')], ['2026-05-08', went('tank')]);
  expect(movedWorth(gbp('150.00'), moved, rates)).toEqual({
    gone: gbp('40.00'),
    came: gbp('0.00'),
    left: gbp('110.00'),
    notSet: ['tank'],
  });
});

test('a part that came back is where it was, in whatever order the records lie', () => {
  const back = part('Carburettor', { movedFrom: 'rider' });
  const { moved } = of('donor', ['2026-05-20', back], ['2026-05-01', went('carburettor', '40.00')]);
  expect(movedWorth(gbp('150.00'), moved, rates)).toBeUndefined();
  expect(movedWorth(gbp('150.00'), of('donor').moved, rates)).toBeUndefined();
});

test('a price beside “moved from” was paid on no side and is what it was set at; other money counts at the stated rate', () => {
  const { moved } = of('rider', ['2026-05-03', part('carburettor', { movedFrom: 'donor', price: money('50.00 EUR') })]);
  expect(movedWorth(gbp('0.00'), moved, rates)?.left).toEqual(gbp('40.00'));
});

test('what one side set counts for the other, for the part and the machines that both name, in the same money', () => {
  const donor = of('donor', ['2026-05-01', went('carburettor')], ['2026-05-02', went('tank')]);
  const rider = of(
    'rider',
    ['2026-05-03', part('the carburettor', { movedFrom: 'donor', worth: gbp('40.00') })],
    ['2026-05-03', part('tank', { movedFrom: 'a friend', worth: gbp('9.00') })],
  );
  const [first] = withOthersWorth([donor, rider]);
  expect(first?.moved.map(({ worth }) => worth)).toEqual([gbp('40.00'), undefined]);
});

test('money that no rate is stated for leaves it unknown, and is named', () => {
  const { moved } = of('donor', ['2026-05-01', part('tank', { movedTo: 'rider', worth: money('9.00 USD') })]);
  expect(movedWorth(gbp('150.00'), moved, rates)?.notSet).toEqual(['tank (9.00\u00a0USD: no rate for USD)']);
});
