// Proof that runs out by time or distance, and what a person lets pass without proof.
import { describe, expect, it } from 'vitest';
import { plainText } from '../../src/entry/plain-text.ts';
import { pointBlocks } from '../../src/views/hold-point.ts';
import type { Release } from '../../src/records/model.ts';
import { book, check, content, day, hold, interval, job, nowhere, ridden, ticked } from './records.ts';

const points = (goodFor?: string) =>
  content({
    holdPoints: [
      hold('before-road', 6, [
        check('insured', goodFor === undefined ? {} : { goodFor: interval(goodFor) }),
        check('lamps'),
      ]),
    ],
  });
const proved = job('2026-01-01', { odometer: ridden('8000 mi'), checks: [ticked('insured'), ticked('lamps')] });
const release = (of: string, until?: string): Release => ({
  of,
  by: 'owner',
  why: 'pushed to the station',
  at: nowhere,
  ...(until === undefined ? {} : { until: day(until) }),
});

describe('a proof that runs out', () => {
  const hold12 = (today: string) => book([proved], today, { content: points('12 months') }).holds[0];
  it('stands to its last day, and says until when', () => {
    expect(hold12('2027-01-01')).toMatchObject({
      clear: true,
      checks: [{ state: 'proved', goodFor: { day: '2027-01-01', words: '12 months: until 2027-01-01' } }, {}],
    });
  });
  it('is undone the day after, with the reason', () => {
    expect(hold12('2027-01-02')).toMatchObject({
      clear: false,
      checks: [{ state: 'undone' }, { state: 'proved' }],
      because: ['insured: the proof ran out (12 months: until 2027-01-01)'],
    });
  });
  it('runs out by distance too, whichever comes first', () => {
    const later = job('2026-02-01', { odometer: ridden('8501 mi') });
    const state = (list: Parameters<typeof book>[0]) =>
      book(list, '2026-03-01', { content: points('500 mi or 12 months') }).holds[0]?.checks[0];
    expect(state([proved])?.state).toBe('proved');
    expect(state([proved, later])).toMatchObject({ state: 'undone', why: expect.stringMatching(/until 8500\smi/u) });
  });
  it('counts again from a new proof', () => {
    const again = job('2026-12-31', { checks: [ticked('insured')] });
    expect(book([proved, again], '2027-06-01', { content: points('12 months') }).holds[0]?.clear).toBe(true);
  });
  it('is asked about when a ride came after it ran out', () => {
    const ride = (date: string) => job(date, { kind: 'ride', ride: {} });
    const codes = (date: string) =>
      book([proved, ride(date)], '2027-06-01', { content: points('12 months') }).queries.map((one) => one.code);
    expect(codes('2026-12-31')).not.toContain('ridden-while-held');
    expect(codes('2027-01-02')).toContain('ridden-while-held');
  });
});

describe('released by hand', () => {
  it('is printed as released, never as proved or clear', () => {
    const made = book(
      [job('2026-01-01', { checks: [ticked('insured')], releases: [release('lamps', '2026-06-30')] })],
      '2026-06-01',
      { content: points() },
    );
    expect(made.holds[0]).toMatchObject({
      clear: false,
      because: ['lamps: released by hand by owner: pushed to the station; until 2026-06-30'],
    });
    expect(made.holds[0]?.checks[1]).toMatchObject({ state: 'not proved', released: { release: { by: 'owner' } } });
  });
  it('ends with its last day', () => {
    const made = book([job('2026-01-01', { releases: [release('lamps', '2026-05-31')] })], '2026-06-01', {
      content: points(),
    });
    expect(made.holds[0]?.checks[1]?.released).toBeUndefined();
    const lastDay = book([job('2026-01-01', { releases: [release('lamps', '2026-06-01')] })], '2026-06-01', {
      content: points(),
    });
    expect(lastDay.holds[0]?.checks[1]?.released).toBeDefined();
  });
  it('holds for the record it is written in and what comes after, never for what came before', () => {
    const ride = (date: string, releases: readonly Release[] = []) => job(date, { kind: 'ride', ride: {}, releases });
    const whole = [release('before-road')];
    const each = [release('insured'), release('lamps')];
    const codes = (...jobs: readonly ReturnType<typeof ride>[]) =>
      book([job('2026-01-01'), ...jobs], '2026-06-01', { content: points() }).queries.map((one) => one.code);
    for (const releases of [whole, each]) {
      expect(codes(ride('2026-02-01', releases), ride('2026-02-02'))).not.toContain('ridden-while-held');
      expect(codes(ride('2026-01-31'), ride('2026-02-01', releases))).toContain('ridden-while-held');
    }
    const late = book([job('2026-01-01'), job('2026-02-01', { releases: each })], '2026-06-01', { content: points() });
    expect(late.holds[0]?.checks.map((one) => one.released?.release.of)).toEqual(['insured', 'lamps']);
  });
  it('may be of the whole point, and then a ride under it is not asked about', () => {
    const jobs = (until: string) => [
      job('2026-01-01', { releases: [release('before-road', until)] }),
      job('2026-02-01', { kind: 'ride', ride: {} }),
    ];
    const made = book(jobs('2026-12-31'), '2026-06-01', { content: points() });
    expect(made.holds[0]).toMatchObject({ clear: false, released: { release: { of: 'before-road' } } });
    expect(made.queries.map((one) => one.code)).not.toContain('ridden-while-held');
    expect(book(jobs('2026-01-31'), '2026-06-01', { content: points() }).queries.map((one) => one.code)).toContain(
      'ridden-while-held',
    );
  });
  it('stands on the sheet with who, why and until when', () => {
    const made = book(
      [job('2026-01-01', { checks: [ticked('insured')], releases: [release('lamps', '2026-06-30')] })],
      '2026-06-01',
      { content: points('12 months') },
    );
    const [held] = made.holds;
    const context = { book: made, options: {}, say: (words: string) => words, prose: () => [] };
    const list =
      held === undefined
        ? []
        : pointBlocks(context, held).flatMap((block) => (block.type === 'checklist' ? block.items : []));
    expect(list.map((one) => plainText(one.state ?? '').replaceAll(/\s/gu, ' '))).toEqual([
      expect.stringMatching(/^proved 1 January 2026, owner, in “[^”]+”, good until 1 January 2027$/u),
      'Released by hand by owner: pushed to the station; until 30 June 2026',
    ]);
    expect(list.map((one) => one.done)).toEqual([true, undefined]);
  });
  it('says nothing about what is proved', () => {
    const made = book([proved, job('2026-02-01', { releases: [release('lamps')] })], '2026-06-01', {
      content: points(),
    });
    expect(made.holds[0]?.checks[1]?.released).toBeUndefined();
    expect(made.holds[0]?.clear).toBe(true);
  });
});
