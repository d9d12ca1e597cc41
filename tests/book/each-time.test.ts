// What must be looked at anew each time, and where a ride was: on the road, or on private land before it.
import { describe, expect, it } from 'vitest';
import { readContent } from '../../src/records/read-content.ts';
import { readContentFolder } from '../../src/disk.ts';
import { book, check, content, hold, job, ticked } from './records.ts';

const boots = check('boots-on', { eachTime: true });
const points = [hold('before-moving', 5, [check('brakes'), boots]), hold('before-road', 6, [check('insured')])];
const brakes = job('2026-01-01', { checks: [ticked('brakes'), ticked('boots-on')] });
const words = content({ holdPoints: points });

describe('a check of each time', () => {
  const made = book([brakes], '2026-06-01', { content: words });
  it('is proved by no record and holds nothing', () => {
    expect(made.holds[0]?.checks.map((one) => one.state)).toEqual(['proved', 'each time']);
    expect(made.holds[0]).toMatchObject({ clear: true, because: [] });
  });
  it('is not what a ride is challenged for', () => {
    const bare = job('2026-02-01', { kind: 'ride', ride: { where: 'private land' } });
    const ridden = book([job('2026-01-01', { checks: [ticked('brakes')] }), bare], '2026-06-01', { content: words });
    expect(ridden.queries.map((one) => one.code)).not.toContain('ridden-while-held');
  });
  it('is said of these checks of the content, and undone by nothing', () => {
    const checks = readContent(readContentFolder()).value.holdPoints.flatMap((point) => point.checks);
    const each = checks.filter((one) => one.eachTime === true);
    expect(each.map((one) => one.id).toSorted()).toEqual([
      'boots-on',
      'outdoors-with-extinguisher',
      'plate-at-hand',
      'run-plan-written',
      'straight-and-second-person',
    ]);
    expect(each.flatMap((one) => one.undoneBy)).toEqual([]);
  });
});

describe('a ride', () => {
  const held = (where: 'road' | 'private land' | undefined) => {
    const ride = job('2026-02-01', { kind: 'ride', ride: where === undefined ? {} : { where } });
    const made = book([brakes, ride], '2026-06-01', { content: words });
    return made.queries.filter((one) => one.code === 'ridden-while-held').map((one) => one.message);
  };
  it('on private land is before the road, and asks for what comes before moving only', () => {
    expect(held('private land')).toEqual([]);
    const unproved = book([job('2026-02-01', { ride: { where: 'private land' } })], '2026-06-01', { content: words });
    expect(unproved.queries.map((one) => one.message).join()).toContain('“before-moving” was held');
  });
  it('is on the road when nothing else is said', () => {
    expect(held(undefined)).toContainEqual(expect.stringContaining('“before-road” was held'));
    expect(held('road')).toContainEqual(expect.stringContaining('“before-road” was held'));
  });
});
