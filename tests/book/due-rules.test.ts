// The rules that service schedules go by, each with the smallest records that need it.
import { describe, expect, it } from 'vitest';
import type { Book, DueLine } from '../../src/book/book.ts';
import { printFigure } from '../../src/figure/print.ts';
import type { Job, Machine, ServiceLine } from '../../src/records/model.ts';
import {
  book,
  content,
  interval,
  job,
  limit,
  machine,
  maker,
  nowhere,
  part,
  period,
  quantity,
  reading,
  ridden,
  service,
  source,
  work,
} from './records.ts';

interface Given {
  readonly jobs?: readonly Job[];
  readonly today?: string;
  readonly machine?: Partial<Machine>;
  readonly limits?: Parameters<typeof maker>[0];
}

function due(
  lines: readonly ServiceLine[],
  { jobs = [], today = '2026-06-01', machine: more = {}, limits = {} }: Given,
): Book {
  return book(jobs, today, { records: { machine: machine(more), maker: maker({ services: lines, ...limits }) } });
}

function only(made: Book, id?: string): DueLine {
  const found = made.due.find((line) => id === undefined || line.service.id === id);
  if (found === undefined) throw new Error('no such line');
  return found;
}

const at = (date: string, odometer: string, more: Partial<Job> = {}): Job =>
  job(date, { odometer: ridden(odometer), ...more });
const lastAt = ({ lastDone }: DueLine): string | undefined =>
  lastDone?.machineDistance === undefined ? undefined : printFigure(lastDone.machineDistance).replaceAll(/\s/gu, ' ');
const shown = (line: DueLine): string | undefined =>
  line.dueOnClock === undefined ? undefined : printFigure(line.dueOnClock).replaceAll(/\s/gu, ' ');

describe('1 whichever comes first', () => {
  const line = service('plug', { every: interval('1000 mi or 6 months') });
  it('is due by date while distance is left', () => {
    const made = only(
      due([line], {
        jobs: [at('2026-01-10', '8000 mi', { services: ['plug'] }), at('2026-05-30', '8100 mi')],
        today: '2026-07-11',
      }),
    );
    expect(made).toMatchObject({ state: 'overdue', dueDay: '2026-07-10' });
    expect(made.why).toMatch(
      /^first by date on 2026-07-10, 1 day over; then by distance at 9000\smi on the clock, 900\smi left/u,
    );
  });
  it('is due by distance while days are left', () => {
    const made = only(
      due([line], {
        jobs: [at('2026-01-10', '8000 mi', { services: ['plug'] }), at('2026-02-01', '9001 mi')],
        today: '2026-02-02',
      }),
    );
    expect(made.state).toBe('overdue');
    expect(made.why).toMatch(/^first by distance at 9000\smi on the clock, 1\smi over/u);
  });
  it('is not due on the eve of both, and due on the very day', () => {
    const jobs = [at('2026-01-10', '8000 mi', { services: ['plug'] }), at('2026-02-01', '8200 mi')];
    expect(only(due([line], { jobs, today: '2026-02-02' })).state).toBe('not due');
    expect(only(due([line], { jobs, today: '2026-07-09' })).state).toBe('coming');
    expect(only(due([line], { jobs, today: '2026-07-10' })).state).toBe('due');
  });
});

