// What a job's sheet needs: torque rows, blanks with their last like reading, the next bag; and what it all cost.
import { describe, expect, it } from 'vitest';
import type { Book } from '../../src/book/book.ts';
import { printFigure } from '../../src/figure/print.ts';
import { formatMoney } from '../../src/quantity/money-arithmetic.ts';
import type { Job, MakerData } from '../../src/records/model.ts';
import {
  book,
  content,
  fastener,
  interval,
  job,
  limit,
  machine,
  maker,
  money,
  nowhere,
  part,
  period,
  procedure,
  quantity,
  reading,
  ridden,
  service,
  setting,
  work,
} from './records.ts';

const plain = (text: string): string => text.replaceAll(/\s/gu, ' ');
const withMaker = (data: Partial<MakerData>, jobs: readonly Job[] = []): Book =>
  book(jobs, '2026-06-01', { records: { maker: maker(data) } });

describe('torque rows', () => {
  it('print the maker’s value in the maker’s unit, with its source', () => {
    const nut = fastener('cylinder-head-nut', {
      torqueText: '2.2 kgf·m',
      stages: [quantity('1.1 kgf·m', 'torque'), quantity('2.2 kgf·m', 'torque')],
    });
    const [row] = withMaker({ fasteners: [nut] }).torque;
    expect(row?.basis).toBe('maker');
    expect(row?.value && plain(printFigure(row.value.low))).toBe('2.2 kgf·m');
    expect(row?.value?.high).toBeUndefined();
    expect(row?.value?.low.origin).toMatchObject({ kind: 'written', source: 'Workshop book, 1968, page 9' });
    expect(row?.stages.map((stage) => plain(printFigure(stage)))).toEqual(['1.1 kgf·m', '2.2 kgf·m']);
  });
  it('keep both ends of a range', () => {
    const [row] = withMaker({ fasteners: [fastener('nut', { torqueText: '10 to 14 N·m' })] }).torque;
    expect([row?.value?.low, row?.value?.high].map((one) => one && plain(printFigure(one)))).toEqual([
      '10 N·m',
      '14 N·m',
    ]);
  });
  it('compute a band for a cover only', () => {
    const screw = { thread: 'M6x1.0', class: '4.8', into: 'aluminium' };
    const rows = withMaker({
      fasteners: [
        fastener('cover', { ...screw, duty: 'cover' }),
        fastener('spindle', screw),
        fastener('cover-without-thread', { duty: 'cover' }),
      ],
    }).torque;
    expect(rows.map((row) => row.basis)).toEqual(['computed', 'none', 'none']);
    const { low, high } = rows[0]?.value ?? {};
    expect(low?.origin.kind).toBe('worked out');
    expect((low?.quantity ?? 0) > 0 && (high?.quantity ?? 0) > (low?.quantity ?? 0)).toBe(true);
  });
  it('evening 8: mark a repaired hole, and compute nothing for it', () => {
    const stud = fastener('brake-plate-stud', { torqueText: '1.2 kgf·m' });
    const cover = fastener('cover', { thread: 'M6x1.0', class: '4.8', into: 'aluminium', duty: 'cover' });
    const insert = job('2026-03-01', {
      id: 'insert',
      repairs: [
        { of: 'brake-plate-stud', now: 'wire thread insert M8', why: 'stripped at 12 N·m', at: nowhere },
        { of: 'cover', now: 'wire thread insert', at: nowhere },
      ],
    });
    const [row, other] = withMaker({ fasteners: [stud, cover] }, [insert]).torque;
    expect(row).toMatchObject({ basis: 'maker', changed: { now: 'wire thread insert M8' } });
    expect(row?.changed?.by.id).toBe('insert');
    expect(row?.note).toContain('look at it at the next removal');
    expect(other?.basis).toBe('none');
  });
});

