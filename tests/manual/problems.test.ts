// The page of problems is a test: each smallest bad file brings about exactly the report that is printed under it.
import { describe, expect, test } from 'vitest';
import { codes } from '../../src/problem/codes.ts';
import { manualPage } from './manual-folder.ts';
import { problemEntries, reportOf } from './problem-examples.ts';

const entries = problemEntries();

describe('the page of problems', () => {
  test('has an entry for every code, and no other', () => {
    const written = entries.map(({ code }) => code).toSorted();
    expect(written).toEqual(Object.keys(codes).toSorted());
  });

  test.each(entries.map((entry) => [entry.code, entry] as const))('%s', (code, entry) => {
    expect(entry.report).not.toBe('');
    expect(entry.report).toContain(` ${code}`);
    expect(entry.prose.length).toBeGreaterThan(20);
    expect(reportOf(entry)).toBe(entry.report);
  });

  test('says of each entry in a sentence what it means', () => {
    expect(entries.length).toBeGreaterThan(40);
    expect(manualPage('problems.md')).toMatch(/^---\npage: problems\n/u);
  });
});