describe('2 the first service once, and again after a rebuild', () => {
  const line = service('gearbox', {
    first: { at: interval('500 mi'), after: 'running-in' },
    every: interval('2000 mi'),
    partOf: 'engine',
  });
  const rebuilt = at('2026-03-01', '8214 mi', {
    repairs: [{ of: 'bore', now: 'oversize 0.50 mm', at: work('removed', 'x').at }],
  });
  it('counts from the rebuild, not from an older service', () => {
    const made = only(due([line], { jobs: [at('2026-01-01', '8200 mi', { services: ['gearbox'] }), rebuilt] }));
    expect(shown(made)).toBe('8714 mi');
  });
  it('counts from the rebuild where the record of it did the service too: that oil is the first of the new engine', () => {
    const both = { ...rebuilt, services: ['gearbox'] };
    expect(shown(only(due([line], { jobs: [both] })))).toBe('8714 mi');
  });
  it('counts from the first record of running-in where nobody wrote the rebuild itself', () => {
    const running = (date: string, reads: string) => at(date, reads, { kind: 'running-in' });
    const jobs = [running('2026-03-01', '8214 mi'), running('2026-03-08', '8300 mi')];
    expect(shown(only(due([line], { jobs })))).toBe('8714 mi');
  });
  it('goes over to the interval once it is done', () => {
    const made = only(due([line], { jobs: [rebuilt, at('2026-04-01', '8700 mi', { services: ['gearbox'] })] }));
    expect(shown(made)).toBe(`10${'\u202f'}700 mi`.replaceAll(/\s/gu, ' '));
  });
  it('leaves alone what is not part of the engine', () => {
    const chain = service('chain', { every: interval('500 mi'), partOf: 'final drive' });
    const made = only(due([chain], { jobs: [at('2026-01-01', '8000 mi', { services: ['chain'] }), rebuilt] }));
    expect(shown(made)).toBe('8500 mi');
  });
  it('begins with the first service on a machine known from new', () => {
    const made = only(due([line], { jobs: [at('1969-06-01', '120 mi')], today: '1969-06-02' }));
    expect(shown(made)).toBe('500 mi');
  });
  it('counts a piston as a rebuild and its rings not', () => {
    const before = at('2026-01-01', '8000 mi', { services: ['gearbox'] });
    const ring = at('2026-02-01', '8100 mi', { parts: [part('piston ring left')] });
    const piston = at('2026-02-01', '8100 mi', { parts: [part('piston +0.50 left')] });
    expect(shown(only(due([line], { jobs: [before, ring] })))).toBe('10 000 mi');
    expect(shown(only(due([line], { jobs: [before, piston] })))).toBe('8600 mi');
  });
});

describe('3 one-time and periodic are different, and both may be by hours', () => {
  const hours = (date: string, text: string, more: Partial<Job> = {}) =>
    job(date, { readings: [reading('running-hours', { found: text })], ...more });
  it('is done once and stays done', () => {
    const line = service('spokes', { first: { at: interval('50 mi'), after: 'new' } });
    const made = only(due([line], { jobs: [at('2026-01-01', '60 mi', { services: ['spokes'] })] }));
    expect(made.state).toBe('done once');
  });
  it('counts running hours from the hour meter', () => {
    const line = service('oil', { every: interval('20 h') });
    const jobs = [hours('2026-01-01', '100 h', { services: ['oil'] }), hours('2026-02-01', '121 h')];
    expect(only(due([line], { jobs })).state).toBe('overdue');
    expect(only(due([line], { jobs: [...jobs.slice(0, 1), hours('2026-02-01', '110 h')] })).state).toBe('not due');
  });
});

describe('4 nested services', () => {
  it('counts everything under a service as done with it, however deep', () => {
    const lines = [
      service('yearly', { includes: ['six-monthly'], every: interval('12 months') }),
      service('six-monthly', { includes: ['chain'], every: interval('6 months') }),
      service('chain', { every: interval('1 months') }),
    ];
    const made = due(lines, { jobs: [at('2026-05-20', '8000 mi', { services: ['yearly'] })], today: '2026-06-01' });
    expect(made.due.map((line) => [line.service.id, line.lastDone?.day])).toEqual([
      ['chain', '2026-05-20'],
      ['six-monthly', '2026-05-20'],
      ['yearly', '2026-05-20'],
    ]);
  });
});

describe('5 yearly only if no distance service was done that year', () => {
  const lines = [
    service('yearly', { every: interval('12 months'), onlyIfNoDistanceService: true }),
    service('service-6000', { every: interval('3000 mi') }),
  ];
  it('waits a year from a distance service', () => {
    const jobs = [
      at('2025-01-01', '8000 mi', { services: ['yearly'] }),
      at('2025-11-01', '9000 mi', { services: ['service-6000'] }),
    ];
    expect(only(due(lines, { jobs }), 'yearly')).toMatchObject({ state: 'not due', dueDay: '2026-11-01' });
  });
  it('is due when there was none', () => {
    const jobs = [at('2025-01-01', '8000 mi', { services: ['yearly'] })];
    expect(only(due(lines, { jobs }), 'yearly')).toMatchObject({ state: 'overdue', dueDay: '2026-01-01' });
  });
});

describe('6 after the end of the chart from a given column', () => {
  const line = service('chart', {
    first: { at: interval('1000 mi'), after: 'new' },
    every: interval('3000 mi'),
    thenFrom: interval('3000 mi'),
  });
  it('keeps to the columns, done early or late', () => {
    expect(shown(only(due([line], { jobs: [at('2026-01-01', '5800 mi', { services: ['chart'] })] })))).toBe('9000 mi');
    expect(shown(only(due([line], { jobs: [at('2026-01-01', '6300 mi', { services: ['chart'] })] })))).toBe('9000 mi');
  });
});

