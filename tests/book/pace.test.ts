// When a distance will be reached at the rider's own pace: a span, robust against winters and gaps.
import { describe, expect, it } from 'vitest';
import type { DueLine } from '../../src/book/book.ts';
import { daysBetween } from '../../src/quantity/day-arithmetic.ts';
import type { Job } from '../../src/records/model.ts';
import { book, day, interval, job, maker, ridden, service } from './records.ts';

const at = (date: string, odometer: string, more: Partial<Job> = {}): Job =>
  job(date, { odometer: ridden(odometer), ...more });
const line = service('plug', { every: interval('1000 mi') });
const due = (jobs: readonly Job[], today: string): DueLine | undefined =>
  book(jobs, today, { records: { maker: maker({ services: [line] }) } }).due[0];

describe('projected at the rider’s pace', () => {
  const monthly = (from: number, miles: readonly number[]): readonly Job[] =>
    miles.map((one, index) => at(`2026-${String(from + index).padStart(2, '0')}-01`, `${String(one)} mi`));
  it('is near for a steady rider', () => {
    const jobs = [at('2026-01-01', '8000 mi', { services: ['plug'] }), ...monthly(2, [8100, 8200, 8300, 8400, 8500])];
    const made = due(jobs, '2026-06-01')?.projected;
    const days = [made?.early, made?.likely, made?.late].map((one) =>
      one === undefined ? 0 : daysBetween(day('2026-06-01'), one),
    );
    expect(days[0]).toBeGreaterThan(130);
    expect(days[2]).toBeLessThan(175);
    expect(days).toEqual(days.toSorted((a, b) => a - b));
  });
  it('widens with an uneven rider', () => {
    const jobs = [at('2026-01-01', '8000 mi', { services: ['plug'] }), ...monthly(2, [8020, 8220, 8240, 8480, 8500])];
    const made = due(jobs, '2026-06-01')?.projected;
    expect(made?.late !== undefined && daysBetween(made.early, made.late) > 60).toBe(true);
  });
  it('does not take a winter laid up for a slow rider', () => {
    const ridden100 = [
      at('2025-08-01', '7700 mi'),
      at('2025-09-01', '7800 mi'),
      at('2025-10-01', '7900 mi'),
      at('2025-11-01', '8000 mi', { kind: 'lay-up', services: ['plug'] }),
    ];
    const back = [
      at('2026-04-01', '8000 mi', { kind: 'return' }),
      at('2026-05-01', '8100 mi'),
      at('2026-06-01', '8200 mi'),
    ];
    const made = due([...ridden100, ...back], '2026-06-01')?.projected;
    expect(made && daysBetween(day('2026-06-01'), made.likely)).toBeLessThan(270);
  });
  it('says nothing with too few months, or once the distance is past', () => {
    expect(
      due([at('2026-05-01', '8000 mi', { services: ['plug'] }), at('2026-06-01', '8100 mi')], '2026-06-01')?.projected,
    ).toBeUndefined();
    const past = [at('2026-01-01', '8000 mi', { services: ['plug'] }), ...monthly(2, [8300, 8600, 8900, 9200, 9500])];
    expect(due(past, '2026-06-01')?.projected).toBeUndefined();
  });
});
