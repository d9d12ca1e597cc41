// What stops is told first; what is only asked comes after it, with the warning that it may follow from what was left out.
import { expect, test } from 'vitest';
import { reportProblems } from '../../src/command/report-problems.ts';
import type { Problem } from '../../src/problem/problem.ts';

const asked: Problem = { code: 'unit-slip', severity: 'query', at: { file: 'jobs/a.md', path: [] }, message: 'asked' };
const wrong: Problem = {
  code: 'key-unknown',
  severity: 'problem',
  at: { file: 'jobs/b.md', path: [] },
  message: 'wrong',
};

async function told(problems: readonly Problem[]): Promise<string> {
  const lines: string[] = [];
  const tell = (text: string): void => void lines.push(text);
  await reportProblems(problems, () => undefined, { tell, say: tell, colour: false, progress: tell });
  return lines.join('\n');
}

test('problems come before queries, and name what was left out', async () => {
  const text = await told([asked, wrong]);
  expect(text.indexOf('wrong')).toBeLessThan(text.indexOf('asked'));
  expect(text).toContain(
    'jobs/b.md was left out because of the problem above. A query below that depends on it may be false',
  );
});

test('queries alone warn of nothing', async () => {
  expect(await told([asked])).not.toContain('left out');
});