describe('7 an odd second step', () => {
  const line = service('valves', {
    first: { at: interval('1000 km'), after: 'new' },
    second: interval('6000 km'),
    every: interval('5000 km'),
  });
  const inKilometres = { clock: [period('clock', ['2020-01-01', '0 km'])] };
  it('comes second on the clock, then the interval from there', () => {
    const first = at('2020-03-01', '1050 km', { services: ['valves'] });
    expect(shown(only(due([line], { jobs: [first], machine: inKilometres, today: '2020-04-01' })))).toBe('6000 km');
    // Done at that very distance it is behind, and not due again the same day.
    const late = at('2020-12-01', '6000 km', { services: ['valves'] });
    expect(shown(only(due([line], { jobs: [late], machine: inKilometres, today: '2021-01-01' })))).toBe('11 000 km');
    const second = at('2021-03-01', '6100 km', { services: ['valves'] });
    expect(shown(only(due([line], { jobs: [first, second], machine: inKilometres, today: '2021-04-01' })))).toBe(
      '11 100 km',
    );
  });
});

describe('8 by wear alone', () => {
  const line = service('shoes', { action: 'renew', wear: 'lining' });
  const limits = { limits: [limit('lining', '4.0 mm', '2.0 mm min', { of: 'brake shoes' })] };
  it.each([
    ['3.1 mm', 'at its limit'],
    ['1.5 mm', 'overdue'],
    ['2.0 mm', 'due'],
  ])('read %s it is %s', (text, state) => {
    expect(
      only(due([line], { jobs: [job('2026-01-01', { readings: [reading('lining', { found: text })] })], limits }))
        .state,
    ).toBe(state);
  });
  it('is not known while it was never measured, and starts again with new shoes', () => {
    expect(only(due([line], { limits })).state).toBe('not known');
    const jobs = [
      job('2026-01-01', { readings: [reading('lining', { found: '1.5 mm' })] }),
      job('2026-01-08', { parts: [part('brake shoes')] }),
    ];
    expect(only(due([line], { jobs, limits })).state).toBe('at its limit');
  });
});

describe('9 by time alone', () => {
  it('does not care how little it was ridden', () => {
    const line = service('brake-hose', { every: interval('48 months') });
    const jobs = [at('2022-05-31', '8000 mi', { services: ['brake-hose'] }), at('2026-05-01', '8001 mi')];
    expect(only(due([line], { jobs }))).toMatchObject({ state: 'overdue', dueDay: '2026-05-31' });
  });
});

describe('10 severe use, item by item', () => {
  const lines = [
    service('air-filter', { every: interval('3000 mi'), severe: { dust: interval('500 mi') } }),
    service('plug', { every: interval('3000 mi') }),
    service('wheel-bearings', { every: interval('9000 mi'), severe: { water: 'at once' } }),
  ];
  const done = at('2026-01-01', '8000 mi', { services: ['air-filter', 'plug', 'wheel-bearings'] });
  it('shortens only the item that it is written for', () => {
    const made = due(lines, { jobs: [done, at('2026-02-01', '8100 mi', { ride: { weather: 'dry, dust' } })] });
    expect(shown(only(made, 'air-filter'))).toBe('8500 mi');
    expect(shown(only(made, 'plug'))).toBe('11 000 mi');
  });
  it('is due at once after water, until it is done', () => {
    const wet = at('2026-02-01', '8100 mi', { ride: { whatHappened: 'through the ford, water to the hubs' } });
    expect(only(due(lines, { jobs: [done, wet] }), 'wheel-bearings').state).toBe('due');
    const again = at('2026-02-02', '8101 mi', { services: ['wheel-bearings'] });
    expect(only(due(lines, { jobs: [done, wet, again] }), 'wheel-bearings').state).toBe('not due');
  });
});

