// Readings over time: verdicts with the instrument's uncertainty, corrections, and where a series begins again.
import { describe, expect, it } from 'vitest';
import type { Book, SeriesPoint } from '../../src/book/book.ts';
import type { Job } from '../../src/records/model.ts';
import { book, instrument, job, limit, maker, nowhere, part, range, reading, setting } from './records.ts';

const data = maker({
  limits: [
    limit('bore', '50.00 to 50.02 mm', '50.10 mm max', { of: 'barrels' }),
    limit('lining', '4.0 mm', '2.0 mm min'),
    limit('crown', '60.00 to 60.05 mm', undefined),
  ],
  settings: [setting('points-gap', '0.35 mm', { rangeText: '0.30 to 0.40 mm', disturbs: ['ignition-timing'] })],
});
const instruments = [
  instrument('micrometer', { accuracy: '0.005 mm', resolution: '0.01 mm' }),
  instrument('vernier', { accuracy: '0.02 mm', resolution: '0.02 mm' }),
];
const make = (jobs: readonly Job[]): Book => book(jobs, '2026-06-01', { records: { maker: data, instruments } });
const points = (made: Book, item: string): readonly SeriesPoint[] =>
  made.series.find((one) => one.item === item)?.points ?? [];

describe('verdicts', () => {
  it.each([
    ['bore', '50.01 mm', 'micrometer', 'within standard'],
    ['bore', '50.06 mm', 'micrometer', 'worn, usable'],
    ['bore', '50.12 mm', 'micrometer', 'past the limit'],
    ['bore', '50.10 mm', 'micrometer', 'too close to call with this instrument'],
    ['bore', '50.09 mm', 'micrometer', 'worn, usable'],
    ['bore', '50.08 mm', 'vernier', 'too close to call with this instrument'],
    ['bore', '50.12 mm', 'vernier', 'too close to call with this instrument'],
    ['bore', '50.14 mm', 'vernier', 'past the limit'],
    ['lining', '2.5 mm', undefined, 'worn, usable'],
    ['lining', '1.9 mm', undefined, 'past the limit'],
    ['lining', '0.0787 in', undefined, 'too close to call by the digits written'],
    ['lining', '0.0787 in', 'vernier', 'too close to call with this instrument'],
    ['points-gap', '0.35 mm', undefined, 'within standard'],
    ['points-gap', '0.50 mm', undefined, 'outside the range'],
    ['crown', '60.02 mm', 'micrometer', 'within standard'],
    ['crown', '60.20 mm', 'micrometer', 'no limit known'],
    ['points-gap', '0.30 mm', undefined, 'within standard'],
    ['skirt', '49.96 mm', 'micrometer', 'no limit known'],
  ])('%s %s with %s is %s', (item, text, tool, verdict) => {
    const made = make([
      job('2026-01-01', {
        readings: [reading(item, { found: text, ...(tool === undefined ? {} : { instrument: tool }) })],
      }),
    ]);
    expect(points(made, item)[0]?.verdict).toBe(verdict);
  });
  it('passes none on what is better than new', () => {
    const made = make([job('2026-01-01', { readings: [reading('bore', { found: '1.97 mm' })] })]);
    expect(points(made, 'bore')[0]?.verdict).toBeUndefined();
  });
  it('passes none on what could not be read in full', () => {
    const made = make([job('2026-01-01', { readings: [reading('bore', { found: '50.?6 mm' })] })]);
    expect(points(made, 'bore')[0]).toMatchObject({ value: { kind: 'words', text: '50.?6 mm' } });
    expect(points(made, 'bore')[0]?.verdict).toBeUndefined();
  });
});

