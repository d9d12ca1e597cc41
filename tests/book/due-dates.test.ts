// Due dates against a reference calendar, and the due list against any order of files and any later day.
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import type { DueLine } from '../../src/book/book.ts';
import {
  book,
  check,
  content,
  fastener,
  hold,
  interval,
  job,
  maker,
  quantity,
  ridden,
  service,
  ticked,
  work,
} from './records.ts';

const days = fc
  .integer({ min: 0, max: 20_000 })
  .map((count) => Temporal.PlainDate.from('1975-01-01').add({ days: count }).toString());
const months = fc.integer({ min: 1, max: 120 });
const line = (every: string) => [service('one', { every: interval(every) })];
const due = (done: string, every: string, today: string): DueLine | undefined =>
  book([job(done, { services: ['one'] })], today, { records: { maker: maker({ services: line(every) }) } }).due[0];

describe('due dates', () => {
  it('are those of the reference calendar, ends of months and leap years included', () => {
    fc.assert(
      fc.property(days, months, (done, count) => {
        const expected = Temporal.PlainDate.from(done).add({ months: count }, { overflow: 'constrain' }).toString();
        expect(due(done, `${String(count)} months`, done)?.dueDay).toBe(expected);
      }),
    );
  });
  it('only get more pressing as days pass', () => {
    const order = ['not due', 'coming', 'due', 'overdue'];
    fc.assert(
      fc.property(
        days,
        months,
        fc.integer({ min: 0, max: 4000 }),
        fc.integer({ min: 0, max: 400 }),
        (done, count, first, more) => {
          const at = (later: number): number => {
            const today = Temporal.PlainDate.from(done).add({ days: later }).toString();
            return order.indexOf(due(done, `${String(count)} months`, today)?.state ?? '');
          };
          expect(at(first)).toBeGreaterThanOrEqual(0);
          expect(at(first + more)).toBeGreaterThanOrEqual(at(first));
        },
      ),
      { numRuns: 60 },
    );
  });
  it('do not change with the order of the files', () => {
    const jobs = ['2026-01-10', '2026-02-10', '2026-03-10', '2026-04-10'].map((date, index) =>
      job(date, { odometer: ridden(`${String(8000 + index * 150)} mi`), services: index % 2 === 0 ? ['one'] : [] }),
    );
    const made = (list: typeof jobs) =>
      book(list, '2026-06-01', { records: { maker: maker({ services: line('500 mi or 6 months') }) } }).due;
    fc.assert(
      fc.property(fc.shuffledSubarray(jobs, { minLength: 4, maxLength: 4 }), (list) => {
        expect(made(list)).toEqual(made(jobs));
      }),
    );
  });
});

describe('evening 16: head nuts after heat', () => {
  const nut = fastener('cylinder-head-nut', {
    name: 'Cylinder head nuts',
    of: 'cylinder head',
    torqueText: '2.2 kgf·m',
    stages: [quantity('1.1 kgf·m', 'torque'), quantity('2.2 kgf·m', 'torque')],
    order: 'crosswise',
    disturbs: ['tappets'],
  });
  const services = [
    service('head-nuts', {
      item: 'Head nuts, cold',
      action: 'tighten',
      uses: ['cylinder-head-nut'],
      every: interval('3000 mi'),
    }),
  ];
  const words = content({ holdPoints: [hold('before-moving', 5, [check('tappets')])] });
  const built = job('2026-05-01', {
    kind: 'assembly',
    work: [work('tightened', 'cylinder-head-nut')],
    checks: [ticked('tappets')],
  });
  const ride = job('2026-05-09', { kind: 'running-in', heatCycles: 1 });
  const make = (jobs: Parameters<typeof book>[0]) =>
    book(jobs, '2026-05-10', { content: words, records: { maker: maker({ fasteners: [nut], services }) } });
  it('lists them as due cold, with value, stages and order beside', () => {
    const made = make([built, ride]);
    expect(made.due.filter((one) => one.state === 'due').map((one) => one.service.id)).toEqual(['head-nuts']);
    expect(made.due[0]?.why).toMatch(/^tightened 2026-05-01, run hot 2026-05-09: to be tightened again, cold/u);
    expect(made.torque[0]).toMatchObject({
      basis: 'maker',
      fastener: { order: 'crosswise' },
      last: { job: { id: built.id } },
    });
    expect(made.torque[0]?.stages).toHaveLength(2);
  });
  it('asks for the tappets again once they were tightened', () => {
    const sunday = job('2026-05-10', {
      kind: 'service',
      work: [work('tightened', 'cylinder-head-nut')],
      services: ['head-nuts'],
    });
    const made = make([built, ride, sunday]);
    expect(made.holds[0]?.checks[0]).toMatchObject({
      state: 'undone',
      undoneBy: { what: 'cylinder-head-nut tightened' },
    });
    expect(made.due[0]?.state).not.toBe('due');
  });
});
