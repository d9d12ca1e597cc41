// For a person to look at: what the records say that an experienced reader would question, in the order in which it can hurt.
import { queryPrint } from '../book/answers.ts';
import type { Problem } from '../problem/problem.ts';
import type { Text } from '../sheet/sheet.ts';
import { column, heading, joined, lines, paragraphs, row, stack } from './wording/blocks.ts';
import { capped, moreOfThem } from './wording/capped.ts';
import { jobTitle } from './wording/job.ts';
import { manualPlace } from './wording/manual-parts.ts';
import { writtenKeys } from './wording/written-keys.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const queries = defineView({
  id: 'queries',
  purpose: 'What a person should look at in the records, and which records could not be read.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { book, say, rows } = context;
    return stack(
      unread(context),
      heading(2, say('For a person to look at'), 'queries'),
      {
        type: 'table',
        columns: [column(say('What'), 8), column(say('What to do'), 6), column(say('Where, code, print'), 4)],
        rows: capped(book.queries, (rest) => moreOfThem(say, rest), rows).map((one) =>
          'kind' in one ? one : row(writtenKeys(one.message), writtenKeys(one.hint ?? ''), where(context, one)),
        ),
        empty: say('Nothing in the records asks for a second look.'),
        use: 'read',
      },
      book.queries.length === 0
        ? undefined
        : paragraphs([
            `${say('What is right as it stands is let rest in a record')}: `,
            { kind: 'code', text: 'answers: [{query: …, by: …, why: …}]' },
            `, ${say('with the print, the last word of its line, as the query')}.`,
          ]),
      answered(context),
    );
  },
});

/** What somebody looked at and let stand; it comes back when what it says changes. */
function answered({ book, say }: ViewContext): ReturnType<typeof stack> {
  const all = book.answered ?? [];
  if (all.length === 0) return [];
  return [
    heading(2, say('Looked at, and let stand'), 'answered'),
    {
      type: 'table',
      columns: [column(say('What'), 8), column(say('Why'), 6), column(say('By'), 4)],
      rows: all.map(({ query, answer, job }) =>
        row(query.message, answer.why, joined([answer.by, [jobTitle(job)]], ', ')),
      ),
      empty: '',
      use: 'read',
    },
  ];
}

/** The record, as a link where the file is one; the file and its code, to be found again in the manual of problems. */
function where({ book }: ViewContext, problem: Problem): Text {
  const id = /^jobs\/(.+)\.md$/.exec(problem.at.file)?.[1];
  const job = id === undefined ? undefined : book.jobs.get(id);
  const file: Text = job === undefined ? problem.at.file : [jobTitle(job)];
  const bodyOf = (one: string): string => book.content.pages.get(one)?.body ?? '';
  const page = ['problems', 'queries'].find((one) => bodyOf(one).includes(`\n## ${problem.code}\n`));
  const to = page === undefined ? '' : `page:${manualPlace(page, bodyOf(page), problem.code)}`;
  const code: Text = page === undefined ? problem.code : [{ kind: 'link', text: problem.code, to }];
  return joined([file, code, queryPrint(problem)], ', ');
}

function unread({ book, say }: ViewContext): ReturnType<typeof stack> {
  if (book.records.unread.length === 0) return [];
  return [
    heading(2, say('Not read'), 'unread'),
    lines(book.records.unread.map((one) => `${one.file}: ${one.codes.join(', ')}`)),
  ];
}
