// Pages stay small: 60 KB at most without their photos, for the demo, the fixtures, and a machine of a thousand records.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readMachine } from '../../src/command/read-machine.ts';
import { frameFor } from '../../src/command/site-frame-for.ts';
import { renderOne } from '../../src/render/page.ts';
import { records, writeMachine } from '../bench/workload.ts';

const largest = 60_000;
const today = '2026-11-14';

const scratch = mkdtempSync(join(tmpdir(), 'splitpin-pages-'));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** The pages over the largest size, each with its bytes, and how many there are in all. */
function sizes(folder: string): { readonly large: readonly string[]; readonly pages: number } {
  const { binder } = readMachine(folder, today, {});
  if (binder === undefined) throw new Error(`${folder} cannot be read`);
  const frame = frameFor(binder, new Map());
  const large = binder.pages.flatMap((spec): readonly string[] => {
    const { file, content } = renderOne(spec, frame);
    const bytes = Buffer.byteLength(content);
    return bytes > largest ? [`${file}: ${String(bytes)}`] : [];
  });
  return { large, pages: binder.pages.length };
}

describe('no page is over 60 KB', () => {
  it.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])('of %s', (folder) => {
    const { large, pages } = sizes(folder);
    expect(pages).toBeGreaterThan(100);
    expect(large).toEqual([]);
  });
  it('of a machine of a thousand records', () => {
    const machine = join(scratch, 'thousand');
    writeMachine(machine, records(1000));
    const { large, pages } = sizes(machine);
    expect(pages).toBeGreaterThan(1000);
    expect(large).toEqual([]);
  });
});
