// The pages of problems and queries are a test: each smallest set of files brings about exactly the report under it.
import { describe, expect, test } from 'vitest';
import { codes } from '../../src/problem/codes.ts';
import { reportOf } from './example-report.ts';
import { problemEntries } from './problem-examples.ts';

const entries = problemEntries();
const named = (page: string): readonly string[] =>
  entries.filter((entry) => entry.page === page).map(({ code }) => code);
const coded = (severity: string): readonly string[] =>
  Object.entries(codes).flatMap(([code, how]) => (how === severity ? [code] : []));

describe('the pages of problems and queries', () => {
  test('have an entry for every code, on the page of its severity, and no other', () => {
    expect(named('problems.md').toSorted()).toEqual(coded('problem').toSorted());
    expect(named('queries.md').toSorted()).toEqual(coded('query').toSorted());
  });

  test('say of each in a sentence what it means', () => {
    expect(entries.filter(({ prose }) => prose.length < 20)).toEqual([]);
  });

  test.each(entries.map((entry) => [entry.code, entry] as const))('%s', (code, entry) => {
    expect(reportOf(entry)).toBe(entry.report);
    expect(entry.report).toContain(code);
  });
});