describe('11 the frame number decides which line', () => {
  const ranged = (id: string, frames: { from?: string; to?: string }) =>
    service(id, { every: interval('2500 mi'), source: { ...source, frames } });
  const lines = [
    ranged('early', { to: 'LP175-03999' }),
    ranged('late', { from: 'LP175-04000' }),
    ranged('other', { from: 'LP200-00001' }),
  ];
  it('keeps the lines for this frame', () => {
    expect(due(lines, {}).due.map((line) => line.service.id)).toEqual(['late']);
  });
  it('keeps all, and says so, while the number is not known', () => {
    const made = due(lines, { machine: { numbers: [] } });
    expect(made.due).toHaveLength(3);
    expect(made.due[0]?.why).toContain('frame number is not known');
  });
});

describe('12 after storage', () => {
  const line = service('fluids', { every: interval('24 months'), afterStorage: true });
  const done = at('2025-10-01', '8000 mi', { services: ['fluids'] });
  it('is to be done before use while laid up, due on return, and clear once done', () => {
    const stored = job('2025-11-01', { kind: 'lay-up' });
    const back = job('2026-04-01', { kind: 'return' });
    expect(only(due([line], { jobs: [done, stored] })).state).toBe('coming');
    expect(only(due([line], { jobs: [done, stored, back] })).state).toBe('due');
    expect(
      only(due([line], { jobs: [done, stored, back, at('2026-04-02', '8000 mi', { services: ['fluids'] })] })).state,
    ).toBe('not due');
  });
});

describe('13 head nuts again after the first heat cycle', () => {
  const line = service('re-torque', { action: 'tighten', uses: ['cylinder-head-nut'] });
  const tight = job('2026-03-01', { work: [work('tightened', 'cylinder-head-nut')] });
  const hot = job('2026-03-08', { heatCycles: 1 });
  it('is due after the heat and not before', () => {
    expect(only(due([line], { jobs: [tight] })).state).toBe('not due');
    // A later record of something else is no heat.
    expect(only(due([line], { jobs: [tight, job('2026-03-05')] })).state).toBe('not due');
    const made = only(due([line], { jobs: [tight, hot] }));
    expect(made).toMatchObject({ state: 'due' });
    expect(made.why).toContain('run hot 2026-03-08: to be tightened again, cold');
    expect(only(due([line], { jobs: [tight, hot, job('2026-03-09', { services: ['re-torque'] })] })).state).toBe(
      'not due',
    );
  });
});

describe('14 grace', () => {
  const jobs = (id: string) => [at('2026-01-01', '8000 mi', { services: [id] }), at('2026-02-01', '9090 mi')];
  it('lets a service run over by its share', () => {
    const line = service('air-filter', { every: interval('1000 mi'), grace: 0.1 });
    expect(only(due([line], { jobs: jobs('air-filter') })).state).toBe('due');
    expect(only(due([{ ...line, grace: 0.05 }], { jobs: jobs('air-filter') })).state).toBe('overdue');
  });
  it.each(['Gearbox oil', 'Front brake', 'Rear tyre'])('never for %s, whatever is written', (item) => {
    const line = service('line', { item, every: interval('1000 mi'), grace: 0.1 });
    expect(only(due([line], { jobs: jobs('line') })).state).toBe('overdue');
  });
});

describe('15 unknown history', () => {
  it('is due now for what ages, inspect for the rest', () => {
    const lines = [
      service('brake-fluid', { every: interval('24 months'), unknown: 'due now' }),
      service('steering', { every: interval('6000 mi') }),
    ];
    const made = due(lines, { jobs: [at('2026-01-01', '8000 mi')] });
    expect(only(made, 'brake-fluid')).toMatchObject({
      state: 'due',
      why: 'no record of it: an unknown history counts as due now',
    });
    expect(only(made, 'steering')).toMatchObject({ state: 'not known', why: 'no record of it: inspect, then decide' });
  });
});

describe('16 log resolution', () => {
  const line = service('plug', { every: interval('1000 mi or 12 months') });
  it('takes the distance between two readings', () => {
    const jobs = [at('2026-01-01', '8000 mi'), job('2026-01-11', { services: ['plug'] }), at('2026-01-21', '8200 mi')];
    expect(shown(only(due([line], { jobs })))).toBe('9100 mi');
  });
  it('goes by date alone without a reading', () => {
    const made = only(due([line], { jobs: [job('2026-01-11', { services: ['plug'] })], machine: { clock: [] } }));
    expect(made).toMatchObject({ state: 'not due', dueDay: '2027-01-11' });
    expect(made.dueAt).toBeUndefined();
    expect(made.why).toContain('no reading of the clock to count the distance from');
  });
});

