// Evening 20: how long will the chain last. Two rules disagree, so both are printed, with where to measure again and what is not projected.
import { expect, test } from 'vitest';
import { evening, machineFile } from './evening.ts';
import { wagtailBook } from './wagtail-book.ts';

const machine = machineFile({ geometry: '{final: "14:38", chain: {pitch: 12.7 mm, links: 108}}' });
const maker = wagtailBook().replace(
  'limits:\n',
  'limits:\n  - {id: chain-20-links, name: "Chain, twenty links", unit: mm}\n',
);
const renewed = 'odometer: 2100 km\nparts: [{part: chain, from: a shop, state: fitted}]\nwork: [{replaced: chain}]';
const measured = (odometer: string, found: string): string =>
  `kind: measuring\nodometer: ${odometer}\nreadings: [{item: chain-20-links, found: ${found}}]`;

function page(jobs: Readonly<Record<string, string>>): string {
  return evening('2026-05-20', jobs, { machine, maker }).page('measurements.html');
}

test('20: 256.4 mm over twenty links at 9 800 km, new at 2 100', () => {
  const text = page({ '2024-05-01-chain': renewed, '2026-05-10-measured': measured('9800 km', '256.4 mm') });
  expect(text).toContain('2 %, common motorcycle practice (no standard), is reached at 259.1 mm');
  expect(text).toContain('the industrial rule (ANSI practice), is reached at 261.6 mm');
  expect(text).toContain('2.4 mm gone in 7700 km, since it was new: 1 May 2024');
  expect(text).toContain(
    'Left, if wear is straight and it began at 254.0 mm: about 8600 km to 2 %, about 16 700 km to the industrial rule. The span comes from sources that disagree.',
  );
  expect(text).toMatch(
    /Measure again at 1[12] [09]00 km of the machine, and look whether the teeth of both sprockets are hooked/u,
  );
  expect(text).toContain('Not projected: tyres, which go by age as well, and brake fluid, which goes by months alone.');
});

test('20: a chain of which nobody knows when it was new is not projected', () => {
  const text = page({ '2026-05-10-measured': measured('9800 km', '256.4 mm') });
  expect(text).toContain('Elongation at the last reading: 0.94 %');
  expect(text).not.toContain('Left, if wear is straight');
});

test('20: past the nearer rule only the farther one has a way left', () => {
  const text = page({ '2024-05-01-chain': renewed, '2026-05-10-measured': measured('9800 km', '260.0 mm') });
  expect(text).toMatch(/it began at 254\.0 mm: about \d[\d ]* km to the industrial rule\./u);
  expect(text).not.toContain('km to 2 %');
});
