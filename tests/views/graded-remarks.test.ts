// What an intake was ticked with is told on its record: what was there, harmed or missing by name, plain ticks by their number.
import { cpSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readMachine } from '../../src/command/read-machine.ts';

test('grades are told with their lines, and words with the line they stand beside', () => {
  const folder = join(mkdtempSync(join(tmpdir(), 'splitpin-graded-')), 'bike');
  cpSync('tests/fixtures/finch-125', folder, { recursive: true });
  writeFileSync(
    join(folder, 'jobs/2020-01-02-looked.md'),
    `---\ntitle: Looked over\ndate: 2026-11-02\nkind: intake\nstate: done\nticks: [form/intake-completeness/seat/Harmed, form/intake-completeness/tank-cap, form/intake-photos/left]\nremarks: [{at: form/intake-completeness/seat/words, says: torn}]\n---\n`,
  );
  const { binder } = readMachine(folder, '2026-11-28', {});
  const page = JSON.stringify(binder?.pages.find(({ file }) => file.includes('2020-01-02-looked'))?.make().blocks);
  expect(page).toContain('Harmed: Seat, strap, catch');
  expect(page).toContain('There: Tank, cap, tap, badges');
  expect(page).toContain('What is on it, area by area: Seat, strap, catch');
  expect(page).toContain('1\u00a0step ticked');
});
