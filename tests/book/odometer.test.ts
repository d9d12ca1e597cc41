// The odometer: the machine's distance over its clocks, between readings, and the three words.
import { describe, expect, it } from 'vitest';
import { Temporal } from 'temporal-polyfill';
import type { Book } from '../../src/book/book.ts';
import { inUnit } from '../../src/quantity/quantity.ts';
import { mile } from '../../src/quantity/units.ts';
import type { InstrumentPeriod, Job } from '../../src/records/model.ts';
import { book, day, interval, job, machine, maker, nowhere, period, ridden, service } from './records.ts';

const at = (date: string, odometer: string, more: Partial<Job> = {}): Job =>
  job(date, { odometer: ridden(odometer), ...more });
const withClock = (jobs: readonly Job[], clock: readonly InstrumentPeriod[]): Book =>
  book(jobs, '2026-06-01', { records: { machine: machine({ clock }) } });
const miles = (made: Book): readonly (number | undefined)[] =>
  made.odometer.readings.map((one) =>
    one.machine === undefined ? undefined : Math.round(inUnit(one.machine.quantity, mile) * 10) / 10,
  );

describe('distance of the machine', () => {
  it('goes on from the old clock when a used one is fitted', () => {
    const clock = [
      period('first', ['1969-05-01', '0 mi'], { to: ['2026-03-14', '8106 mi'], state: 'dead' }),
      period('second', ['2026-03-14', '23418 mi']),
    ];
    const made = withClock(
      [at('2026-01-01', '8000 mi'), at('2026-03-14', '23418 mi'), at('2026-05-01', '23500 mi')],
      clock,
    );
    expect(miles(made)).toEqual([0, 8000, 8106, 8106, 8106, 8188]);
    expect(made.odometer.now.machine && Math.round(inUnit(made.odometer.now.machine.quantity, mile))).toBe(8188);
    expect(made.odometer.statement.word).toBe('not actual');
    expect(made.odometer.statement.why).toMatch(/clock changed on 2026-03-14: 8106\smi out, 23\s418\smi in/u);
  });
  it('begins a new round of the digits', () => {
    const rolled = withClock(
      [at('2025-01-01', '99990 mi'), at('2025-02-01', '12 mi')],
      [period('one', ['1969-05-01', '0 mi'], { state: 'rolled over' })],
    );
    expect(miles(rolled)).toEqual([0, 99990, 100012]);
    expect(rolled.odometer.statement).toMatchObject({ word: 'exceeds mechanical limit' });
  });
  it('tells what the clock fitted now will show: over the change of clocks, and over a new round', () => {
    const due = (jobs: readonly Job[], clock: readonly InstrumentPeriod[]): readonly (number | undefined)[] => {
      const lines = maker({ services: [service('chain', { every: interval('100 mi') })] });
      const [line] = book(jobs, '2026-06-01', { records: { machine: machine({ clock }), maker: lines } }).due;
      return [line?.dueAt, line?.dueOnClock].map((one) => one && Math.round(inUnit(one.quantity, mile)));
    };
    const served = (date: string, odometer: string): Job => at(date, odometer, { services: ['chain'] });
    const changed = [
      period('first', ['1969-05-01', '0 mi'], { to: ['2026-03-14', '8106 mi'], state: 'dead' }),
      period('second', ['2026-03-14', '23418 mi']),
    ];
    expect(due([served('2026-04-01', '23450 mi')], changed)).toEqual([8238, 23550]);
    const lower = [
      period('first', ['1969-05-01', '0 mi'], { to: ['2026-03-14', '8106 mi'], state: 'dead' }),
      period('second', ['2026-03-14', '40 mi']),
    ];
    expect(due([served('2026-04-01', '50 mi')], lower)).toEqual([8216, 150]);
    const rolled = [period('one', ['1969-05-01', '0 mi'], { state: 'rolled over' })];
    expect(due([served('2025-01-01', '99950 mi')], rolled)).toEqual([100050, 50]);
    expect(due([at('2025-01-01', '99990 mi'), served('2025-02-01', '12 mi')], rolled)).toEqual([100112, 112]);
    // Due before a clock that began at 40 mi was fitted: it has never shown that, neither below nought nor near its last digits.
    expect(due([served('2026-01-01', '7900 mi'), at('2026-04-01', '50 mi')], lower)).toEqual([8000, undefined]);
  });
  it('reads the old clock once more on the day that it was taken off', () => {
    const clock = [
      period('first', ['1969-05-01', '0 mi'], { to: ['2026-03-14', '8106 mi'] }),
      period('second', ['2026-03-14', '23418 mi']),
    ];
    const made = withClock([at('2026-03-14', '8100 mi'), at('2026-05-01', '23500 mi')], clock);
    expect(miles(made)).toEqual([0, 8100, 8106, 8106, 8188]);
  });
  it('takes the same reading twice for no new round of the digits', () => {
    const rolled = [period('one', ['1969-05-01', '0 mi'], { state: 'rolled over' })];
    const twice = [at('2025-01-01', '99990 mi'), at('2025-02-01', '12 mi'), at('2025-02-02', '12 mi')];
    expect(miles(withClock(twice, rolled))).toEqual([0, 99990, 100012, 100012]);
  });
  it('is not known on a clock that began at nothing and that nobody has read since', () => {
    const clock = [period('one', ['1974-05-01', '0 km'])];
    const lines = maker({ services: [service('chain', { every: interval('500 km') })] });
    const made = (jobs: readonly Job[]): Book =>
      book(jobs, '2026-06-01', { records: { machine: machine({ clock }), maker: lines } });
    expect(made([]).odometer.now).toEqual({ day: '2026-06-01' });
    expect(made([]).due[0]?.left).toBeUndefined();
    expect(made([at('2026-05-01', '300 km')]).odometer.now.clock).toBeDefined();
    const bought = [period('one', ['2026-05-01', '7512 mi'])];
    expect(withClock([], bought).odometer.now.clock).toBeDefined();
  });
  it('adds a clock in kilometres to one in miles', () => {
    const clock = [
      period('km', ['2020-01-01', '0 km'], { to: ['2021-01-01', '1609.344 km'] }),
      period('mi', ['2021-01-01', '0 mi']),
    ];
    expect(miles(withClock([at('2021-06-01', '500 mi')], clock)).at(-1)).toBe(1500);
  });
  it('does not count a reading that went back', () => {
    expect(
      miles(
        withClock(
          [at('2025-01-01', '900 mi'), at('2025-02-01', '800 mi'), at('2025-03-01', '950 mi')],
          [period('one', ['2020-01-01', '0 mi'])],
        ),
      ),
    ).toEqual([0, 900, undefined, 950]);
  });
  it('does not know the distance on a clock that died unread', () => {
    const dead = [period('one', ['1962-03-01', '0 km'], { state: 'dead' })];
    const silent = withClock([job('2026-01-01')], dead);
    expect(silent.odometer.now.machine).toBeUndefined();
    expect(silent.odometer.now.clock).toBeUndefined();
    const stood = withClock([at('1970-01-01', '9000 km'), at('2026-01-01', '9000 km')], dead);
    expect(miles(stood).map((one) => one === undefined)).toEqual([false, false, true]);
    expect(stood.odometer.now.machine).toBeUndefined();
  });
  it('knows differences, not the whole, on the clock after one that died unread', () => {
    const clock = [
      period('one', ['1962-03-01', '0 km'], { to: ['2020-01-01'], state: 'dead' }),
      period('two', ['2020-01-01', '100 km']),
    ];
    const made = withClock([at('2026-01-01', '400 km')], clock);
    expect(made.odometer.now.machine).toBeUndefined();
    expect(made.odometer.machineAt(day('2023-01-01'))).toBeUndefined();
    const due = book([at('2026-01-01', '400 km', { services: ['oil'] }), at('2026-03-01', '500 km')], '2026-06-01', {
      records: {
        machine: machine({ clock }),
        maker: maker({ services: [service('oil', { every: interval('1000 km') })] }),
      },
    }).due[0];
    expect(due?.left?.distance && Math.round(inUnit(due.left.distance.quantity, mile) * 1.609344)).toBe(900);
    // Done on the clock that died: how far it is since then nobody knows.
    const across = book([at('1970-01-01', '50 km', { services: ['oil'] }), at('2026-03-01', '500 km')], '2026-06-01', {
      records: {
        machine: machine({ clock }),
        maker: maker({ services: [service('oil', { every: interval('1000 km') })] }),
      },
    }).due[0];
    expect([across?.state, across?.left?.distance]).toEqual(['not known', undefined]);
  });
  it('does not count what a wrong drive counted', () => {
    const clock = [
      period('wrong', ['2020-01-01', '0 mi'], { to: ['2021-01-01', '5000 mi'], state: 'wrong drive' }),
      period('right', ['2021-01-01', '5000 mi']),
    ];
    expect(miles(withClock([at('2020-06-01', '2000 mi'), at('2021-06-01', '5100 mi')], clock))).toEqual([
      undefined,
      undefined,
      undefined,
      0,
      100,
    ]);
  });
  it('takes a corrected odometer', () => {
    const wrong = at('2025-01-01', '9800 mi', { id: 'wrong' });
    const right = at('2025-01-02', '8910 mi', {
      corrections: [
        { record: 'wrong', item: 'odometer', was: '9800 mi', is: '8900 mi', why: 'digits swapped', at: nowhere },
      ],
    });
    expect(miles(withClock([wrong, right], [period('one', ['2020-01-01', '0 mi'])]))).toEqual([0, 8900, 8910]);
  });
  it('reads a ride out and in', () => {
    const ride = at('2025-01-01', '8216 mi', { ride: { out: ridden('8216 mi'), in: ridden('8224 mi') } });
    expect(miles(withClock([ride], [period('one', ['2020-01-01', '0 mi'])]))).toEqual([0, 8216, 8224]);
  });
});

