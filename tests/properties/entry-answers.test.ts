// Any answers to any open job of any machine: what is written can be read, reads back as it was given, and all else stays as it was.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blanksOfAll } from '../../src/entry/blanks-of.ts';
import { cleanAnswer } from '../../src/entry/clean-answer.ts';
import { recordPrint } from '../../src/entry/record-print.ts';
import { writeAnswers } from '../../src/entry/write-answers.ts';
import { dimensionsOf } from '../../src/records/dimensions-of.ts';
import { readJob } from '../../src/records/read-job.ts';
import { machines, openJobs, today, type OpenJob } from '../entry/open-jobs.ts';

const jobs = machines.flatMap((machine) => openJobs(machine));
const words = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 30 }),
  fc.constantFrom(
    'yes',
    'no',
    '-',
    '?',
    '0,35',
    '0.35',
    '14 thou',
    '6?.8',
    '20 N·m',
    'by feel',
    '2026-12-01',
    "it's: #3, {a} [b]",
    '"',
    '- x',
    '=1+1',
  ),
  fc.double({ min: 0.01, max: 99, noNaN: true }).map((number) => number.toFixed(2)),
);
/** A job by its name, so that a case that fails can be read. */
const names = fc.constantFrom(...jobs.map(({ machine, job }) => `${machine} ${job.id}`));

function named(name: string): OpenJob {
  const found = jobs.find(({ machine, job }) => `${machine} ${job.id}` === name);
  if (found === undefined) throw new Error(`no open job ${name}`);
  return found;
}

function readingOf(name: string) {
  return blanksOfAll(named(name).sheet).find(({ id, kind }) => kind === 'value' && id.endsWith('/found'));
}

function asksReading(name: string): boolean {
  return readingOf(name) !== undefined;
}

const cases = names.chain((name) =>
  fc.record({
    name: fc.constant(name),
    end: fc.constantFrom('\n', '\r\n'),
    mark: fc.boolean(),
    answers: fc.array(
      fc.record({ blank: fc.constantFrom(...blanksOfAll(named(name).sheet).map(({ id }) => id)), value: words }),
      { maxLength: 12 },
    ),
  }),
);

/** Whether all of `part` stands in `whole` in its order. */
function isWithin(part: string, whole: string): boolean {
  let at = 0;
  for (const character of part) {
    at = whole.indexOf(character, at) + 1;
    if (at === 0) return false;
  }
  return true;
}

describe('answers', () => {
  test('leave a record that can be read, and every other byte as it was', () => {
    let written = 0;
    fc.assert(
      fc.property(cases, ({ name, end, mark, answers }) => {
        const open = named(name);
        const text = `${mark ? '\uFEFF' : ''}${open.record.text.replaceAll('\n', end)}`;
        const record = { ...open.record, text };
        const out = writeAnswers({ ...open, record, answers, today });
        written += out.value.changes.length;
        const dimensionOf = dimensionsOf(open.book.records.maker);
        const now = readJob({ ...record, text: out.value.text }, dimensionOf);
        expect(now.problems).toEqual([]);
        // State and date, a part that is here now and a line that is done now give way; everything else of the old text is there, in its order.
        const old = text
          .replace(/^(state|date): .*?(?=\r?\n)/gmu, '$1:')
          .replace(/(?:found|left): \?/gu, '')
          .replace(/(state|done): (?:wanted|ordered|no)/gu, '$1:');
        expect(isWithin(old, out.value.text)).toBe(true);
        expect(out.value.text.startsWith(mark ? `\uFEFF---${end}` : `---${end}`)).toBe(true);
        expect(now.value?.body).toBe(readJob(record, dimensionOf).value?.body);
        if (end === '\r\n') expect(out.value.text.replaceAll('\r\n', '')).not.toContain('\n');
        if (out.value.changes.length === 0) expect(recordPrint(out.value.text)).toBe(recordPrint(text));
      }),
      { numRuns: 250 },
    );
    expect(written).toBeGreaterThan(250);
  });

  test('are read back as they were given', () => {
    fc.assert(
      fc.property(
        names.filter((name) => asksReading(name)),
        words,
        words,
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        (name, left, next, number) => {
          const open = named(name);
          const reading = readingOf(name);
          if (reading === undefined) throw new Error('no reading is asked');
          const value = number.toFixed(2);
          const answers = [
            { blank: `${open.job.id}/foot/state-left-in`, value: left },
            { blank: `${open.job.id}/foot/next`, value: next },
            { blank: reading.id, value: `${value} ${reading.unit === '' ? 'mm' : (reading.unit ?? 'mm')}` },
          ];
          const out = writeAnswers({ ...open, answers, today });
          const job = readJob({ ...open.record, text: out.value.text }, dimensionsOf(open.book.records.maker)).value;
          const clean = [left, next].map(cleanAnswer).map((text) => (text === '-' || text === '?' ? '' : text));
          if (clean[0] !== '') expect(job?.stateLeft).toContain(clean[0]);
          if (clean[1] !== '') expect(job?.next).toContain(clean[1]);
          const found = job?.readings.flatMap((one) => one.found.map((each) => each.value));
          expect(found?.some((one) => one.kind === 'read' && one.written.text.startsWith(value))).toBe(true);
        },
      ),
      { numRuns: 150 },
    );
  });
});