describe('evening 9: a wrong entry', () => {
  const wrong = job('2026-01-03', {
    id: 'saturday',
    readings: [reading('points-gap', { found: '0.50 mm', left: '0.50 mm' })],
  });
  const fix = job('2026-01-06', {
    corrections: [
      {
        record: 'saturday',
        item: 'points-gap',
        was: '0.50 mm',
        is: '0.35 mm',
        why: 'read the wrong blade',
        at: nowhere,
      },
    ],
  });
  it('strikes the old value, keeps it, and computes with the new one', () => {
    const found = points(make([wrong, fix]), 'points-gap');
    expect(
      found.map((one) => [
        one.side,
        one.value.kind === 'read' ? one.value.written.text : '',
        one.corrected?.why,
        one.verdict,
      ]),
    ).toEqual([
      ['found', '0.50 mm', 'read the wrong blade', undefined],
      ['found', '0.35 mm', undefined, 'within standard'],
      ['left', '0.50 mm', 'read the wrong blade', undefined],
      ['left', '0.35 mm', undefined, 'within standard'],
    ]);
  });
  it('can itself be corrected', () => {
    const again = job('2026-01-07', {
      corrections: [
        { record: 'saturday', item: 'points gap', was: '0.35 mm', is: '0.38 mm', why: 'looked again', at: nowhere },
      ],
    });
    const live = points(make([wrong, fix, again]), 'points-gap').filter((one) => one.corrected === undefined);
    expect(live.map((one) => (one.value.kind === 'read' ? one.value.written.text : ''))).toEqual([
      '0.38 mm',
      '0.38 mm',
    ]);
  });
  it('asks what else had used the wrong value', () => {
    const timing = job('2026-01-04', { readings: [reading('ignition-timing', { left: '2.1 mm' })] });
    expect(make([wrong, timing, fix]).queries.map((one) => one.code)).toContain('corrected-value-was-used');
    expect(make([wrong, fix]).queries.map((one) => one.code)).not.toContain('corrected-value-was-used');
  });
  it('says so when nothing had that value', () => {
    const lost = job('2026-01-06', {
      corrections: [{ record: 'saturday', item: 'points-gap', was: '0.55 mm', is: '0.35 mm', why: 'x', at: nowhere }],
    });
    expect(make([wrong, lost]).queries.map((one) => one.code)).toContain('correction-of-nothing');
  });
});

describe('evening 6: cold or hot', () => {
  it('keeps each reading with its own condition', () => {
    const cold = ['cold', 'dry'];
    const made = make([
      job('2026-01-01', {
        readings: [
          reading('compression', { found: '6.8 bar', condition: cold }),
          reading('compression', { found: '9.2 bar', condition: ['cold', 'oiled'] }),
        ],
      }),
      job('2026-01-08', { readings: [reading('compression', { found: '8.9 bar', condition: ['hot'] })] }),
      job('2026-02-01', { state: 'planned', readings: [reading('compression', { condition: ['dry', 'cold'] })] }),
    ]);
    expect(points(made, 'compression').map((one) => one.condition)).toEqual([cold, ['cold', 'oiled'], ['hot']]);
    const last = made.plans[0]?.blanks[0]?.last?.value;
    expect(last?.kind === 'read' ? last.written.text : undefined).toBe('6.8 bar');
  });
});

describe('where a series begins again', () => {
  it('judges what was found by the old limit and what was left by the new', () => {
    const rebore = job('2026-02-01', {
      readings: [reading('bore', { found: '50.12 mm', left: '50.51 mm', instrument: 'micrometer' })],
      repairs: [
        {
          of: 'bore',
          now: 'oversize 0.50 mm',
          standard: range('50.50 to 50.52 mm', 'length'),
          limit: range('50.60 mm max', 'length'),
          at: nowhere,
        },
      ],
    });
    const made = make([rebore]);
    expect(points(made, 'bore').map((one) => one.verdict)).toEqual(['past the limit', 'within standard']);
    expect(made.series[0]?.basis).toEqual([{ from: '2026-02-01', what: 'oversize 0.50 mm' }]);
    expect(made.limits.get('bore')?.limit?.text).toBe('50.60 mm max');
  });
  it('begins again with the part it is measured on', () => {
    const made = make([
      job('2026-01-01', { readings: [reading('bore', { found: '50.06 mm' })] }),
      job('2026-02-01', { parts: [part('barrels')] }),
    ]);
    expect(made.series[0]?.basis).toEqual([{ from: '2026-02-01', what: 'barrels fitted' }]);
  });
});
