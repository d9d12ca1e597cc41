// Numbers are never printed from a template string: the linter knows the types, and is asked about the layers that word things.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from './source-files.ts';

function lint(...paths: readonly string[]): { readonly status: number | null; readonly said: string } {
  const tool = join(root, 'node_modules', '.bin', 'oxlint');
  const config = join(root, 'tests/architecture/template-numbers.json');
  const ran = spawnSync(tool, ['--type-aware', '-c', config, ...paths], { cwd: root, encoding: 'utf8' });
  return { status: ran.status, said: ran.stdout + ran.stderr };
}

/** `a length of 3.5 mm` must not come about like this. */
export function wrong(length: number): string {
  return `a length of ${length} mm`;
}

describe('numbers in template strings', () => {
  test('are found where there is one', () => {
    const { status, said } = lint('tests/architecture/template-numbers.test.ts');
    expect(said).toContain('restrict-template-expressions');
    expect(status).not.toBe(0);
  });
  test('are not in what words, derives or composes', () => {
    const { status, said } = lint('src/views', 'src/compose', 'src/book', 'src/figure', 'src/calc');
    expect(said).toMatch(/on \d{2,} files/);
    expect(status, said).toBe(0);
  });
});