describe('over a changed clock', () => {
  it('goes on from the true distance and says it on the clock fitted now', () => {
    const clock = [
      period('first', ['1969-05-01', '0 mi'], { to: ['2026-03-14', '8106 mi'], state: 'dead' }),
      period('second', ['2026-03-14', '23418 mi']),
    ];
    const line = service('plug', { every: interval('1000 mi') });
    const jobs = [at('2026-01-01', '8000 mi', { services: ['plug'] }), at('2026-05-01', '23500 mi')];
    const made = only(due([line], { jobs, machine: { clock } }));
    expect(made.dueAt === undefined ? '' : printFigure(made.dueAt)).toMatch(/9000\smi/u);
    expect(shown(made)).toBe('24 312 mi');
  });
});

describe('the list as a whole', () => {
  it('puts overdue first and the most overdue of those at the top', () => {
    const lines = [
      service('c-later', { every: interval('60 months') }),
      service('a-over', { every: interval('12 months') }),
      service('b-far-over', { every: interval('6 months') }),
    ];
    const jobs = [at('2025-01-01', '8000 mi', { services: lines.map((line) => line.id) })];
    expect(due(lines, { jobs }).due.map((line) => line.service.id)).toEqual(['b-far-over', 'a-over', 'c-later']);
  });
  it('fills from a general schedule what the maker does not speak of, and says so', () => {
    const general = service('oil', { every: interval('1000 mi'), unknown: 'due now' });
    const schedules = [
      { id: 'two-stroke', title: 'Two-stroke', applies: { stroke: ['two'] }, services: [general] },
      { id: 'four-stroke', title: 'Four-stroke', applies: { stroke: ['four'] }, services: [service('tappets')] },
    ];
    const without = book([], '2026-06-01', { content: content({ schedules }) });
    expect(without.due.map((line) => [line.service.id, line.service.basis])).toEqual([['oil', 'general']]);
    const made = book([], '2026-06-01', {
      records: { maker: maker({ services: [service('own')] }) },
      content: content({ schedules }),
    });
    expect(
      made.due.map((line) => [line.service.id, line.service.basis] as const).toSorted(([a], [b]) => (a < b ? -1 : 1)),
    ).toEqual([
      ['oil', 'general'],
      ['own', 'maker'],
    ]);
  });
  it('leaves out general lines on what the maker speaks of under another id, and on what the machine has not', () => {
    const services = ['brakes', 'oil-pump', 'tyre-age', 'fuel-hose'].map((id) =>
      service(id, { item: id.replace('-', ' ') }),
    );
    const schedules = [{ id: 'general', title: 'General', applies: {}, services }];
    const made = (makers: readonly string[], lubrication: 'pump' | 'premix'): readonly string[] =>
      book([], '2026-06-01', {
        records: {
          machine: machine({ features: { ...machine().features, lubrication } }),
          maker: maker({ services: makers.map((id) => service(id, { item: id.replaceAll('-', ' ') })) }),
        },
        content: content({ schedules }),
      })
        .due.map((line) => line.service.id)
        .toSorted();
    expect(made(['front-brake-shoes'], 'pump')).toEqual(['front-brake-shoes', 'fuel-hose', 'oil-pump', 'tyre-age']);
    expect(made(['drive-chain'], 'premix')).toEqual(['brakes', 'drive-chain', 'fuel-hose', 'tyre-age']);
  });
});

