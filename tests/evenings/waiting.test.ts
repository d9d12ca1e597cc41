// Evenings 2, 13 and 15: what was left how, weeks or months ago, and what must not be done yet.
import { expect, test } from 'vitest';
import { evening } from './evening.ts';
import { wagtailBook } from './wagtail-book.ts';

test('2: the bore is oiled on Sunday, and he comes back on Thursday', () => {
  const thursday = evening('2026-05-07', {
    '2026-05-03-oiled': `title: Bore oiled
kind: waking
state: put aside
work: [{loosened: spark plug}]
checks: [{check: bores-oiled, value: 8 ml}]
state left: ["oiled Sunday 3 pm, plug loose, do not start"]
next: turn it by the rear wheel`,
  });
  const card = thursday.sheet('state-left-in');
  expect(card).toContain('Before you turn, start or move it: 1 thing is open.');
  expect(card).toContain('loose: spark plug');
  expect(card).toContain('oiled Sunday 3 pm, plug loose, do not start');
  expect(card).toContain('Next: turn it by the rear wheel');
  expect(thursday.sheet('hold-points')).toContain('proved 3 May 2026, owner, 8 ml');
  expect(thursday.sheet('hold-points')).toMatch(/two full turns, no hard stop\n[^\n]*\n +not proved/u);
});

test('13: bag 17 is not to be found in March', () => {
  const march = evening(
    '2026-03-20',
    {
      '2025-11-01-off': `kind: strip
work: [{removed: kickstart cover, bag: 17, fasteners: {kickstart-cover-screw: 5}}]`,
      '2026-03-15-lost': 'work: [{lost: kickstart-cover-screw, count: 5, from bag: 17, note: bag 17 not found}]',
    },
    { maker: wagtailBook() },
  );
  expect(march.sheet('tags')).toContain('┌ Bag 17, out\n│ Kickstart cover\n│ 5 × Kickstart cover screws');
  expect(march.page('off.html')).toContain(
    '5 × Kickstart cover screws | from bag 17; bag 17 not found | 15 March 2026',
  );
  expect(march.sheet('parts-to-get')).toContain(
    '5 × Kickstart cover screws, M6×1.0: 3 × 25 mm, 2 × 45 mm | lost with bag 17',
  );
});

test('15: put aside half way, and fourteen months later', () => {
  const later = evening(
    '2026-07-20',
    {
      '2025-04-01-tyres': `kind: service
checks: [{check: tyres-hold, value: 1.8 bar}]
work: [{filled: fuel tank, quantity: 5 l, ratio: 25:1}, {filled: gearbox oil, quantity: 600 ml, grade: SAE 80}]
readings: [{item: rear tyre date code, found: code 3819}, {item: points-gap, left: 0.35 mm}, {item: ignition-timing, left: 2.1 mm}]`,
      '2025-05-10-strip': `title: Engine apart
kind: strip
state: put aside
work: [{removed: barrel, bag: 3}, {opened: crankcase}, {loosened: rear-spindle-nut}, {sent out: barrel, to: the reborer, promised: 2025-06-01}]
readings: [{item: bore, found: 56.05 mm, condition: cold}, {item: points-gap, left: 0.40 mm}]
parts: [{part: gasket set, from: a shop, state: ordered}, {part: seals, state: here, from: a stall}]
state left: [halves under a sheet on the bench]
next: crank seals out`,
    },
    { maker: wagtailBook() },
  );
  const sheet = later.sheet('state-left-in');
  const card = sheet.slice(0, sheet.indexOf('## Still open'));
  for (const line of [
    'Before you turn, start or move it: 4 things are open.',
    'off: barrel (bag 3)',
    'open: crankcase',
    'loose: Rear spindle nut',
    'sent out: barrel (to the reborer; promised for 1 June 2025)',
    'halves under a sheet on the bench',
    'Ordered: gasket set (a shop)',
    'Prove again: Tyres hold their pressure',
    'Next: crank seals out',
  ])
    expect(card).toContain(line);
  expect(card).toMatch(/Held: [^\n]*Before the engine is turned at all; Before the first live kick/u);
  for (const line of [
    'Here, and not fitted: seals (a stall)',
    'fuel tank: filled 1 April 2025, 15 months ago; goes stale, and gums the jets (common practice: 6 months)',
    'gearbox oil: filled 1 April 2025, 15 months ago',
    'New gaskets before it goes back: barrel, crankcase (common practice)',
  ])
    expect(sheet).toContain(line);
  expect(sheet).toMatch(/Tyre, rear: 6\.8 years[^\n]*made week 38 of 2019/u);
  expect(sheet).toMatch(/== Measure again\nIgnition timing \| 2\.1 mm \| 1 April 2025 \| points-gap set, 10 May 2025/u);
  expect(sheet).toMatch(/== Still holds[^\n]*\nCylinder bore \| 56\.05 mm; cold \| 10 May 2025/u);
  // The barrel is at the reborer’s, and not in its bag.
  expect(sheet).not.toContain('Bag 3\nbarrel');
  expect(sheet).toContain('Emptied: 3');
  const first = later.page('index.html');
  expect(first).toContain('Next: crank seals out (written on 10 May 2025, Engine apart)');
  expect(first).toContain('Measure again: Ignition timing');
  expect(first).toContain('Ordered: gasket set (a shop)');
  expect(later.sheet('parts-to-get')).toMatch(/On its way[^#]*gasket set \| a shop, no day promised/u);
  expect(later.page('measurements.html')).toMatch(/Cylinder bore \| 56.05 mm \| 10 May 2025[^\n]*worn, usable/u);
  expect(later.sheet('hold-points')).toContain('the proof ran out (1 month: until 1 May 2025)');
});

test('15: back at it, and what was left half way is gone on with', () => {
  const jobs = {
    '2025-05-10-strip': `title: Engine apart
kind: strip
state: put aside
work: [{filled: fuel tank, quantity: 5 l, ratio: 25:1}, {removed: barrel, bag: 3}]
readings: [{item: bore, found: 56.05 mm, condition: cold}]
next: crank seals out`,
    '2026-07-18-on': 'kind: assembly\ncontinues: 2025-05-10-strip\nwork: [{refitted: barrel, from bag: 3}]',
    '2026-07-19-ride': 'kind: ride\nride: {weather: dry}',
  };
  const made = evening('2026-07-20', jobs, { maker: wagtailBook() });
  const sheet = made.sheet('state-left-in');
  expect(sheet).toContain('Next: not written down');
  expect(sheet).not.toContain('Still holds');
  expect(sheet).not.toContain('goes stale');
  // What was open on that evening stands with its record for good, whatever was done since.
  const left = made.page('jobs/2025-05-10-strip.html');
  expect(left).toMatch(/Off, loose, empty or open when it was left[^]*barrel \| off \| bag 3 \| 10 May 2025/u);
  expect(sheet).not.toContain('barrel');
});

test('15: the words it was left with carry their day once something was done since, and go once it was ridden', () => {
  const left = { '2024-05-18-wheels': 'state left: [chain off]' };
  const card = (jobs: Readonly<Record<string, string>>): string =>
    evening('2024-07-01', { ...left, ...jobs }).sheet('state-left-in');
  expect(card({})).not.toContain('Left so');
  expect(card({})).toContain('chain off');
  expect(card({ '2024-05-24-chain': 'parts: [{part: chain}]' })).toContain('Left so, 18 May 2024: chain off');
  expect(card({ '2024-06-07-round': 'kind: ride\nride: {weather: dry}' })).not.toContain('chain off');
});
