// Evenings 11 and 12: a clock in miles with a book in kilometres, and a used clock in place of a dead one.
import { expect, test } from 'vitest';
import { evening, machineFile } from './evening.ts';
import { wagtailBook } from './wagtail-book.ts';

test('11: the speedometer is in miles, the book in kilometres', () => {
  const machine = machineFile({
    clock: '[{id: c, unit: mi, digits: 5, from: {date: 2020-01-01, reads: 4000 mi}}]',
  });
  const jobs = {
    '2026-05-01-chain': 'kind: service\nodometer: 4980 mi\nservices: [chain-oil]',
    '2026-05-10-fuel': 'odometer: 5210 mi\nwork: [{filled: fuel tank, quantity: 1 US gal, ratio: 25:1}]',
  };
  const made = evening('2026-05-20', jobs, { maker: wagtailBook(), machine });
  expect(made.sheet('service-due')).toMatch(
    /Chain: lubricate \| 500 km \| 1 May 2026, 4980 mi \| at 5291 mi[^\n]*on the clock \(8515 km[^\n]*\); 81 mi left/u,
  );
  expect(made.page('jobs/2026-05-10-fuel.html')).toContain('1 US gal');
  const slip = evening('2026-05-20', { '2026-05-10-fuel': 'odometer: 5210 km' }, { maker: wagtailBook(), machine });
  expect(slip.codes).toContain('odometer-other-unit');
});

test('12: the old clock died at 8 106, the used one came in at 23 418', () => {
  const machine = machineFile({
    clock:
      '[{id: old, unit: mi, digits: 5, from: {date: 1974-05-01, reads: 0 mi}, to: {date: 2026-03-14, reads: 8106 mi}, state: dead}, {id: used, unit: mi, digits: 5, from: {date: 2026-03-14, reads: 23418 mi}}]',
  });
  const jobs = {
    '2026-03-01-chain': 'kind: service\nodometer: 8000 mi\nservices: [chain-oil]',
    '2026-03-14-clock': 'odometer: 23418 mi',
    '2026-05-10-ride': 'odometer: 23500 mi',
  };
  const made = evening('2026-05-20', jobs, { maker: wagtailBook(), machine });
  expect(made.page('index.html')).toContain('Distance of the machine: 8188 mi');
  expect(made.sheet('service-due')).toMatch(
    /Chain: lubricate \| 500 km \| 1 March 2026, 8000 mi \| at 23 623 mi[^\n]*on the clock \(13 375 km[^\n]* of the machine\); 123 mi left/u,
  );
  expect(made.sheet('handover')).toContain(
    "not actual. The clock does not show the machine's distance: clock “old” died at 8106 mi (until 14 March 2026); clock changed on 14 March 2026: 8106 mi out, 23 418 mi in.",
  );
});
