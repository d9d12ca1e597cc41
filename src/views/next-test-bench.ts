// What the page of the next test works with: the table of odds of this machine with its words, and what is seen already.
import { diagnose } from '../book/faults/diagnosis.ts';
import { refOf } from '../book/faults/seen-on-record.ts';
import type { Page } from '../sheet/sheet.ts';
import type { ViewContext } from './view.ts';
import { sentence } from './wording/blocks.ts';
import { cautionNamed } from './wording/caution.ts';

/** File of the data, below `assets/`. */
export const nextTestFile = 'next-test-data.js';

/** Its script, and the file with its data. */
export function nextTestBench({ say }: ViewContext): Page['bench'] {
  return { script: 'next-test.js', with: nextTestFile, label: say('Try outcomes'), data: '' };
}

/** The data as JSON; the script of the same name reads it. */
export function nextTestData(context: ViewContext): string {
  const { say, book } = context;
  const found = diagnose(book);
  const { faults, table, seen } = found;
  const tests = faults.tests.map((test) => ({
    id: test.id,
    name: sentence(say(test.test)),
    short: sentence(say(test.short ?? test.test)),
    how: say(test.how ?? ''),
    notice: test.notice,
    cautions: [test.caution, ...test.cautions].flatMap((id) => {
      const caution = id === undefined ? undefined : cautionNamed(context, id);
      return caution === undefined ? [] : [`${caution.grade}: ${caution.text}`];
    }),
    outcomes: test.outcomes.map((one) => ({
      id: one.saw,
      words: say(one.words),
      stop: one.stop ? say(one.means ?? 'not to be run so') : '',
    })),
  }));
  const causes = faults.causes.map(({ id, group, cause, cure }) => ({
    id,
    group: sentence(say(group)),
    name: sentence(say(cause)),
    cure: say(cure),
  }));
  const data = { table, tests, causes, seen: seen.filter(({ outcome }) => outcome !== undefined).map(refOf) };
  return JSON.stringify(data);
}
