// Evenings 10 and 14: one carburettor for two machines, and two people on one machine.
import { expect, test } from 'vitest';
import { evening } from './evening.ts';
import { wagtailBook } from './wagtail-book.ts';

test('10: the carburettor goes from the donor to the rider, and is paid for once', () => {
  const donor = {
    '2026-01-01-bought': 'kind: buying\nmoney: [{paid: 150.00 GBP, for: the donor, group: buying}]',
    '2026-05-01-out': 'work: [{removed: carburettor}]\nparts: [{part: carburettor, moved to: the rider}]',
  };
  const rider = {
    '2026-05-01-in':
      'parts: [{part: carburettor, class: used, moved from: the donor, price: 40.00 GBP, state: fitted}]',
  };
  const [given, got] = [evening('2026-05-20', donor), evening('2026-05-20', rider)];
  expect(given.sheet('history')).toMatch(/carburettor[^\n]*moved to the rider/u);
  expect(got.sheet('history')).toMatch(/carburettor[^\n]*moved from the donor/u);
  expect(given.page('costs.html')).toContain('Together: 150.00 GBP');
  expect(got.page('costs.html')).toContain('Together: 0.00 GBP');
  expect(got.page('costs.html')).toContain('came from the donor, its price is counted there');
  const back = evening('2026-05-20', { ...donor, '2026-05-03-on': 'work: [{refitted: carburettor}]' });
  expect(back.page('problems.html')).toContain(
    'carburettor went to the rider on 2026-05-01, and is fitted here on 2026-05-03',
  );
});

test('14: one on the brakes, one on the engine, each with a sheet, and who looked after them', () => {
  const saturday = evening(
    '2026-05-20',
    {
      '2026-05-02-brakes': `title: Brakes
kind: assembly
hands: [helper]
work: [{removed: rear wheel}, {loosened: rear-spindle-nut}, {refitted: rear wheel}, {tightened: rear-spindle-nut, to: 60 N·m}]
checks: [{check: rear-brake-holds, by: helper, checked by: owner}]`,
      '2026-05-02-engine': 'title: Engine\nkind: strip\nhands: [owner]\nwork: [{removed: cylinder head}]',
      '2026-05-23-wheel': 'title: Wheel out\nstate: planned\nhands: [helper]\nprocedures: [wheel-rear-out]',
      '2026-05-23-top-end': 'title: Top end\nstate: planned\nhands: [owner]\nprocedures: [top-end-strip-two-stroke]',
    },
    { maker: wagtailBook() },
  );
  expect(saturday.sheet('hold-points')).toContain('proved 2 May 2026, helper, checked by owner');
  expect(saturday.page('jobs/2026-05-02-brakes.html')).toContain('Hands: helper');
  expect(saturday.sheet('teardown-2026-05-23-wheel')).toContain('Rear wheel out and back');
  expect(saturday.sheet('teardown-2026-05-23-wheel')).not.toMatch(/head nuts/iu);
  expect(saturday.sheet('teardown-2026-05-23-top-end')).toContain('Head nuts loosened');
  const clash = {
    '2026-05-23-wheel': 'title: Wheel out\nstate: planned\nhands: [helper]\nprocedures: [wheel-rear-out]',
    '2026-05-23-chain': 'title: New chain\nstate: planned\nhands: [owner]\nprocedures: [chain-and-sprockets]',
  };
  expect(evening('2026-05-20', clash, { maker: wagtailBook() }).page('problems.html')).toMatch(
    /New chain and Wheel out are for one day, and both want [^|]*chain/u,
  );
  const alone = evening(
    '2026-05-20',
    {
      '2026-05-02-brakes':
        'kind: assembly\nhands: [helper]\nwork: [{removed: front brake cable}, {refitted: front brake cable}]',
    },
    { maker: wagtailBook() },
  );
  expect(alone.page('problems.html')).toContain('front brake cable refitted, and the record has no check of it');
});
