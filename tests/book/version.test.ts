// The fingerprint of the records: the same for the same words in any order, another for any other word.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recordsDate, recordsVersion } from '../../src/book/version.ts';
import type { Job } from '../../src/records/model.ts';
import { readJob } from '../../src/records/read-job.ts';
import type { SourceFile } from '../../src/source/files.ts';
import { day, job, machine, maker, records } from './records.ts';

const jobs = [
  job('2026-01-01', { id: 'a', body: 'Looked.' }),
  job('2026-02-01', { id: 'b', body: 'Measured.' }),
  job('2026-03-01', { id: 'c' }),
];
const version = (list: readonly Job[]): string => recordsVersion(records(list));

/** The version of a machine with one record, as it is read from its text. */
function versionOf(text: string, pictured?: string): string {
  const source: SourceFile = { file: 'jobs/a.md', text, ...(pictured === undefined ? {} : { pictured }) };
  const { value, problems } = readJob(source, () => undefined);
  if (value === undefined) throw new Error(problems.map(({ message }) => message).join('; '));
  return version([value]);
}

const written = `---
title: Bore measured
date: 2026-01-01
kind: measuring
state: done
hands: [owner]
readings:
  - { item: bore, found: 50.06 mm }
---
Looked.
`;

describe('the records’ fingerprint', () => {
  it('does not depend on the order of the files', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(jobs, { minLength: 3, maxLength: 3 }), (list) => {
        expect(version(list)).toBe(version(jobs));
      }),
    );
  });
  it('is short, letters and digits', () => {
    expect(version(jobs)).toMatch(/^[0-9a-z]{7}$/u);
  });
  it.each([
    ['a word of the body', 'Looked.', 'Looked!'],
    ['a date', '2026-01-01', '2026-01-02'],
    ['a reading’s last digit', '50.06', '50.07'],
    ['a hand', '[owner]', '[helper]'],
    ['a remark of the file', 'state: done', 'state: done # at last'],
  ])('changes with %s', (_what, now, then) => {
    expect(written).toContain(now);
    expect(versionOf(written.replace(now, then))).not.toBe(versionOf(written));
  });
  it('changes with the day of the pictures, where the record says none', () => {
    const undated = written.replace('date: 2026-01-01\n', '');
    expect(versionOf(undated, '2026-01-01')).not.toBe(versionOf(undated, '2026-01-02'));
  });
  it('is the same with the line ends of another computer', () => {
    expect(versionOf(written.replaceAll('\n', '\r\n'))).toBe(versionOf(written));
  });
  it('changes with the machine and the maker’s data', () => {
    const plain = recordsVersion(records(jobs));
    expect(recordsVersion(records(jobs, { machine: machine({ name: 'Other' }) }))).not.toBe(plain);
    expect(recordsVersion(records(jobs, { maker: maker({ sources: [] }) }))).not.toBe(plain);
    expect(recordsVersion(records(jobs, { unread: [{ file: 'jobs/x.md', codes: [] }] }))).not.toBe(plain);
  });
  it('is never the same for two different bodies, as far as a thousand tries say', () => {
    const seen = new Map<string, string>();
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), (body) => {
        const made = version([job('2026-01-01', { id: 'a', body })]);
        expect(seen.get(made) ?? body).toBe(body);
        seen.set(made, body);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('the records’ date', () => {
  it('is the newest of what has happened, not of what is planned', () => {
    const list = [...jobs, job('2026-09-01', { state: 'planned' }), job('2026-04', { id: 'month' })];
    expect(recordsDate(records(list), day('2026-06-01'))).toBe('2026-04-01');
    expect(recordsDate(records([]), day('2026-06-01'))).toBe('1969-05-01');
  });
});
