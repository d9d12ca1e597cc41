// What is not given out: a secret found at the end, an answer that is no yes, a name that tells. Each leaves nothing behind.
import { existsSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { put } from '../command/small-machine.ts';
import { handOver, secretMachine } from './package-folder.ts';

describe('what is not given out', () => {
  test('a secret that our covering does not see is found at the end, and nothing is left', async () => {
    const other = await secretMachine();
    // YAML reads the code as the letter; the text of the record holds no such word.
    put(other, {
      'jobs/2024-05-20-code.md':
        '---\ntitle: "Odal\\u0079s Brenner"\ndate: 2024-05-20\nkind: repair\nstate: done\n---\n',
    });
    const result = await handOver(other);
    expect(result.code).toBe(1);
    expect(result.out).toMatch(/data\/binder\/print\/history\.pdf: it holds a name/u);
    expect(result.out).toContain('bike-package was not written');
    expect(readdirSync(join(dirname(other), 'out'))).toEqual([]);
  }, 300_000);
  test('nothing is written when it is only shown, not agreed to, or nobody can be asked', async () => {
    const other = await secretMachine();
    expect(await handOver(other, { show: true })).toMatchObject({ code: 0 });
    expect(await handOver(other, {}, undefined, ['no'])).toMatchObject({ code: 0 });
    expect((await handOver(other, {})).out).toContain('Write it with --yes');
    expect(existsSync(join(dirname(other), 'out'))).toBe(false);
  });
  test('a name of a file or of the package that tells is refused', async () => {
    const other = await secretMachine();
    put(other, {
      'jobs/2024-05-20-visit-birchhof.md': '---\ntitle: Visit\ndate: 2024-05-20\nkind: repair\nstate: done\n---\n',
    });
    const result = await handOver(other, { yes: true, name: 'tamsin-bike' });
    expect(result.code).toBe(1);
    expect(result.out).toContain('jobs/2024-05-20-visit-birchhof.md');
    expect(result.out).toContain('tamsin-bike');
  });
});