describe('a ride in the record of a service', () => {
  const lines = [
    service('chain', { every: interval('500 mi'), severe: { rain: 'at once' } }),
    service('oil', { every: interval('2000 mi') }),
  ];
  const miles = (out: string, back: string, more: Partial<Job['ride']> = {}) => ({
    out: ridden(out),
    in: ridden(back),
    ...more,
  });
  it('comes after it, as the ride comes after the checks of its record: it was serviced, then ridden home', () => {
    const home = job('2026-02-01', {
      kind: 'service',
      services: ['chain', 'oil'],
      ride: miles('8000 mi', '8040 mi', { weather: 'rain' }),
    });
    const made = due(lines, { jobs: [home] });
    expect(shown(only(made, 'oil'))).toBe('10 000 mi');
    expect(lastAt(only(made, 'oil'))).toBe('8000 mi');
    expect(only(made, 'chain').state).toBe('due');
  });
  it('comes before it where the odometer of the record is what the ride came back with: the oil was warmed', () => {
    const warmed = job('2026-02-01', {
      kind: 'service',
      services: ['chain', 'oil'],
      odometer: ridden('8040 mi'),
      ride: miles('8000 mi', '8040 mi', { weather: 'rain' }),
    });
    const made = due(lines, { jobs: [warmed] });
    expect(shown(only(made, 'oil'))).toBe('10 040 mi');
    expect(only(made, 'chain').state).toBe('not due');
  });
  it('comes before it in a record of a ride, unless its odometer is from before', () => {
    const ride = { kind: 'ride' as const, services: ['chain'], ride: miles('8000 mi', '8040 mi', { weather: 'rain' }) };
    expect(only(due(lines, { jobs: [job('2026-02-01', ride)] }), 'chain').state).toBe('not due');
    const before = job('2026-02-01', { ...ride, odometer: ridden('8000 mi') });
    expect(only(due(lines, { jobs: [before] }), 'chain').state).toBe('due');
    expect(shown(only(due(lines, { jobs: [before] }), 'chain'))).toBe('8500 mi');
  });
  it('is any other ride’s business as ever', () => {
    const done = at('2026-01-01', '8000 mi', { services: ['chain'] });
    const wet = job('2026-01-02', { kind: 'ride', ride: miles('8000 mi', '8010 mi', { weather: 'rain' }) });
    expect(only(due(lines, { jobs: [done, wet] }), 'chain').state).toBe('due');
  });
});

describe('a fluid that was changed', () => {
  const lines = [
    service('engine-oil-change', { every: interval('2000 mi'), action: 'renew', uses: ['engine-oil'] }),
    service('engine-oil-level', { every: interval('200 mi'), action: 'inspect', uses: ['engine-oil'] }),
  ];
  const oil = { id: 'engine-oil', name: 'Engine oil', quantity: quantity('2 l', 'volume'), source, at: nowhere };
  const state = (...jobs: readonly Job[]) =>
    only(due(lines, { jobs, limits: { fluids: [oil] } }), 'engine-oil-change').lastDone?.day;
  const drained = work('drained', 'engine oil');
  const filled = (text?: string) =>
    work('filled', 'engine-oil', text === undefined ? {} : { quantity: quantity(text, 'volume') });
  it('is done without a tick: drained and filled, nearly the whole of it, or replaced', () => {
    expect(state(at('2026-01-01', '8000 mi', { work: [drained, filled()] }))).toBe('2026-01-01');
    expect(
      state(at('2026-01-01', '8000 mi', { work: [drained] }), at('2026-02-01', '8000 mi', { work: [filled('1 l')] })),
    ).toBe('2026-02-01');
    expect(state(at('2026-01-01', '8000 mi', { work: [filled('1.9 l')] }))).toBe('2026-01-01');
    expect(state(at('2026-01-01', '8000 mi', { work: [filled('3 imp pt')] }))).toBe('2026-01-01');
    expect(state(at('2026-01-01', '8000 mi', { work: [work('replaced', 'Engine oil')] }))).toBe('2026-01-01');
  });
  it('is not done by topping up, by draining alone, or twice by one draining', () => {
    expect(state(at('2026-01-01', '8000 mi', { work: [filled('300 ml')] }))).toBeUndefined();
    expect(state(at('2026-01-01', '8000 mi', { work: [filled()] }))).toBeUndefined();
    expect(state(at('2026-01-01', '8000 mi', { work: [drained] }))).toBeUndefined();
    const changed = at('2026-01-01', '8000 mi', { work: [drained, filled()] });
    expect(state(changed, at('2026-03-01', '8100 mi', { work: [filled('200 ml')] }))).toBe('2026-01-01');
  });
  it('is no look at the level, and no other fluid', () => {
    const made = due(lines, { jobs: [at('2026-01-01', '8000 mi', { work: [drained, filled()] })] });
    expect(only(made, 'engine-oil-level').lastDone).toBeUndefined();
    expect(
      state(at('2026-01-01', '8000 mi', { work: [work('drained', 'gearbox oil'), work('filled', 'gearbox oil')] })),
    ).toBeUndefined();
  });
  it('is counted once where it was ticked as well', () => {
    const jobs = [at('2026-01-01', '8000 mi', { services: ['engine-oil-change'], work: [drained, filled()] })];
    expect(shown(only(due(lines, { jobs, limits: { fluids: [oil] } }), 'engine-oil-change'))).toBe('10 000 mi');
  });
});
