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

const gauge =
  'splitpin: 1\ninstruments:\n  - {id: gauge, name: Compression gauge, measures: gauge pressure, resolution: 0.1 bar}\n';
/** Compression on four days, 2000 km apart, with the words that a test speaks of. */
function pressures(
  found: readonly string[],
  words: readonly string[] = [],
  more: Readonly<Record<string, string>> = {},
) {
  const jobs = found.map((bar, index): readonly [string, string] => [
    `2026-0${String(index + 1)}-01-compression`,
    `kind: measuring\nodometer: ${String(2000 * (index + 1))} km\nreadings: [{item: compression, found: ${bar}, ${words[index] ?? 'condition: "cold, dry", instrument: gauge'}}]`,
  ]);
  const made = evening('2026-05-20', { ...Object.fromEntries(jobs), ...more }, { machine, maker, instruments: gauge });
  return made.page('measurements.html');
}
const falling = 'falling evenly as until now, the limit is reached at';

test('compression that falls is projected to its limit, counted from its highest', () => {
  const even = pressures(['9.6 bar', '9.2 bar', '8.8 bar', '8.4 bar']);
  expect(even).toMatch(new RegExp(`${falling} 14 027 to 16 152 km`, 'u'));
  // New rings bed in: the first reading, lower than the next, is not on the line.
  const bedded = pressures(['8.0 bar', '9.2 bar', '8.8 bar', '8.4 bar']);
  expect(bedded).toContain(falling);
  expect(pressures(['8.0 bar', '8.2 bar', '9.2 bar', '8.8 bar'])).not.toContain(falling);
});

test('compression read otherwise is not projected: another gauge or none named, another condition, before a rebore', () => {
  const bars = ['9.6 bar', '9.2 bar', '8.8 bar'];
  const cold = 'condition: "cold, dry"';
  expect(pressures(bars, [cold, cold, cold])).not.toContain(falling);
  expect(pressures(bars, ['condition: hot, instrument: gauge'])).not.toContain(falling);
  expect(pressures(bars, [`${cold}, instrument: a borrowed gauge`])).not.toContain(falling);
  const rebored = 'work: [{replaced: rings}]';
  expect(pressures(bars, [], { '2026-02-15-rings': rebored })).not.toContain(falling);
  expect(pressures(bars)).toContain(falling);
});
