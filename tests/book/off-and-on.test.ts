// Off and on: what is open, what closed it, and what is in which bag.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Verb } from '../../src/records/model.ts';
import { book, fastener, job, maker, work } from './records.ts';

const open = (made: ReturnType<typeof book>) => made.off.open.map((line) => `${line.state}: ${line.entry.thing}`);

describe('off and on', () => {
  it('keeps a removed part off until it is refitted, under whichever of its names', () => {
    const data = maker({ fasteners: [fastener('rear-spindle-nut', { name: 'Rear spindle nut' })] });
    const off = [
      job('2024-05-04', { work: [work('loosened', 'Rear Spindle Nuts'), work('removed', 'rear wheel', { bag: '3' })] }),
    ];
    const before = book(off, '2024-06-01', { records: { maker: data } });
    expect(open(before)).toEqual(['loose: Rear Spindle Nuts', 'off: rear wheel']);
    expect(before.off.bags).toMatchObject([{ bag: '3', emptied: false }]);
    const on = job('2024-05-18', { work: [work('refitted', 'the rear wheel'), work('tightened', 'rear-spindle-nut')] });
    const after = book([...off, on], '2024-06-01', { records: { maker: data } });
    expect(open(after)).toEqual([]);
    expect(after.off.bags).toMatchObject([{ bag: '3', emptied: true }]);
    expect(after.off.closed.map((line) => line.byJob.id)).toEqual([on.id, on.id]);
  });

  it('keeps two pieces of one name apart by their bags', () => {
    const pieces = [
      job('2024-05-04', { work: [work('removed', 'piston', { bag: '1' }), work('removed', 'piston', { bag: '2' })] }),
    ];
    const one = book(
      [...pieces, job('2024-05-18', { work: [work('refitted', 'piston', { fromBag: '2' })] })],
      '2024-06-01',
    );
    expect(one.off.open.map((line) => line.entry.bag)).toEqual(['1']);
    const unnamed = book([...pieces, job('2024-05-18', { work: [work('refitted', 'piston')] })], '2024-06-01');
    expect(unnamed.off.open.map((line) => line.entry.bag)).toEqual(['2']);
  });

  it('counts what of a lot went back', () => {
    const made = book(
      [
        job('2024-05-04', { work: [work('removed', 'cover screw', { count: 9, bag: '4' })] }),
        job('2024-05-18', { work: [work('refitted', 'cover screw', { count: 7 })] }),
      ],
      '2024-06-01',
    );
    expect(made.off.open).toMatchObject([{ state: 'off', remaining: 2 }]);
  });

  it('says a lost part is off, in no bag, until another is fitted', () => {
    const lost = [
      job('2024-05-04', { work: [work('removed', 'clip link', { bag: '17' })] }),
      job('2024-05-18', { work: [work('lost', 'clip link')] }),
    ];
    const made = book(lost, '2024-06-01');
    expect(made.off.open.map((line) => line.entry.verb)).toEqual(['lost']);
    expect(made.off.bags).toMatchObject([{ bag: '17', emptied: true }]);
    expect(open(book([...lost, job('2024-06-01', { work: [work('replaced', 'clip link')] })], '2024-06-02'))).toEqual(
      [],
    );
  });

  it('looks for a lost part in no bag', () => {
    const off = job('2024-05-04', {
      work: [work('removed', 'shim', { bag: '3' }), work('removed', 'clip', { bag: '4' })],
    });
    const lost = job('2024-05-05', { work: [work('lost', 'shim', { bag: '3' })] });
    const made = book([off, lost], '2024-06-01');
    expect(open(made)).toEqual(['off: clip', 'off: shim']);
    expect(made.off.bags.map(({ bag, contents }) => [bag, contents.length])).toEqual([
      ['3', 0],
      ['4', 1],
    ]);
  });

  it('takes a count off the oldest lines first, and no more than was counted', () => {
    const screws = (...counts: readonly (number | undefined)[]) =>
      job('2024-05-04', {
        work: counts.map((count) => work('removed', 'cover screw', count === undefined ? {} : { count })),
      });
    const left = (off: ReturnType<typeof screws>, count: number) =>
      book([off, job('2024-05-18', { work: [work('refitted', 'cover screw', { count })] })], '2024-06-01').off.open.map(
        ({ entry, remaining }) => remaining ?? entry.count ?? 'not counted',
      );
    expect(left(screws(3, 2), 2)).toEqual([1, 2]);
    expect(left(screws(3, 2), 4)).toEqual([1]);
    // What nobody counted stays open when the count went to the line before it.
    expect(left(screws(4, undefined), 2)).toEqual([2, 'not counted']);
    expect(left(screws(4, undefined), 4)).toEqual(['not counted']);
    expect(left(screws(4, undefined), 5)).toEqual([]);
  });

  it('does not count what is only planned', () => {
    expect(
      open(book([job('2024-05-04', { state: 'planned', work: [work('removed', 'head')] })], '2024-06-01')),
    ).toEqual([]);
  });

  it('keeps a part that was sent out off until it is back and refitted', () => {
    const out = [
      job('2024-05-04', { work: [work('removed', 'barrels')] }),
      job('2024-05-05', { work: [work('sent out', 'barrels', { to: 'the reborer' })] }),
      job('2024-06-05', { work: [work('come back', 'barrels')] }),
    ];
    expect(open(book(out.slice(0, 2), '2024-06-01'))).toEqual(['off: barrels', 'sent out: barrels']);
    expect(open(book(out, '2024-07-01'))).toEqual(['off: barrels']);
  });

  it('takes the state left and the next step from the newest records that have them', () => {
    const made = book(
      [
        job('2024-05-04', { stateLeft: ['plug loose'], next: 'turn it' }),
        job('2024-05-06', { stateLeft: ['engine on the bench'] }),
        job('2024-05-05'),
      ],
      '2024-06-01',
    );
    expect(made.off.stateLeft.map((one) => one.text)).toEqual(['engine on the bench']);
    expect(made.off.next?.text).toBe('turn it');
  });

  it('lets the words go that it was left with, once it was ridden', () => {
    const left = job('2024-05-04', { stateLeft: ['chain off'] });
    const words = (...later: Parameters<typeof book>[0]): readonly string[] =>
      book([left, ...later], '2024-06-01').off.stateLeft.map(({ text }) => text);
    expect(words(job('2024-05-05'))).toEqual(['chain off']);
    expect(words(job('2024-05-05'), job('2024-05-06', { ride: {} }))).toEqual([]);
    expect(words(job('2024-05-05'), job('2024-05-06', { ride: {}, state: 'planned' }))).toEqual(['chain off']);
  });
});

