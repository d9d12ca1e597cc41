// What was opened and never closed is told where it was opened; one slip is one message.
import { describe, expect, it } from 'vitest';
import { leftOpen } from '../../src/source/left-open.ts';
import { machineFile, record, smallBinder } from '../views/small-folder.ts';
import { readRecords } from '../../src/records/read.ts';

const problemsOf = (files: Readonly<Record<string, string>>) =>
  readRecords(
    Object.entries({ 'machine.yaml': machineFile, ...files }).map(([file, text]) => ({ file, text })),
    [],
    [],
  ).problems;

describe('where something was left open', () => {
  it.each([
    ['a: "b\nc: d', 3],
    ['a: {b: c\nd: e', 3],
    ['a: [1, {b: 2]', 7],
    ["a: 'it''s'\nb: [c", 14],
    ['# it "was\na: [b', 13],
  ])('%j', (text, at) => {
    expect(leftOpen(text)).toBe(at);
  });
  it.each(['a: b', 'a: {b: [c, "d"]}', "a: rider's book\nb: [c]", 'a: 3" pipe', 'a: x [y', '# {\na: b'])(
    '%j is closed',
    (text) => {
      expect(leftOpen(text)).toBeUndefined();
    },
  );
});

describe('one slip, one message', () => {
  const head = 'title: On\ndate: 2026-04-18\nkind: assembly\nstate: done\n';
  it('a brace that is open to the next line', () => {
    const job = record(`${head}work:\n  - {refitted: barrel, from bag: 2\n  - {refitted: cylinder head}`);
    expect(problemsOf({ 'jobs/a.md': job })).toMatchObject([{ code: 'yaml-broken', at: { line: 7, column: 5 } }]);
  });
  it('a number cut at its comma', () => {
    const said = problemsOf({
      'jobs/a.md': record(`${head}readings: [{item: compression, found: {left: 2,5 bar, right: 2.4 bar}}]`),
    });
    expect(said).toMatchObject([{ code: 'number-ambiguous', hint: expect.stringContaining('2.5 bar') }]);
    const price = problemsOf({ 'jobs/a.md': record(`${head}parts: [{part: rings, price: 18,50 GBP}]`) });
    expect(price).toMatchObject([{ code: 'number-ambiguous', hint: expect.stringContaining('18.50 GBP') }]);
  });
  it('a word where yes or no is wanted', () => {
    const said = problemsOf({ 'machine.yaml': machineFile.replace('battery: no', 'battery: none') });
    expect(said.map((one) => one.code)).toEqual(['word-unknown']);
  });
  it('gearing upside down is asked about', () => {
    const geared = (final: string) =>
      smallBinder({
        'machine.yaml': machineFile.replace(
          'geometry:\n',
          `geometry:\n  primary: 20:43\n  gears: [14:37, 25:25]\n  final: ${final}\n`,
        ),
      }).book.queries.filter(({ code }) => code === 'gearing-upside-down');
    expect(geared('46:16')).toMatchObject([{ message: expect.stringContaining('46:16') }]);
    expect(geared('16:46')).toEqual([]);
  });
});
