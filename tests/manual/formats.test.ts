// The page of formats is the test of the readers: every example on it is read, together they are a machine without a problem.
import { describe, expect, test } from 'vitest';
import { readContentFolder } from '../../src/disk.ts';
import { formatReport } from '../../src/problem/report.ts';
import type { Problem } from '../../src/problem/problem.ts';
import { checkContentReferences } from '../../src/records/check-content-references.ts';
import { contentKinds } from '../../src/records/content-kinds/list.ts';
import { jobKinds } from '../../src/records/kinds/job.ts';
import { recordKinds } from '../../src/records/kinds/list.ts';
import { verbs } from '../../src/records/kinds/work.ts';
import { readContent } from '../../src/records/read-content.ts';
import { readRecords } from '../../src/records/read.ts';
import type { Told } from '../../src/records/shapes/shape.ts';
import { locate } from '../../src/source/locate.ts';
import { formatExamples, manualAssets, manualFiles, manualPage } from './manual-folder.ts';

const files = manualFiles();
const records = readRecords(files.machine, manualAssets);
const content = readContent(files.content);

function report(problems: readonly Problem[]): string {
  const all = [...files.machine, ...files.content];
  return formatReport(problems, (file) => all.find((one) => one.file === file)?.text, locate, { colour: false });
}

/** Every key that a description knows, with its way from the top. */
function keysOf(told: Told, way: string): readonly string[] {
  if (told.kind === 'list') return keysOf(told.of, way);
  if (told.kind === 'map') return keysOf(told.of, way);
  if (told.kind === 'either') return told.of.flatMap((one) => keysOf(one, way));
  if (told.kind !== 'record') return [];
  return told.fields.flatMap((field) => [field.key, ...keysOf(field.value, field.key)]);
}

describe('the page of formats', () => {
  test('every example names the file it is', () => {
    expect(formatExamples().filter(({ file }) => file === '')).toEqual([]);
    expect(formatExamples().length).toBeGreaterThanOrEqual(13);
  });

  test('the machine examples are read without a problem', () => {
    expect(report(records.problems)).toBe('');
    expect(records.value?.jobs.map((job) => job.id)).toEqual(['2024-06-15-points', '2024-09-14-barrels-off']);
    expect(records.value?.maker.services.map((line) => line.id)).toContain('gearbox-oil-change');
  });

  test('the content examples are read without a problem', () => {
    expect(report(content.problems)).toBe('');
    expect([...content.value.procedures.keys()]).toEqual(['top-end-strip-two-stroke']);
    expect(content.value.sheets.map((sheet) => sheet.views.length)).toEqual([2]);
  });

  test('what the machine examples name of content, the content examples have', () => {
    expect(records.value).toBeDefined();
    if (records.value !== undefined) expect(report(checkContentReferences(records.value, content.value))).toBe('');
  });

  test('beside the content of the program they are a machine without a problem as well', () => {
    const real = readContent(readContentFolder());
    expect(real.problems).toEqual([]);
    if (records.value !== undefined) expect(report(checkContentReferences(records.value, real.value))).toBe('');
  });

  test('every kind has an example, and every key stands on the page', () => {
    const page = manualPage('formats.md');
    const kinds = [...recordKinds, ...contentKinds];
    expect(kinds.length).toBe(18);
    for (const kind of kinds) {
      const missing = keysOf(kind.shape.told, '').filter((key) => !page.includes(key));
      expect({ kind: kind.id, missing }).toEqual({ kind: kind.id, missing: [] });
    }
  });

  test('every kind of job and every verb stands on the page', () => {
    const page = manualPage('formats.md').replaceAll('\n', ' ');
    expect([...jobKinds, ...verbs].filter((word) => !page.includes(word))).toEqual([]);
  });

  test('values of the examples are kept as they were written', () => {
    const job = records.value?.jobs[1];
    expect(job?.readings[0]?.found[0]?.value).toMatchObject({
      kind: 'read',
      written: { text: '50.06 mm', decimals: 2 },
    });
    expect(records.value?.maker.fasteners[0]?.torque?.text).toBe('2.2 kgf·m');
    expect(records.value?.machine.numbers.find(({ name }) => name === 'key')?.private).toBe(true);
  });
});