describe('a planned job', () => {
  const data = maker({
    limits: [limit('bore', '50.00 to 50.02 mm', '50.10 mm max', { positions: ['left', 'right'] })],
    settings: [setting('points-gap', '0.35 mm', { rangeText: '0.30 to 0.40 mm' })],
  });
  const steps = [
    {
      do: 'lift the barrels',
      off: ['barrels'],
      fasteners: [],
      bag: true,
      cautions: [],
      measure: ['bore', 'cam-lift'],
      set: [],
      applies: {},
    },
    {
      do: 'set the tappets',
      off: [],
      fasteners: [],
      bag: false,
      cautions: [],
      measure: [],
      set: ['tappets'],
      applies: { stroke: ['four'] },
    },
  ];
  const set = {
    do: 'set the gap',
    off: [],
    fasteners: [],
    bag: false,
    cautions: [],
    measure: [],
    set: ['points-gap'],
    applies: {},
  };
  const procedureList = [
    procedure('top-end', { steps, assembly: [set] }),
    procedure('other', { applies: { stroke: ['four'] }, measure: ['bore'] }),
  ];
  const before = job('2026-01-01', {
    work: [work('removed', 'head', { bag: '7' })],
    readings: [reading('bore', { found: { left: '50.03 mm', right: '50.04 mm' } })],
  });
  const plan = job('2026-07-01', {
    id: 'top-end-2026',
    state: 'planned',
    procedures: ['top-end', 'other'],
    readings: [reading('bore', { found: { left: '50.06 mm' } }), reading('compression', {})],
  });
  const made = book([before, plan], '2026-06-01', { content: content({ procedureList }), records: { maker: data } });
  it('has only what is for this machine', () => {
    expect(made.plans[0]?.procedures.map((one) => [one.id, one.steps.length])).toEqual([['top-end', 1]]);
  });
  it('has its blanks in the printed order with permanent ids', () => {
    expect(made.plans[0]?.blanks.flatMap((one) => [one.foundId, one.leftId])).toEqual([
      'top-end-2026/bore/left/found',
      'top-end-2026/bore/left/left',
      'top-end-2026/bore/right/found',
      'top-end-2026/bore/right/left',
      'top-end-2026/points-gap//found',
      'top-end-2026/points-gap//left',
      'top-end-2026/compression//found',
      'top-end-2026/compression//left',
    ]);
  });
  it('shows the last like reading, and judges what is filled in', () => {
    const [left, right, gap] = made.plans[0]?.blanks ?? [];
    expect(left).toMatchObject({
      unit: 'mm',
      verdict: 'worn, usable',
      last: { day: '2026-01-01', value: { written: { text: '50.03 mm' } } },
    });
    expect(right?.verdict).toBeUndefined();
    expect(right?.last?.value).toMatchObject({ written: { text: '50.04 mm' } });
    expect(gap).toMatchObject({ unit: 'mm', name: 'points-gap' });
  });
  it('asks for the positions read before where the book names none', () => {
    const read = job('2026-01-01', {
      readings: [reading('tappets', { found: { left: '0.05 mm', right: '0.06 mm' } })],
    });
    const next = job('2026-07-01', { state: 'planned', readings: [reading('tappets', {})] });
    expect(book([read, next], '2026-06-01').plans[0]?.blanks.map((one) => one.position)).toEqual(['left', 'right']);
  });
  it('gives the next bag number', () => {
    expect(made.plans[0]?.bagFrom).toBe(8);
  });
});

describe('costs', () => {
  const paid = (
    amount: string,
    group = 'buying',
    kind: 'paid' | 'refund' | 'deposit' | 'deposit back' = 'paid',
    what = 'the machine',
  ) => ({ kind, amount: money(amount), for: what, group, at: nowhere });
  const costs = (jobs: readonly Job[]) => book(jobs, '2026-06-01').costs;
  it('add by group and year, refunds and deposits taken off', () => {
    const made = costs([
      job('2024-05-04', {
        money: [paid('180.00 GBP'), paid('20.00 GBP', 'fees'), paid('40.00 GBP', 'parts', 'deposit', 'old crank')],
      }),
      job('2025-05-04', {
        money: [paid('40.00 GBP', 'parts', 'deposit back', 'old crank'), paid('5.00 GBP', 'fees', 'refund')],
      }),
    ]);
    expect(formatMoney(made.total)).toMatch(/195.00\sGBP/u);
    expect(made.byGroup.map((one) => [one.group, one.total.minor])).toEqual([
      ['buying', 18000],
      ['fees', 1500],
      ['parts', 0],
    ]);
    expect(made.byYear.map((one) => [one.year, one.total.minor])).toEqual([
      ['2024', 24000],
      ['2025', -4500],
    ]);
  });
  it('count a part once when its record pays for it too', () => {
    const parts = [part('gasket set', { price: money('12.00 GBP') }), part('ring', { price: money('8.00 GBP') })];
    expect(costs([job('2024-05-04', { parts })]).total.minor).toBe(2000);
    expect(
      costs([job('2024-05-04', { parts, money: [paid('20.00 GBP', 'parts', 'paid', 'order of May')] })]).total.minor,
    ).toBe(2000);
    const one = costs([job('2024-05-04', { parts, money: [paid('15.00 GBP', 'parts', 'paid', 'gasket set')] })]);
    expect(one.total.minor).toBe(2300);
    expect(one.leftOut).toEqual([expect.stringContaining('gasket set')]);
  });
  it('leave out what is wanted, returned, or was paid for on another machine', () => {
    const parts = [
      part('a', { price: money('1.00 GBP'), state: 'wanted' }),
      part('b', { price: money('2.00 GBP'), state: 'returned' }),
      part('carburettor', { price: money('4.00 GBP'), movedFrom: 'donor' }),
      part('d', { price: money('8.00 GBP'), state: 'ordered' }),
    ];
    const made = costs([job('2024-05-04', { parts })]);
    expect(made.total.minor).toBe(800);
    expect(made.leftOut.join('; ')).toContain('came from donor');
  });
  it('count work sent out once, whether its bill came with it or when it came back', () => {
    const out = job('2024-05-04', {
      work: [work('sent out', 'barrels', { to: 'the reborer', price: money('90.00 GBP') })],
    });
    expect(costs([out]).total.minor).toBe(9000);
    const back = job('2024-06-04', {
      work: [work('come back', 'barrels')],
      money: [paid('90.00 GBP', 'machining', 'paid', 'rebore')],
    });
    expect(costs([out, back]).total.minor).toBe(9000);
    const account = { ...out, money: [paid('30.00 GBP', 'machining', 'paid', 'rebore, on account')] };
    const rest = { ...back, money: [paid('60.00 GBP', 'machining', 'paid', 'rebore, the rest')] };
    expect(costs([account, rest]).total.minor).toBe(9000);
    // What was paid on account is part of the price and not on top of it.
    expect(costs([account, { ...rest, money: [] }]).total.minor).toBe(9000);
  });
  it('change currencies at the stated rate, and name what has none', () => {
    const made = costs([job('2024-05-04', { money: [paid('10.00 EUR'), paid('30.00 USD')] })]);
    expect(made.total.minor).toBe(850);
    expect(made.leftOut).toEqual([expect.stringMatching(/30.00\sUSD.*no rate for USD/u)]);
  });
});