describe('between readings', () => {
  const made = withClock(
    [at('2024-02-20', '1000 mi'), at('2024-03-11', '1200 mi')],
    [period('one', ['2024-02-20', '1000 mi'])],
  );
  it('is straight by the calendar, over the end of February', () => {
    for (const text of ['2024-02-28', '2024-02-29', '2024-03-01', '2024-03-10']) {
      const days = Temporal.PlainDate.from('2024-02-20').until(text, { largestUnit: 'days' }).days;
      const figure = made.odometer.machineAt(day(text));
      expect(figure && inUnit(figure.quantity, mile)).toBeCloseTo(1000 + days * 10, 6);
    }
  });
  it('is the reading itself on its day, and the later of two on one day', () => {
    const two = withClock(
      [
        at('2024-02-20', '1000 mi'),
        at('2024-03-01', '1100 mi'),
        at('2024-03-01', '1130 mi'),
        at('2024-03-11', '1200 mi'),
      ],
      [period('one', ['2024-02-20', '1000 mi'])],
    );
    const on = (text: string): number | undefined => {
      const figure = two.odometer.machineAt(day(text));
      return figure && Math.round(inUnit(figure.quantity, mile));
    };
    expect(['2024-02-20', '2024-03-01', '2024-03-06', '2024-03-11'].map(on)).toEqual([1000, 1130, 1165, 1200]);
  });
  it('says nothing before the first and after the last', () => {
    expect(made.odometer.machineAt(day('2024-02-19'))).toBeUndefined();
    expect(made.odometer.machineAt(day('2024-03-12'))).toBeUndefined();
  });
});

