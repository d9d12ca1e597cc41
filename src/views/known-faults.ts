// The list of known faults that is given with the machine: what is open, what was never looked at, what is overdue; with room for what both find on the day.
import type { Book } from '../book/book.ts';
import type { Finding, Job } from '../records/model.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { column, heading, lines, paragraphs, row, stack } from './wording/blocks.ts';
import { neverRecorded } from './service-due.ts';
import { dayText } from './wording/day.ts';
import { jobNamed, withJobs } from './wording/job.ts';
import { ours } from './wording/ours.ts';
import { isOpen, weights } from './known-findings.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const knownFaults = defineView({
  id: 'known-faults',
  purpose: 'Known faults to be shown one by one to who takes the machine over, and what is not known.',
  needs: 'machine',
  options: [],
  blocks: (context) => stack(said(context), faults(context), unknown(context), found(context)),
});

function said({ say }: ViewContext): Block {
  return paragraphs(
    say(
      'What is written here was known on the day and was shown. It is no promise that nothing else is wrong, and it makes no verdict on the machine.',
    ),
  );
}

function openOf(book: Book): readonly { readonly job: Job; readonly finding: Finding }[] {
  const open = book.records.jobs.flatMap((job) => job.findings.filter(isOpen).map((finding) => ({ job, finding })));
  return weights.flatMap((weight) => open.filter(({ finding }) => finding.weight === weight));
}

function faults({ book, say }: ViewContext): readonly Block[] {
  const rows = openOf(book).map(({ job, finding }): Row => {
    const until = finding.until === undefined ? '' : ` ${say('until')} ${dayText(finding.until)}`;
    return row(
      { box: 'tick', id: `fault/${job.id}/${finding.id}` },
      [{ kind: 'strong', text: `${say(finding.weight)}${until}` }],
      finding.saw,
      withJobs(book, finding.became),
      jobNamed(job),
    );
  });
  return [
    {
      type: 'table',
      caption: say('Known and not put right'),
      columns: [
        column(say('Shown'), 1, 'centre'),
        column(say('Weight'), 3),
        column(say('Seen'), 6),
        column(say('What became of it'), 5),
        column(say('Record'), 4),
      ],
      rows,
      empty: say('No finding is open, by the records.'),
      use: 'work',
    },
  ];
}

function found({ say }: ViewContext): readonly Block[] {
  return [
    {
      type: 'grid',
      caption: say('Found by both on the day'),
      columns: [column(say('What'), 7), column(say('Agreed'), 5)],
      rows: 2,
    },
  ];
}

/** Things nobody wrote down: never recorded services, numbers and torques that are not known, gaps before the first record. */
function unknown(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const never = neverRecorded(book.due);
  const overdue = book.due.filter(({ state }) => state === 'overdue');
  const names = (list: typeof never): string =>
    [...new Set(list.map(({ service }) => ours(context, service.at, service.item)))].join('; ');
  const first = book.records.jobs.find(({ state }) => state !== 'planned');
  const texts = [
    ...(first === undefined ? [] : [`${say('No record from before')} ${dayText(first.date.from)}.`]),
    ...(overdue.length === 0 ? [] : [`${say('Overdue')}: ${names(overdue)}.`]),
    ...(never.length === 0 ? [] : [`${say('Never recorded here')}: ${names(never)}.`]),
    ...(book.odometer.now.machine === undefined ? [say('The distance of the machine is not known.')] : []),
  ];
  if (texts.length === 0) return [];
  return [heading(2, say('Not done and not known'), 'not-done-and-not-known'), lines(texts)];
}
