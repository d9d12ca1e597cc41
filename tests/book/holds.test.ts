// Proof and hold points: what proves a check, what undoes it, and what never does.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Book } from '../../src/book/book.ts';
import type { Check } from '../../src/records/content-model.ts';
import type { Job, MakerData } from '../../src/records/model.ts';
import {
  book,
  check,
  content,
  fastener,
  hold,
  job,
  limit,
  maker,
  nowhere,
  procedure,
  quantity,
  reading,
  setting,
  ticked,
  work,
} from './records.ts';

function make(checks: readonly Check[], jobs: readonly Job[], data: Partial<MakerData> = {}): Book {
  const procedureList = [procedure('wheel-out', { title: 'Rear wheel out', disturbs: ['chain-slack'] })];
  return book(jobs, '2026-06-01', {
    content: content({ holdPoints: [hold('before-moving', 5, checks)], procedureList }),
    records: { maker: maker(data) },
  });
}
const state = (made: Book, index = 0) => made.holds[0]?.checks[index];

describe('a check', () => {
  const one = [check('spindle', { undoneBy: ['rear wheel', 'rear-spindle-nut'] })];
  const proved = job('2026-01-02', { id: 'proved', checks: [ticked('spindle', { by: 'owner', checkedBy: 'helper' })] });
  it('is not proved until a record proves it', () => {
    const made = make(one, []);
    expect(state(made)?.state).toBe('not proved');
    expect(made.holds[0]).toMatchObject({ clear: false, because: ['spindle'] });
  });
  it('is proved by a record, with who did it and who looked', () => {
    const made = make(one, [proved]);
    expect(state(made)).toMatchObject({
      state: 'proved',
      by: { day: '2026-01-02', hand: 'owner', checkedBy: 'helper' },
    });
    expect(made.holds[0]).toMatchObject({ clear: true, because: [] });
  });
  it('is undone by later work on what it hangs on, and stands again after a new proof', () => {
    const out = job('2026-01-09', { work: [work('removed', 'Rear Wheel')] });
    const undone = make(one, [proved, out]);
    expect(state(undone)).toMatchObject({
      state: 'undone',
      undoneBy: { what: 'Rear Wheel removed' },
      by: { day: '2026-01-02' },
    });
    expect(undone.holds[0]?.because?.[0]).toBe('spindle: proved, then undone by Rear Wheel removed');
    // The first thing that undid it is the reason, not the last.
    const back = job('2026-01-10', { work: [work('refitted', 'rear wheel')] });
    expect(state(make(one, [proved, out, back]))?.undoneBy?.what).toBe('Rear Wheel removed');
    const again = job('2026-01-10', { checks: [ticked('spindle')] });
    expect(state(make(one, [proved, out, again]))?.state).toBe('proved');
  });
  it('is not undone by work of the record that proves it, which comes before its ticks', () => {
    const both = job('2026-01-09', {
      work: [work('removed', 'rear wheel'), work('refitted', 'rear wheel')],
      checks: [ticked('spindle')],
    });
    expect(state(make(one, [both]))?.state).toBe('proved');
  });
  it('is undone by a fastener that came off with a part, and by one side of a thing', () => {
    const withNut = job('2026-01-09', {
      work: [work('removed', 'silencer', { fasteners: [{ id: 'rear-spindle-nut', count: 1 }] })],
    });
    expect(state(make(one, [proved, withNut]))?.state).toBe('undone');
    const plugs = [check('spark', { undoneBy: ['spark plugs'] })];
    const plug = job('2026-01-09', { work: [work('removed', 'left spark plug')] });
    expect(state(make(plugs, [job('2026-01-02', { checks: [ticked('spark')] }), plug]))?.state).toBe('undone');
  });
  it('is undone by what disturbs it, however far along', () => {
    const data = {
      fasteners: [fastener('points-screw', { disturbs: ['points-gap'] })],
      settings: [setting('points-gap', '0.35 mm', { disturbs: ['ignition-timing'] })],
    };
    const timing = [check('ignition-timing')];
    const set = job('2026-01-02', { readings: [reading('ignition-timing', { left: '2.1 mm' })] });
    const screw = job('2026-01-09', { work: [work('loosened', 'points-screw')] });
    expect(state(make(timing, [set, screw], data))).toMatchObject({
      state: 'undone',
      undoneBy: { what: 'points-screw loosened' },
    });
  });
  it('is undone by a gap that was set, not by one that was only looked at', () => {
    const data = { settings: [setting('points-gap', '0.35 mm', { disturbs: ['timing-after-gap'] })] };
    const timing = [check('timing-after-gap')];
    const ticks = job('2026-01-02', { checks: [ticked('timing-after-gap')] });
    const looked = job('2026-01-09', { readings: [reading('points-gap', { found: '0.35 mm', left: '0.35 mm' })] });
    const moved = job('2026-01-09', { readings: [reading('points-gap', { found: '0.30 mm', left: '0.35 mm' })] });
    expect(state(make(timing, [ticks, looked], data))?.state).toBe('proved');
    expect(state(make(timing, [ticks, moved], data))).toMatchObject({
      state: 'undone',
      undoneBy: { what: 'points-gap set' },
    });
  });
  it('is undone by a procedure that disturbs it', () => {
    const ticks = job('2026-01-02', { checks: [ticked('chain-slack')] });
    const made = make([check('chain-slack')], [ticks, job('2026-01-09', { procedures: ['wheel-out'] })]);
    expect(state(made)).toMatchObject({ state: 'undone', undoneBy: { what: 'Rear wheel out' } });
  });
  it('is undone by each start that it was for, and by a lay-up before its own checks', () => {
    const outdoors = [check('outdoors', { undoneBy: ['first start'] })];
    expect(
      state(make(outdoors, [job('2026-01-02', { kind: 'first start', checks: [ticked('outdoors')] })]))?.state,
    ).toBe('undone');
    const bores = [check('bores-oiled', { undoneBy: ['lay-up'] })];
    expect(state(make(bores, [job('2026-01-02', { kind: 'lay-up', checks: [ticked('bores-oiled')] })]))?.state).toBe(
      'proved',
    );
  });
  it('is not undone by a plan', () => {
    expect(
      state(make(one, [proved, job('2026-01-09', { state: 'planned', work: [work('removed', 'rear wheel')] })]))?.state,
    ).toBe('proved');
  });
});

