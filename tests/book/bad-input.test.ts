// What leads nowhere or cannot be: each named with its place, and the nearest names where there are some.
import { describe, expect, it } from 'vitest';
import { evening, machineFile } from '../evenings/evening.ts';

const maker = `splitpin: 1
source: {title: Workshop book, page: "3"}
fasteners: [{id: rear-spindle-nut, name: Rear spindle nut, thread: M14x1.5, torque: 60 N·m}]
services: [{id: chain-oil, item: Chain, do: lubricate, every: 500 km}]
`;
const problems = (lines: string, book = maker): readonly string[] =>
  evening('2026-06-01', { '2026-05-01-a': lines }, { maker: book })
    .problems.filter((one) => one.severity === 'problem')
    .map((one) => `${one.code} ${one.message} ${one.hint ?? ''}`);

describe('names that lead nowhere', () => {
  it.each([
    ['a fastener', 'work: [{loosened: rear-spindle-nutt}]', 'rear-spindle-nut'],
    ['a procedure', 'procedures: [wheel-rear-ot]', 'wheel-rear-out'],
    ['a check', 'checks: [bores-oild]', 'bores-oiled'],
    ['a released point', 'releases: [{of: before-rod, by: owner, why: pushed}]', 'before-road'],
    ['a released check', 'releases: [{of: lamps-and-hrn, by: owner, why: pushed}]', 'lamps-and-horn'],
    ['a service', 'services: [chain-oill]', 'chain-oil'],
    ['a job', 'continues: 2026-05-01-b', '2026-05-01-a'],
  ])('%s is a problem with the nearest names', (_what, lines, near) => {
    expect(problems(lines)).toEqual([expect.stringMatching(new RegExp(`^reference-unknown .*“${near}”`, 'u'))]);
  });
  it('a bag is a problem', () => {
    expect(problems('work: [{refitted: seat, from bag: 7}]')).toEqual([expect.stringContaining('bag-unknown')]);
  });
  it('names that lead somewhere are none', () => {
    expect(
      problems('releases: [{of: before-road, by: owner, why: pushed}, {of: insured, by: owner, why: field}]'),
    ).toEqual([]);
  });
});

describe('dates out of order inside a record', () => {
  it.each([
    ['promised', 'work: [{sent out: barrels, to: the reborer, promised: 2026-04-30}]', true],
    ['promised later', 'work: [{sent out: barrels, to: the reborer, promised: 2026-05-30}]', false],
    ['allowed', 'findings: [{id: a, saw: crack, until: 2026-04-30}]', true],
    ['released', 'releases: [{of: insured, by: owner, why: pushed, until: 2026-04-30}]', true],
    ['minutes', 'run log: [{minute: 0, saw: fired}, {minute: 2, saw: smoke}, {minute: 1, saw: clear}]', true],
    ['minutes that go on', 'run log: [{minute: 0, saw: fired}, {minute: 2, saw: smoke}]', false],
  ])('%s', (_what, lines, wrong) => {
    expect(problems(lines).some((one) => one.startsWith('dates-out-of-order'))).toBe(wrong);
  });
  it('a span that ends before it begins cannot be read', () => {
    expect(problems('date: 2026-05-02 to 2026-05-01')).toEqual([expect.stringContaining('date-unreadable')]);
  });
});

describe('a clock that goes back', () => {
  const told = (jobs: Readonly<Record<string, string>>, clock?: string): readonly string[] =>
    evening('2026-06-01', jobs, { maker, ...(clock === undefined ? {} : { machine: machineFile({ clock }) }) })
      .problems.filter((one) => one.code === 'odometer-went-back')
      .map(({ at, also = [] }) =>
        [at, ...also.map((one) => one.at)].map((one) => `${one.file} ${one.path.join('.')}`).join(' < '),
      );
  it('is a problem with both places, between two records and inside a ride', () => {
    expect(told({ '2026-05-01-a': 'odometer: 500 km', '2026-05-02-b': 'odometer: 400 km' })).toEqual([
      'jobs/2026-05-02-b.md odometer < jobs/2026-05-01-a.md odometer',
    ]);
    expect(told({ '2026-05-01-a': 'kind: ride\nride: {out: 500 km, in: 400 km}' })).toEqual([
      'jobs/2026-05-01-a.md ride.in < jobs/2026-05-01-a.md ride.out',
    ]);
    expect(told({ '2026-05-01-a': 'kind: ride\nride: {out: 400 km, in: 500 km}' })).toEqual([]);
  });
  it('is none where the clock was changed on that ride, or turned over', () => {
    const changed =
      '[{id: a, unit: km, digits: 5, from: {date: 1974-05-01, reads: 0 km}, to: {date: 2026-05-01, reads: 510 km}, state: dead}, {id: b, unit: km, digits: 5, from: {date: 2026-05-01, reads: 90 km}}]';
    const ride = { '2026-05-01-a': 'kind: ride\nride: {out: 500 km, in: 95 km}' };
    expect(told(ride, changed)).toEqual([]);
    const turned = '[{id: a, unit: km, digits: 5, from: {date: 1974-05-01, reads: 0 km}, state: rolled over}]';
    expect(told({ '2026-05-01-a': 'kind: ride\nride: {out: 99990 km, in: 12 km}' }, turned)).toEqual([]);
  });
});

describe('a schedule line that can never come due', () => {
  const withLine = (line: string): readonly string[] =>
    problems('', maker.replace('services: [', `services: [${line}, `));
  it.each([
    ['has no bound at all', '{id: hinge, item: Hinge, do: lubricate}', true],
    [
      'repeats a column by months',
      '{id: hinge, item: Hinge, do: lubricate, every: 6 months, then from: 1000 km}',
      true,
    ],
    ['goes by wear', '{id: hinge, item: Hinge, do: lubricate, severe: {water: at once}}', false],
    [
      'is done with another',
      '{id: hinge, item: Hinge, do: lubricate}, {id: b, item: B, do: clean, every: 500 km, includes: [hinge]}',
      false,
    ],
  ])('%s', (_what, line, wrong) => {
    expect(withLine(line).some((one) => one.startsWith('service-never-due'))).toBe(wrong);
  });
});

describe('put back or tightened, and never off', () => {
  it('is a query each, and none when it was', () => {
    const codes = (lines: string): readonly string[] =>
      evening('2026-06-01', { '2026-05-01-a': lines }, { maker }).codes;
    expect(codes('work: [{refitted: seat}]')).toContain('put-back-never-off');
    expect(codes('work: [{tightened: rear-spindle-nut}]')).toContain('tightened-never-loose');
    const said = (lines: string): string | undefined =>
      evening('2026-06-01', { '2026-05-01-a': lines }, { maker }).problems.find(
        (one) => one.code === 'put-back-never-off',
      )?.message;
    expect(said('work: [{come back: barrel}]')).toBe(
      'barrel come back, and no record says that it was sent out before',
    );
    expect(said('work: [{taken away: rag}]')).toMatch(/fitted for the time being before$/u);
    expect(said('work: [{refitted: seat}]')).toMatch(/that it was off before$/u);
    const both = codes(
      'work: [{removed: seat}, {loosened: rear-spindle-nut}, {tightened: rear-spindle-nut}, {refitted: seat}]',
    );
    expect(both).not.toContain('put-back-never-off');
    expect(both).not.toContain('tightened-never-loose');
  });
});
