// The report: place, the owner's own line, carets, hint; sorted, and harmless for a terminal.
import { describe, expect, test } from 'vitest';
import type { Place, Problem } from '../../src/problem/problem.ts';
import { formatReport, shown } from '../../src/problem/report.ts';

const texts: Readonly<Record<string, string>> = {
  'jobs/a.md': '---\ntitle: Oil\nodometer: 12,480 mi\n---\nWords',
  'jobs/b.md': '---\n\ttitle: \u001b[31mred\u202e\u0007\n---\n',
  'jobs/wide.md': '軸受 12,480 mi',
  'jobs/long.md': 'x'.repeat(300) + ' 12,480 mi ' + 'y'.repeat(300),
};
const textOf = (file: string): string | undefined => texts[file];
const locate = (_: string, place: Place): { line: number; column: number; length: number } => ({
  line: place.line ?? 1,
  column: place.column ?? 1,
  length: 6,
});
const plain = { colour: false };

function problem(file: string, line: number, column: number, more: Partial<Problem> = {}): Problem {
  return {
    code: 'yaml-broken',
    severity: 'problem',
    at: { file, path: ['x'], line, column },
    message: 'not right',
    ...more,
  };
}

describe('the report', () => {
  test('shows place, code, message, the line with carets, and the hint', () => {
    const report = formatReport(
      [problem('jobs/a.md', 3, 11, { message: '“12,480” is ambiguous', hint: 'write “12 480”' })],
      textOf,
      locate,
      plain,
    );
    expect(report).toBe(
      [
        'jobs/a.md:3:11 yaml-broken: “12,480” is ambiguous',
        '    3 | odometer: 12,480 mi',
        '      |           ^^^^^^',
        '      write “12 480”',
      ].join('\n'),
    );
  });

  test('sorts by file, line and column, and says a thing once', () => {
    const list = [
      problem('jobs/b.md', 1, 1),
      problem('jobs/a.md', 3, 2),
      problem('jobs/a.md', 2, 9),
      problem('jobs/a.md', 2, 1),
      problem('jobs/a.md', 2, 1),
    ];
    const heads = formatReport(list, textOf, locate, plain)
      .split('\n')
      .filter((line) => line.startsWith('jobs/'));
    expect(heads.map((line) => line.split(' ')[0])).toEqual([
      'jobs/a.md:2:1',
      'jobs/a.md:2:9',
      'jobs/a.md:3:2',
      'jobs/b.md:1:1',
    ]);
  });

  test('marks a query, and names other places', () => {
    const also = [{ at: { file: 'jobs/a.md', path: [], line: 2, column: 1 }, message: 'the earlier one' }];
    const report = formatReport([problem('jobs/a.md', 3, 1, { severity: 'query', also })], textOf, locate, plain);
    expect(report).toContain('(query)');
    expect(report).toContain('see jobs/a.md:2:1: the earlier one');
  });

  test('a file that could not be read has no line', () => {
    expect(
      formatReport(
        [{ ...problem('photos/x.png', 1, 1), at: { file: 'photos/x.png', path: [] } }],
        textOf,
        locate,
        plain,
      ),
    ).toBe('photos/x.png yaml-broken: not right');
  });

  test('no problems, no text', () => expect(formatReport([], textOf, locate, plain)).toBe(''));
});

describe('what comes from a record is harmless', () => {
  test('control and direction characters are shown as code points', () => {
    const report = formatReport([problem('jobs/b.md', 2, 9, { message: 'a\u001b[2Jb' })], textOf, locate, plain);
    expect(/[\p{Cc}\p{Cf}]/u.test(report.replaceAll('\n', ''))).toBe(false);
    expect(report).toContain('<U+001B>');
    expect(report).toContain('<U+202E>');
    expect(shown('a\tb')).toBe('a b');
  });

  test('colour only when asked', () => {
    const list = [problem('jobs/a.md', 3, 11)];
    expect(formatReport(list, textOf, locate, plain)).not.toContain('\u001b');
    expect(formatReport(list, textOf, locate, { colour: true })).toContain('\u001b[31m^^^^^^\u001b[0m');
  });

  test('carets stand under wide characters, and a long line is cut around the value', () => {
    const wide = formatReport([problem('jobs/wide.md', 1, 4)], textOf, locate, plain).split('\n');
    expect(wide[2]).toBe('      |      ^^^^^^');
    const long = formatReport([problem('jobs/long.md', 1, 302)], textOf, locate, plain).split('\n');
    expect(long[1]?.length).toBeLessThan(120);
    expect(long[1]?.slice(long[2]?.indexOf('^'), (long[2]?.indexOf('^') ?? 0) + 6)).toBe('12,480');
  });
});