describe('a check proved by a reading', () => {
  const data = { limits: [limit('lining', '4.0 mm', '2.0 mm min', { positions: ['front', 'rear'] })] };
  const lining = [check('lining', { proof: 'value' })];
  const read = (found: Readonly<Record<string, string>>) => [
    job('2026-01-02', { readings: [reading('lining', { found })] }),
  ];
  it('is proved by values inside their limit', () => {
    expect(state(make(lining, read({ front: '3.5 mm', rear: '3.1 mm' }), data))).toMatchObject({
      state: 'proved',
      by: { value: 'front 3.5 mm, rear 3.1 mm' },
    });
  });
  it.each([
    [{ front: '3.5 mm', rear: '1.5 mm' }, '1.5 mm: past the limit'],
    [{ front: '3.5 mm', rear: '2.0 mm' }, '2.0 mm: too close to call by the digits written'],
    [{ front: '3.5 mm' }, 'not read: rear'],
    [{ front: '3.5 mm', rear: '?' }, 'not read: rear'],
    [{ front: '3.5 mm', rear: '9.0 mm' }, '9.0 mm: better than new, not believed'],
  ])('is not proved by %j', (found, why) => {
    expect(state(make(lining, read(found), data))).toMatchObject({ state: 'not proved', why });
  });
  it('is judged by the corrected value', () => {
    const fix = job('2026-01-03', {
      corrections: [
        { record: 'first', item: 'lining', was: '3.1 mm', is: '1.3 mm', why: 'digits swapped', at: nowhere },
      ],
    });
    const first = job('2026-01-02', {
      id: 'first',
      readings: [reading('lining', { found: { front: '3.5 mm', rear: '3.1 mm' } })],
    });
    expect(state(make(lining, [first], data))?.state).toBe('proved');
    expect(state(make(lining, [first, fix], data))?.state).toBe('not proved');
  });
});

describe('a hold point', () => {
  it('asks only what is for this machine, and says why not', () => {
    const made = make(
      [check('tappets', { applies: { stroke: ['four'] } }), check('lamps', { applies: { lamps: ['yes'] } })],
      [job('2026-01-02', { checks: [ticked('lamps')] })],
    );
    expect(state(made)).toMatchObject({ state: 'not for this machine', why: 'this machine: stroke two' });
    expect(made.holds[0]?.clear).toBe(true);
  });
  it('is left out when it is for other machines', () => {
    const points = [hold('plain-petrol', 4, [check('a')], { applies: { lubrication: ['premix'] } })];
    expect(book([], '2026-06-01', { content: content({ holdPoints: points }) }).holds).toEqual([]);
  });
  it('is held while a record could not be read, whatever was proved', () => {
    const points = [hold('before-moving', 5, [check('a')])];
    const made = book([job('2026-01-02', { checks: [ticked('a')] })], '2026-06-01', {
      content: content({ holdPoints: points }),
      records: { unread: [{ file: 'jobs/x.md', codes: ['yaml-broken'] }] },
    });
    expect(made.holds[0]).toMatchObject({ clear: false, because: ['jobs/x.md could not be read: yaml-broken'] });
  });
  it('is held while something is off, though somebody ticked that nothing is', () => {
    const nothing = [check('nothing-left-off')];
    const off = job('2026-01-01', { work: [work('removed', 'clutch cover', { bag: '3' })] });
    const ticks = job('2026-01-02', { checks: [ticked('nothing-left-off')] });
    expect(state(make(nothing, [off, ticks]))).toMatchObject({
      state: 'not proved',
      why: 'on the records still: clutch cover off',
    });
    expect(
      state(make(nothing, [off, job('2026-01-01', { id: 'z', work: [work('refitted', 'clutch cover')] }), ticks]))
        ?.state,
    ).toBe('proved');
  });
  it('evening 7: stays held while a head nut was touched and its torque is not known', () => {
    const data = {
      fasteners: [
        fastener('cylinder-head-nut', { name: 'Head nuts', thread: 'M8x1.25' }),
        fastener('cover-screw', { duty: 'cover' }),
      ],
    };
    const touched = job('2026-01-01', {
      work: [work('tightened', 'cylinder-head-nut', { result: 'by feel' }), work('tightened', 'cover-screw')],
    });
    const made = make(
      [check('fasteners-all-done')],
      [touched, job('2026-01-02', { checks: [ticked('fasteners-all-done')] })],
      data,
    );
    expect(state(made)).toMatchObject({ state: 'not proved', why: 'torque of Head nuts not known' });
    expect(made.torque[0]).toMatchObject({ basis: 'none' });
    expect(made.torque[0]?.value).toBeUndefined();
  });
});

