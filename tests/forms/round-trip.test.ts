// Property: for any answers, to print the form, to fill it and to take it gives what typing the same by hand gives; and the same from a telephone.
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { answersText } from '../../src/bench/phone-answers.ts';
import { phonePage } from '../../src/command/phone-file.ts';
import { asking } from '../../src/command/sheet-form.ts';
import { answeredRecord, saysMore, type Before } from '../../src/command/take/answered-record.ts';
import { readAnswersText } from '../../src/command/take/answers-text.ts';
import { homeOf, readCarried } from '../../src/command/take/carried-home.ts';
import { matchAnswers, type CameBack } from '../../src/command/take/match-answers.ts';
import { readForm } from '../../src/command/take/read-form.ts';
import type { Blank } from '../../src/entry/blank.ts';
import { sheetsOfJob } from '../../src/entry/sheets-of-job.ts';
import { cleanAnswer } from '../../src/entry/clean-answer.ts';
import { writeAnswers } from '../../src/entry/write-answers.ts';
import { blankOfField } from '../../src/pdf/form.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import { filled, jobForms, machines, today, type JobForm } from './job-forms.ts';

const number = fc
  .tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 0, max: 99 }), fc.constantFrom('.', ','))
  .map(([whole, part, point]) => `${String(whole)}${point}${String(part).padStart(2, '0')}`);
const value = fc.oneof(
  { weight: 5, arbitrary: number },
  fc.constantFrom('?', '-', '14 thou', '0.35 mm', '2.2 kgf·m', 'seized', '½'),
);
const words = fc.oneof(
  fc.constantFrom(
    'left as found',
    'circlip: none [yet]',
    '# not a remark',
    "it's “tight” ≤ 5 Ω",
    'a, b; c: {d}',
    '[x] y',
    'was [a] b',
    '日本',
  ),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
);

function answersFor(blanks: readonly Blank[]): fc.Arbitrary<Readonly<Record<string, string>>> {
  const each = blanks.map((blank) => {
    const said = blank.kind === 'tick' ? fc.constant('yes') : blank.kind === 'value' ? value : words;
    return fc.option(said, { freq: 3, nil: undefined }).map((one) => [blank.id, one] as const);
  });
  return fc
    .tuple(...each)
    .map((all) => Object.fromEntries(all.flatMap(([id, one]) => (one === undefined || one === '' ? [] : [[id, one]]))));
}

function beforeOf({ read }: JobForm, carries: string): Before {
  const carried = readCarried(carries);
  if (typeof carried === 'string') throw new Error(carried);
  if (read.binder === undefined) throw new Error('no binder');
  const home = homeOf(carried, read.binder);
  if (typeof home === 'string') throw new Error(home);
  return { home, text: read.textOf(home.file) ?? '', today, binder: read.binder };
}

/** The same answers typed in. */
function byHand(before: Before, answers: Readonly<Record<string, string>>): string {
  const day = readDay(today);
  const { job } = before.home;
  if (!day.ok) throw new Error('no day');
  const given = new Map(
    asking(job, before.home.sheets).blanks.map((blank) => [blank.id, cleanAnswer(blank.given ?? '')]),
  );
  const list = Object.entries(answers).filter(([id, one]) => cleanAnswer(one) !== given.get(id));
  const hand = cleanAnswer(answers[`${job.id}/foot/hand`] ?? '');
  return writeAnswers({
    record: { file: before.home.file, text: before.text },
    book: before.binder.book,
    job,
    sheet: before.home.sheets,
    answers: list.map(([blank, one]) => ({ blank, value: one })),
    today: day.value,
    ...(hand === '' ? {} : { hand }),
    instead: true,
  }).value.text;
}

function taken(before: Before, came: readonly CameBack[]): string {
  const matched = matchAnswers(asking(before.home.job, before.home.sheets).blanks, came, (met) =>
    saysMore(before, met),
  );
  return answeredRecord(before, matched, 'form').text;
}

describe.each(machines)('%s', (machine) => {
  let forms: readonly JobForm[];
  beforeAll(async () => {
    forms = await jobForms(machine);
  });

  it('takes from a form what typing in would give', async () => {
    for (const form of forms) {
      let written = 0;
      await fc.assert(
        fc.asyncProperty(answersFor(form.blanks), async (answers) => {
          const reading = await readForm(await filled(form.bytes, answers));
          if ('fault' in reading) throw new Error(reading.fault);
          const before = beforeOf(form, reading.carries ?? '');
          const came = reading.fields.map((one) => ({
            blank: blankOfField(one.name),
            value: one.value,
            before: one.before ?? '',
          }));
          const hand = byHand(before, answers);
          expect(taken(before, came)).toBe(hand);
          if (hand !== before.text) written += 1;
        }),
        { numRuns: 6 },
      );
      expect(written, form.sheet.id).toBeGreaterThan(0);
    }
  });

  it('takes from a telephone what typing in would give', () => {
    const [form] = forms;
    if (form?.read.binder === undefined) throw new Error('no form');
    const asked = asking(form.job, sheetsOfJob(form.read.binder.sheets, form.job.id));
    const page = phonePage(asked, form.read.textOf(form.job.file) ?? '');
    const carried: Record<string, string> = JSON.parse(page?.carried ?? '{}');
    const blanks = new Map(asked.blanks.map((blank) => [blank.id, blank]));
    fc.assert(
      fc.property(answersFor([...blanks.values()]), (answers) => {
        const list = Object.entries(answers)
          .map(([blank, one]) => {
            const { asks = '', given = '' } = blanks.get(blank) ?? {};
            return { blank, asks, value: one.trim(), given };
          })
          .filter((one) => one.value !== '' && one.value !== one.given);
        const read = readAnswersText(answersText(carried, list));
        if ('why' in read) throw new Error(read.why);
        const before = beforeOf(form, read.carries);
        expect(taken(before, read.answers)).toBe(byHand(before, answers));
      }),
      { numRuns: 6 },
    );
  });
});
