// Evenings 6 and 9: cold is compared with cold, and a wrong entry stays to be seen.
import { expect, test } from 'vitest';
import { workLines } from '../../src/build.ts';
import { evening } from './evening.ts';
import { wagtailBook } from './wagtail-book.ts';

test('6: compression cold and dry, oiled, and hot a week later', () => {
  const made = evening(
    '2026-05-20',
    {
      '2026-05-01-cold': 'kind: measuring\nreadings: [{item: compression, found: 6.8 bar, condition: "cold, dry"}]',
      '2026-05-02-oiled':
        'kind: measuring\nreadings: [{item: "compression, with oil", found: 9.2 bar, condition: "cold, oiled"}]',
      '2026-05-09-hot': 'kind: measuring\nreadings: [{item: compression, found: 8.9 bar, condition: "hot, dry"}]',
    },
    { maker: wagtailBook() },
  );
  const page = made.page('measurements.html');
  expect(page).toContain('1 May 2026 | 6.8 | cold, dry | past the limit');
  expect(page).toContain('9 May 2026 | 8.9 | hot, dry | limit is for another condition');
  expect(page).toContain('2 May 2026 | cold, oiled');
  expect(made.page('problems.html')).toContain('compression: read hot, dry, and the book asks for cold, dry');
  expect(page).toContain(
    'Cold and dry 6.8 bar (1 May 2026), with oil in the bore 9.2 bar (2 May 2026): up by as much as 35 %. Oil lifts the reading: rings or bore. A bore that only stood dry reads the same: soak it, let it run, and read it again cold and dry before anything comes apart.',
  );
  expect(page).toMatch(/Compression \| 8\.9 bar \| 9 May 2026 \|[^|]*\|[^|]*\| limit is for another condition/u);
  const said = workLines('compression-spread', [], made.book, () => [])
    .lines.join('\n')
    .replaceAll(/[\u00a0\u2009\u202f]/gu, ' ');
  expect(said).toContain('oil lifts the reading: rings or bore');
  expect(said).toContain('6.8 bar');
  expect(said).not.toContain('8.9 bar');
});

test('9: he wrote 0.50 mm on Saturday, and on Tuesday it was 0.35', () => {
  const made = evening(
    '2026-05-20',
    {
      '2026-05-02-saturday':
        'kind: setting up\nreadings: [{item: points-gap, left: 0.50 mm}, {item: ignition-timing, left: 2.1 mm}]',
      '2026-05-05-tuesday': `kind: setting up
corrections: [{record: 2026-05-02-saturday, item: points-gap, was: 0.50 mm, is: 0.35 mm, why: read the wrong blade}]`,
    },
    { maker: wagtailBook() },
  );
  const page = made.page('measurements.html');
  expect(page).toContain('2 May 2026 | ~~0.50~~ | corrected, 5 May 2026, read the wrong blade');
  expect(page).toContain('2 May 2026 | 0.35 | within standard');
  expect(made.page('jobs/2026-05-02-saturday.html')).toMatch(
    /Points gap \|[^\n]*~~0\.50 mm~~[^\n]*read the wrong blade/u,
  );
  expect(made.page('problems.html')).toContain(
    'set after the wrong value: ignition timing (2026-05-02) | check those again',
  );
});
