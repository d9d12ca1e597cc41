// Two people on one Saturday: what their records say against each other, and whose work was looked at by whom.
import { describe, expect, it } from 'vitest';
import { pageSays, queryCodes, record, sheetSays, smallBinder } from '../views/small-folder.ts';

const saturday = (
  hand: string,
  name: string,
  lines: string,
  date = '2026-05-02',
): Readonly<Record<string, string>> => ({
  [`jobs/${date}-${name}.md`]: record(
    `title: ${name}\ndate: ${date}\nkind: setting up\nstate: done\nhands: [${hand}]\n${lines}`,
  ),
});
const disagree = (...files: readonly Readonly<Record<string, string>>[]): boolean =>
  queryCodes(smallBinder(Object.assign({}, ...files))).includes('two-people-disagree');

describe('two people on one day', () => {
  const gap = (value: string): string => `readings: [{item: points gap, left: ${value}}]`;
  it('who leave one thing at two values are asked which came last', () => {
    expect(disagree(saturday('owner', 'a', gap('0.35 mm')), saturday('helper', 'b', gap('0.40 mm')))).toBe(true);
    expect(disagree(saturday('owner', 'a', gap('0.35 mm')), saturday('helper', 'b', gap('0.35 mm')))).toBe(false);
    expect(disagree(saturday('owner', 'a', gap('0.35 mm')), saturday('owner', 'b', gap('0.40 mm')))).toBe(false);
    expect(
      disagree(saturday('owner', 'a', gap('0.35 mm')), saturday('helper', 'b', gap('0.40 mm'), '2026-05-03')),
    ).toBe(false);
  });
  it('are asked however many records the day has, and by the last word of each', () => {
    const many = Object.assign(
      {},
      ...Array.from({ length: 30 }, (_, index) => saturday('owner', `n${String(index)}`, 'work: [{removed: seat}]')),
    );
    const mine = saturday('owner', 'z1', gap('0.35 mm'));
    const theirs = saturday('helper', 'z2', gap('0.40 mm'));
    expect(disagree(many, mine, theirs)).toBe(true);
    expect(
      disagree(many, mine, saturday('owner', 'z3', gap('0.40 mm')), saturday('helper', 'z4', gap('0.40 mm'))),
    ).toBe(false);
    const both = saturday('owner, helper', 'a0', 'work: [{removed: seat}]');
    expect(disagree(both, mine, theirs)).toBe(true);
  });
  it('of whom one takes off what the other puts back', () => {
    const on = saturday('owner', 'a', 'work: [{refitted: rear wheel}]');
    expect(disagree(on, saturday('helper', 'b', 'work: [{removed: rear wheel}]'))).toBe(true);
    expect(disagree(on, saturday('helper', 'b', 'work: [{removed: rear wheel}, {refitted: rear wheel}]'))).toBe(false);
    expect(disagree(on, saturday('helper', 'b', 'work: [{removed: front wheel}]'))).toBe(false);
  });
  it('of whom one ticks what the other’s work undoes, whichever file comes first', () => {
    const ticked = 'checks: [{check: rear-brake-holds, by: owner}]';
    const wheel = 'work: [{removed: rear wheel}, {refitted: rear wheel}]';
    expect(disagree(saturday('owner', 'a', ticked), saturday('helper', 'b', wheel))).toBe(true);
    expect(disagree(saturday('owner', 'b', ticked), saturday('helper', 'a', wheel))).toBe(true);
    expect(disagree(saturday('owner', 'a', ticked), saturday('helper', 'b', 'work: [{removed: cylinder head}]'))).toBe(
      false,
    );
    const said = pageSays(
      smallBinder({ ...saturday('owner', 'a', ticked), ...saturday('helper', 'b', wheel) }),
      'problems.html',
    );
    expect(said).toContain(
      'rear-brake-holds: ticked by owner, and rear wheel was refitted by helper on the same day (b)',
    );
  });
});

describe('done by, checked by', () => {
  const ticked = (more: string) => saturday('owner', 'brakes', `checks: [{check: rear-brake-holds, ${more}}]`);
  it('stand at the check, with the record, and stay when later work undoes it', () => {
    const two = ticked('by: helper, checked by: owner');
    expect(sheetSays(smallBinder(two), 'hold-points')).toContain(
      'proved 2 May 2026, helper, checked by owner, in “brakes”',
    );
    const later = saturday('owner', 'wheel', 'work: [{removed: rear wheel}]', '2026-05-09');
    expect(sheetSays(smallBinder({ ...two, ...later }), 'hold-points')).toMatch(
      /undone by rear wheel removed \(wheel\); before that: proved 2 May 2026, helper, checked by owner/u,
    );
  });
  it('are two people', () => {
    const codes = (more: string) => queryCodes(smallBinder(ticked(more)));
    expect(codes('by: helper, checked by: helper')).toContain('checked-by-its-own-hand');
    expect(codes('checked by: owner')).toContain('checked-by-its-own-hand');
    expect(codes('by: helper, checked by: owner')).not.toContain('checked-by-its-own-hand');
  });
});