describe('a bag that is filled again', () => {
  const off = (date: string) => job(date, { kind: 'strip', work: [work('removed', 'seat', { bag: '1' })] });
  const on = (date: string) => job(date, { work: [work('refitted', 'seat', { fromBag: '1' })] });
  const asked = (...jobs: Parameters<typeof book>[0]): boolean =>
    book(jobs, '2026-06-01').queries.some(({ code }) => code === 'bag-half-emptied');
  it('was not left half full by whoever emptied it before', () => {
    expect(asked(off('2026-01-01'), on('2026-01-02'), off('2026-01-03'))).toBe(false);
    const tank = job('2026-01-01', { kind: 'strip', work: [work('removed', 'tank', { bag: '1' })] });
    expect(asked(tank, off('2026-01-01'), on('2026-01-02'))).toBe(true);
  });
});

const pairs: readonly (readonly [Verb, Verb])[] = [
  ['removed', 'refitted'],
  ['removed', 'replaced'],
  ['loosened', 'tightened'],
  ['drained', 'filled'],
  ['disconnected', 'connected'],
  ['opened', 'closed'],
  ['sent out', 'come back'],
  ['fitted temporarily', 'taken away'],
];
const action = fc.record({
  pair: fc.constantFrom(...pairs),
  thing: fc.constantFrom('head', 'barrels', 'rear wheel', 'battery lead', 'gearbox-oil'),
  bag: fc.option(fc.integer({ min: 1, max: 9 }).map(String), { nil: undefined }),
  day: fc.integer({ min: 1, max: 28 }),
});

describe('off and on, whatever the sequence', () => {
  it('leaves nothing open once everything taken off went back', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 40 }), (actions) => {
        const off = actions.map(({ pair, thing, bag, day: at }) =>
          job(`2024-05-${String(at).padStart(2, '0')}`, {
            work: [work(pair[0], thing, bag === undefined ? {} : { bag })],
          }),
        );
        const on = actions.map(({ pair, thing, bag }, index) =>
          job('2024-06-01', {
            id: `on-${String(index).padStart(3, '0')}`,
            work: [work(pair[1], thing, bag === undefined ? {} : { fromBag: bag })],
          }),
        );
        const made = book([...off, ...on], '2024-07-01');
        expect(open(made)).toEqual([]);
        expect(made.off.bags.every((bag) => bag.emptied)).toBe(true);
        expect(made.off.closed).toHaveLength(off.length);
      }),
    );
  });

  it('does not change with the order of the files', () => {
    const shuffled = fc.array(action, { maxLength: 25 }).chain((actions) => {
      const jobs = actions.map(({ pair, thing, bag, day: at }, index) =>
        job(`2024-05-${String(at).padStart(2, '0')}`, {
          id: `r-${String(index)}`,
          work: [work(pair[index % 2 === 0 ? 0 : 1], thing, bag === undefined ? {} : { bag })],
        }),
      );
      return fc.tuple(fc.constant(jobs), fc.shuffledSubarray(jobs, { minLength: jobs.length, maxLength: jobs.length }));
    });
    fc.assert(
      fc.property(shuffled, ([jobs, others]) => {
        const { records: _a, jobs: _b, odometer: _c, ...one } = book(jobs, '2024-07-01');
        const { records: _d, jobs: _e, odometer: _f, ...other } = book(others, '2024-07-01');
        expect(other).toEqual(one);
      }),
    );
  });
});