describe('a nut that came off with its part', () => {
  const data = {
    fasteners: [
      fastener('rear-spindle-nut', { name: 'Spindle nut', torqueText: '7.0 kgf·m' }),
      fastener('guard-screw', { duty: 'trim', torqueText: '1 N·m' }),
    ],
  };
  const off = job('2026-01-01', {
    work: [
      work('removed', 'rear wheel', {
        fasteners: [
          { id: 'rear-spindle-nut', count: 1 },
          { id: 'guard-screw', count: 2 },
        ],
      }),
      work('refitted', 'rear wheel'),
    ],
  });
  const ticks = job('2026-01-02', { checks: [ticked('fasteners-all-done')] });
  it('holds the point until a record says that it was tightened', () => {
    expect(state(make([check('fasteners-all-done')], [off, ticks], data))).toMatchObject({
      state: 'not proved',
      why: 'Spindle nut not written as tightened',
    });
    const tight = job('2026-01-01', { id: 'z', work: [work('tightened', 'rear-spindle-nut')] });
    expect(state(make([check('fasteners-all-done')], [off, tight, ticks], data))?.state).toBe('proved');
  });
  it('counts a part put back with its torque beside it', () => {
    const with7 = job('2026-01-01', {
      id: 'z',
      work: [
        work('refitted', 'rear wheel', {
          fasteners: [{ id: 'rear-spindle-nut', count: 1 }],
          torque: quantity('7.0 kgf·m', 'torque'),
        }),
      ],
    });
    expect(state(make([check('fasteners-all-done')], [off, with7, ticks], data))?.state).toBe('proved');
  });
});

describe('evening 2: the bore is oiled, and he comes back on Thursday', () => {
  it('says what is loose, what is next, and what must not be done yet', () => {
    const points = [hold('before-turning', 2, [check('bores-oiled', { proof: 'value' }), check('turned-by-hand')])];
    const sunday = job('2026-05-03', {
      kind: 'waking',
      work: [work('loosened', 'left plug')],
      checks: [ticked('bores-oiled', { value: '8 ml' })],
      stateLeft: ['plug loose, do not start'],
      next: 'turn by the rear wheel',
    });
    const made = book([sunday], '2026-05-07', { content: content({ holdPoints: points }) });
    expect(made.off.open.map((line) => `${line.entry.thing} ${line.state} since ${line.since}`)).toEqual([
      'left plug loose since 2026-05-03',
    ]);
    expect(made.off.next?.text).toBe('turn by the rear wheel');
    expect(made.holds[0]).toMatchObject({ clear: false, because: ['turned-by-hand'] });
    expect(made.holds[0]?.checks[0]).toMatchObject({ state: 'proved', by: { value: '8 ml' } });
  });
});

describe('proof, whatever comes later', () => {
  const things = fc.constantFrom('clutch cover', 'left fork', 'seat', 'battery earth lead', 'tank badge');
  const later = fc.array(fc.record({ thing: things, day: fc.integer({ min: 1, max: 28 }) }), { maxLength: 30 });
  const chain = [check('chain', { undoneBy: ['rear wheel', 'chain'] })];
  const proof = job('2026-01-31', { checks: [ticked('chain')] });
  it('is never undone by unrelated records', () => {
    fc.assert(
      fc.property(later, (records) => {
        const jobs = records.map((one) =>
          job(`2026-02-${String(one.day).padStart(2, '0')}`, { work: [work('removed', one.thing)] }),
        );
        expect(state(make(chain, [...jobs, proof]))?.state).toBe('proved');
      }),
    );
  });
  it('never clears a hold point by undoing', () => {
    fc.assert(
      fc.property(fc.subarray(['chain', 'other']), later, (ticks, records) => {
        const both = [...chain, check('other', { undoneBy: ['seat'] })];
        const before = [job('2026-01-31', { checks: ticks.map((one) => ticked(one)) })];
        const after = records.map((one) =>
          job(`2026-02-${String(one.day).padStart(2, '0')}`, { work: [work('removed', one.thing)] }),
        );
        const [held, now] = [make(both, before).holds[0]?.clear, make(both, [...before, ...after]).holds[0]?.clear];
        expect(held === false && now === true).toBe(false);
      }),
    );
  });
});
