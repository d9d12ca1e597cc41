// Whatever is written down by the page of formats is read back: every word, every digit, every unit.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Value } from '../../src/records/model.ts';
import { readJob } from '../../src/records/read-job.ts';
import { asFile, jobText, type WrittenJob } from './records-written.ts';

function textOf(value: Value): string {
  if (value.kind === 'read') return value.written.text;
  return value.kind === 'words' ? value.text : '?';
}

function readBack(job: WrittenJob, newline: '\n' | '\r\n', mark: string): void {
  const { value, problems } = readJob({ file: 'jobs/a job.md', text: mark + asFile(job, newline) }, () => undefined);
  expect(problems).toEqual([]);
  expect(value).toBeDefined();
  if (value === undefined) return;
  expect(value.id).toBe('a job');
  expect(value.title).toBe(job.title);
  expect(value.date.from).toBe(job.date);
  expect(value.waitingFor).toBe(job.state === 'waiting for barrels' ? 'barrels' : undefined);
  expect(value.hands).toEqual(job.hands);
  expect(value.next).toBe(job.next);
  expect(value.body).toBe(job.body);
  expect(value.work.map(({ verb, thing, bag, note }) => ({ verb, thing, bag, note }))).toEqual(job.work);
  expect(value.findings.map(({ saw, weight }) => ({ saw, weight }))).toEqual(job.findings);
  expect(value.money.map(({ amount, for: what }) => ({ pence: amount.minor, for: what }))).toEqual(job.money);
  const found = value.readings.map((one) =>
    Object.fromEntries(one.found.map(({ position, value: v }) => [position, textOf(v)])),
  );
  expect(found).toEqual(job.readings.map((one) => one.found ?? {}));
  expect(value.readings.map((one) => one.left.map(({ value: v }) => textOf(v)))).toEqual(
    job.readings.map((one) => (one.left === undefined ? [] : [one.left])),
  );
}

describe('any generated record', () => {
  test('reads back', () => {
    fc.assert(fc.property(jobText, fc.constantFrom('\n', '\r\n'), fc.constantFrom('', '\uFEFF'), readBack), {
      numRuns: 400,
    });
  });

  test('keeps decimals as they were written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99 }), fc.stringMatching(/^\d{1,4}$/u), (whole, digits) => {
        const text = `---\ntitle: a\ndate: 2024-05-04\nkind: ride\nstate: done\nreadings: [{item: gap, found: ${String(whole)}.${digits} mm}]\n---\n`;
        const value = readJob({ file: 'jobs/a.md', text }, () => undefined).value?.readings[0]?.found[0]?.value;
        expect(value).toMatchObject({
          kind: 'read',
          written: { decimals: digits.length, text: `${String(whole)}.${digits} mm` },
        });
      }),
    );
  });
});
