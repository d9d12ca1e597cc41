// Running in: counted from the last new part, on the clock fitted now; what heat and distance call for, and who did it.
import { describe, expect, test } from 'vitest';
import { evening } from '../evenings/evening.ts';
import { wagtailBook } from '../evenings/wagtail-book.ts';

const built = 'kind: assembly\nodometer: 1000 km\nwork: [{replaced: piston}]';
const ride = (out: number, into: number): string =>
  `kind: running-in\nodometer: ${String(into)} km\nride: {out: ${String(out)} km, in: ${String(into)} km}`;
const sheet = (jobs: Readonly<Record<string, string>>): string =>
  evening('2026-05-20', jobs, { maker: wagtailBook() }).sheet('running-in');

describe('the plan of running-in', () => {
  test('counts from the new piston and says where it is on the clock', () => {
    const text = sheet({ '2026-05-01-built': built, '2026-05-10-ride': ride(1000, 1120) });
    expect(text).toContain('at 1000 km; now 1120 km');
    expect(text).toMatch(/half throttle at most[^\n]*until 1500 km on the clock \| 380 km left/u);
    expect(text).toMatch(/three quarters[^\n]*until 2000 km on the clock \| 880 km left/u);
  });
  test('a mark beyond the last digits of the clock is where the clock will show it, from nothing again', () => {
    const jobs = {
      '2026-05-01-built': 'kind: assembly\nodometer: 99700 km\nwork: [{replaced: piston}]',
      '2026-05-10-ride': ride(99700, 99820),
    };
    const text = sheet(jobs);
    expect(text).toMatch(/half throttle at most[^\n]*until 200 km on the clock \| 380 km left/u);
  });
  test('head nuts are called for after the first heat, until a record names them', () => {
    const hot = { '2026-05-01-built': built, '2026-05-10-ride': ride(1000, 1020) };
    expect(sheet(hot)).toMatch(/Head nuts cold[^\n]*after 1 heat cycle \| now: no record names it since/u);
    const done = sheet({ ...hot, '2026-05-11-nuts': 'work: [{tightened: cylinder-head-nut, to: 22 N·m}]' });
    expect(done).toMatch(/Head nuts cold[^\n]*after 1 heat cycle \| done 11 May 2026/u);
    expect(done).toMatch(/at 1300 km on the clock \| 280 km left/u);
  });
  test('spokes are called for at both of their distances', () => {
    const text = sheet({
      '2026-05-01-built': built,
      '2026-05-10-ride': ride(1000, 1120),
      '2026-05-11-spokes': 'readings: [{item: spokes, found: rung true}]',
    });
    expect(text).toMatch(/Spokes at 50 km and 300 km[^\n]*done 11 May 2026/u);
    expect(text).toMatch(/at 1300 km on the clock \| 180 km left/u);
  });
  test('a new chain counts from the day it went on', () => {
    const text = sheet({
      '2026-05-01-chain': 'odometer: 2000 km\nwork: [{replaced: chain}]',
      '2026-05-10-ride': ride(2000, 2150),
    });
    expect(text).toContain('nothing of the engine is run in, by the records');
    expect(text).toMatch(/New chain: looked at[^\n]*at 2100 km of the machine \| now: no record names it since/u);
  });
  test('an unknown distance stays unknown', () => {
    expect(sheet({ '2026-05-01-built': 'kind: assembly\nwork: [{replaced: piston}]' })).toMatch(
      /half throttle at most[^\n]*not known/u,
    );
  });
});
