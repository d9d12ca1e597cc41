// A binder made for a day long past is the binder that would have been made on that day.
import { expect, test } from 'vitest';
import { evening } from '../evenings/evening.ts';
import { wagtailBook } from '../evenings/wagtail-book.ts';

const records: Readonly<Record<string, string>> = {
  '2024-05-01-off':
    'kind: strip\nodometer: 100 km\nwork: [{removed: kickstart cover, bag: 17}, {loosened: cylinder-head-nut}]',
  '2024-06-01-on': 'odometer: 100 km\nwork: [{refitted: kickstart cover, from bag: 17}]',
  '2024-07-01-tight': 'odometer: 100 km\nwork: [{tightened: cylinder-head-nut, to: 22 N·m}]',
  '2024-08-01-chain': 'odometer: 400 km\nservices: [chain-oil]',
  '2024-09-01-ride': 'kind: ride\nodometer: 700 km\nride: {weather: dry}',
  '2024-10-01-plan': 'state: planned\ntakes: 30 min',
};

function onDay(today: string, jobs: Readonly<Record<string, string>>) {
  const { book } = evening(today, jobs, { maker: wagtailBook() });
  return {
    off: book.off.open.map(({ state, entry }) => `${state} ${entry.thing}`),
    bags: book.off.bags.map(({ bag, emptied }) => ({ bag, emptied })),
    held: book.holds.map(({ point, because }) => [point.id, because]),
    due: book.due.map(({ service, state, why }) => [service.id, state, why]),
    open: book.records.jobs.filter(({ state }) => state === 'planned').map(({ id }) => id),
    costs: book.costs.total,
  };
}

const firstOf = (count: number): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(records).slice(0, count));

test.each([
  ['2024-05-02', 1],
  ['2024-06-02', 2],
])('on %s it is made of the records until then', (today, count) => {
  expect(onDay(today, records).off).toEqual(onDay(today, firstOf(count)).off);
  if (count === 1) expect(onDay(today, records)).toEqual(onDay(today, firstOf(1)));
});

test('a plan is of a day long past only when it is for before the work that came later', () => {
  expect(onDay('2024-05-02', records).open).toEqual([]);
  expect(onDay('2024-09-02', records).open).toEqual(['2024-10-01-plan']);
  // One record after the day is a date typed wrong, and takes no plan away.
  expect(onDay('2024-08-02', records).open).toEqual(['2024-10-01-plan']);
  expect(onDay('2024-05-02', { ...records, '2024-05-20-soon': 'state: planned' }).open).toEqual(['2024-05-20-soon']);
});