describe('evenings', () => {
  it('11 and 12: a mile clock changed, a kilometre book: due on the clock fitted now, the book’s words kept', () => {
    const clock = [
      period('old', ['1969-05-01', '0 mi'], { to: ['2026-03-14', '8106 mi'], state: 'dead' }),
      period('used', ['2026-03-14', '23418 mi']),
    ];
    const line = service('plug', { every: interval('3000 km or 6 months') });
    const jobs = [
      job('2026-02-01', { odometer: ridden('8000 mi'), services: ['plug'] }),
      job('2026-05-01', { odometer: ridden('23500 mi') }),
    ];
    const made = book(jobs, '2026-06-01', {
      records: { machine: machine({ clock }), maker: maker({ services: [line] }) },
    });
    const [due] = made.due;
    expect(due?.dueOnClock && plain(printFigure(due.dueOnClock))).toBe('25 176 mi');
    expect(due?.why).toContain('3000 km or 6 months');
    expect(made.odometer.statement.why).toMatch(/8106\smi out, 23\s418\smi in/u);
  });
  it('15: put aside for months: what is open, in which bags, what is next', () => {
    const strip = job('2025-03-01', {
      kind: 'strip',
      state: 'put aside',
      work: [
        work('removed', 'cylinder head', { bag: '1' }),
        work('removed', 'barrels', { bag: '2' }),
        work('opened', 'crankcase'),
        work('drained', 'gearbox-oil'),
      ],
      parts: [part('gasket set', { state: 'ordered' })],
      stateLeft: ['engine split on the bench'],
      next: 'measure the crank',
    });
    const made = book([strip], '2026-05-01');
    expect(made.off.open.map((line) => `${line.entry.thing}: ${line.state}`)).toEqual([
      'cylinder head: off',
      'barrels: off',
      'crankcase: open',
      'gearbox-oil: empty',
    ]);
    expect(made.off.bags.map((bag) => [bag.bag, bag.contents.map((line) => line.entry.thing)])).toEqual([
      ['1', ['cylinder head']],
      ['2', ['barrels']],
    ]);
    expect([made.off.stateLeft[0]?.text, made.off.next?.text]).toEqual([
      'engine split on the bench',
      'measure the crank',
    ]);
  });
  it('13: what was in the lost bag', () => {
    const off = job('2025-11-01', {
      work: [
        work('removed', 'kickstart cover', {
          bag: '17',
          fasteners: [
            { id: 'cover-screw-30', count: 5 },
            { id: 'cover-screw-45', count: 4 },
          ],
        }),
      ],
    });
    const made = book([off], '2026-03-01');
    expect(made.off.bags[0]?.contents[0]?.entry.fasteners).toEqual([
      { id: 'cover-screw-30', count: 5 },
      { id: 'cover-screw-45', count: 4 },
    ]);
  });
});