describe('the statement', () => {
  it.each([
    ['as stated by the owner', [period('one', ['1969-05-01', '0 mi'])], 'the records hold no reading of it'],
    ['not known', [], 'No clock is described'],
    ['not actual', [period('one', ['2024-05-01', '8106 mi'])], 'not known before 2024-05-01'],
    [
      'not actual',
      [period('one', ['1969-05-01', '0 mi'], { to: ['2020-01-01', '10 mi'] }), period('two', ['2021-01-01', '10 mi'])],
      'no clock from 2020-01-01 to 2021-01-01',
    ],
    [
      'not actual',
      [
        period('one', ['1969-05-01', '0 mi'], { to: ['2020-01-01', '8000 mi'], state: 'reset' }),
        period('one', ['2020-01-01', '0 mi']),
      ],
      'was set back',
    ],
    [
      'not actual',
      [period('one', ['1969-05-01', '0 mi'], { to: ['2020-01-01'] }), period('two', ['2020-01-01', '0 mi'])],
      'is not known',
    ],
  ] as const)('%s', (word, clock, why) => {
    const made = withClock([], clock);
    expect(made.odometer.statement.word).toBe(word);
    if (why !== undefined) expect(made.odometer.statement.why).toContain(why);
  });
  it('is actual only where readings bear it out from the beginning', () => {
    const clock = [period('one', ['1969-05-01', '0 mi'])];
    expect(withClock([at('1969-09-01', '800 mi'), at('2025-01-01', '9000 mi')], clock).odometer.statement.word).toBe(
      'actual',
    );
    const late = withClock([at('2026-02-07', '12481 mi')], clock).odometer.statement;
    expect(late.word).toBe('as stated by the owner');
    expect(late.why).toMatch(/since 1969-05-01; the first reading in the records is 12.481\smi on 2026-02-07/u);
    const back = withClock([at('1969-09-01', '800 mi'), at('1970-01-01', '700 mi')], clock).odometer.statement;
    expect(back).toMatchObject({ word: 'as stated by the owner' });
  });
  it('makes no day of a month, and no reading of none', () => {
    const [first] = [period('one', ['1958-06-01'])];
    const clock = [{ ...first, from: { day: day('1958-06-01'), whole: 'month' as const } }];
    const { why } = withClock([at('2026-02-07', '12481 mi')], clock).odometer.statement;
    expect(why).toContain('on or before 1958-06 is not written down');
    expect(why).not.toMatch(/1958-06-01|unknown reading/);
  });
});
