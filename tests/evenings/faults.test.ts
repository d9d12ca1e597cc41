// Evenings 3 and 5: no spark and grey points; a first run whose revs hang. From the record to the sentence that is needed.
import { expect, test } from 'vitest';
import { diagnose } from '../../src/book/faults/diagnosis.ts';
import { evening, machineFile } from './evening.ts';

const maker = `splitpin: 1
source: {title: Workshop book, edition: 1974}
settings:
  - {id: points-gap, name: Points gap, of: points, value: 0.35 mm, range: 0.30 to 0.40 mm, condition: full lift, disturbs: [ignition-timing], page: 30}
  - {id: ignition-timing, name: Ignition timing, of: points, value: 2.1 mm, range: 2.0 to 2.2 mm, page: 31}
`;

const pointsEvening = {
  '2026-11-07-oiled': 'kind: waking\nchecks: [bores-oiled]',
  '2026-11-13-points': `title: Points
kind: setting up
findings:
  - {id: no-spark, saw: "no spark, points are grey", weight: stops, became: open}
readings:
  - {item: points-gap, found: 0.50 mm, left: 0.35 mm, condition: full lift}
tests:
  - {test: spark, saw: yellow, note: weak and yellow after filing}`,
};

test('points evening: another condenser next, not the coil, and the timing to be looked at again', () => {
  const bike = evening('2026-11-14', pointsEvening, { machine: machineFile(), maker });
  const found = diagnose(bike.book, { looked: true });
  expect(found.standing).toBe('long stored');
  expect(found.seen.map(({ test: one, outcome }) => `${one.id}=${outcome?.saw ?? ''}`)).toContain('spark=thin');
  const ignition = found.groups.find(({ group }) => group === 'ignition')?.causes ?? [];
  expect(ignition[0]?.id).toBe('condenser-bad');
  const kicked = diagnose(bike.book, { looked: true, saw: [] });
  const wanted = [...kicked.next, ...kicked.held].toSorted((a, b) => b.worth - a.worth).map(({ id }) => id);
  expect(wanted[0]).toBe('condenser-swap');
  expect(wanted.indexOf('coil-swap')).toBe(-1);
  const timing = ignition.find(({ id }) => id === 'timing-wrong');
  expect(timing?.known.map(({ why }) => why)).toEqual(['Points gap (“Points”, 2026-11-13)']);
  const sheet = bike.sheet('next-test');
  expect(sheet).toContain('Another condenser');
  expect(sheet).toContain('Ignition timing wrong? worked on since: Points gap (“Points”, 13 November 2026)');
  expect(sheet).toContain('weak and yellow after filing');
});

test('points evening: what is held names what holds it', () => {
  const bike = evening('2026-11-14', pointsEvening, { machine: machineFile(), maker });
  const { held } = diagnose(bike.book);
  const swap = held.find(({ id }) => id === 'condenser-swap');
  expect(swap?.held[0]).toBe('Before the engine is turned at all');
  expect(swap?.held.length).toBeGreaterThan(1);
  expect(diagnose(bike.book).next.map(({ id }) => id)).not.toContain('condenser-swap');
});

const run = {
  '2026-11-13-first-run': `title: First run
kind: first start
heat cycles: 1
run log:
  - {minute: 0, saw: "third kick, ran on the bottle, white smoke"}
  - {minute: 1, saw: "leaks at the tap; idle fine at first, revs hang when hot"}
  - {minute: 2, saw: "off by the switch"}`,
};

test('run log: hangs when hot is air drawn in, do not ride, and the seal test with its tools', () => {
  const bike = evening('2026-11-14', run);
  const found = diagnose(bike.book, { looked: true });
  expect(found.seen.map(({ test: one, outcome }) => `${one.id}=${outcome?.saw ?? ''}`)).toContain('idle=hangs-high');
  const air = found.groups
    .find(({ group }) => group === 'air leak')
    ?.causes.slice(0, 2)
    .map(({ id }) => id);
  expect(air?.toSorted()).toEqual(['inlet-leak', 'seal-ignition-side']);
  const sheet = bike.sheet('next-test');
  expect(sheet).toMatch(/WARNING.*Revs hang high|revs hang high when shut, worse when hot: air drawn in/iu);
  expect(sheet).toContain('do not ride');
  expect(sheet).toContain('Crankcase pressure test');
  expect(sheet).toContain('hand pump, low-pressure gauge, blanking bungs, soapy water');
});

test('a later ride after the seal was renewed makes the finding history', () => {
  const bike = evening('2026-11-14', {
    ...run,
    '2026-11-14-seal': 'work:\n  - {replaced: crank seals}\n  - {replaced: inlet rubber}',
  });
  const seen = diagnose(bike.book).seen.map(({ test: one, outcome }) => `${one.id}=${outcome?.saw ?? ''}`);
  expect(seen).not.toContain('idle=hangs-high');
});
