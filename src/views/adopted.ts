// Where a history comes from that its owner did not write: when it was taken over, which records came, and with which fingerprint.
import { fingerprintText } from '../records/fingerprint.ts';
import type { Adopted, Job } from '../records/model.ts';
import type { Block, Text } from '../sheet/sheet.ts';
import { heading, lines, paragraphs } from './wording/blocks.ts';
import { countOf } from './wording/count.ts';
import { dayText } from './wording/day.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const adopted = defineView({
  id: 'adopted',
  purpose: 'What came from former owners: when, which records, their fingerprint.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { adopted: came } = context.book.records;
    return came === undefined ? [] : told(context, came);
  },
});

function told({ book, say }: ViewContext, came: Adopted): readonly Block[] {
  const files = new Set(came.records.map(({ file }) => file));
  const jobs = book.records.jobs.filter(({ file }) => files.has(file));
  const before = came.before.map((one): Text => [
    `${say('before that it was taken over on')} ${dayText(one.date)}`,
    ...print(one.fingerprint, say),
  ]);
  const first: Text = [`${say('Taken over on')} ${dayText(came.date)}`, ...print(came.fingerprint, say)];
  return [
    heading(2, say('From the former owner'), 'from-the-former-owner'),
    lines([first, ...before]),
    paragraphs(
      `${spanOf(jobs, say)} ${say('came with a package and stand here as they came; a change to one of them is told as a problem. What follows them was recorded by the present owner.')}`,
    ),
  ];
}

function print(hash: string | undefined, say: ViewContext['say']): Exclude<Text, string> {
  return hash === undefined
    ? []
    : [`; ${say('fingerprint of the package')} `, { kind: 'code', text: fingerprintText(hash) }];
}

/** `12 records, from 8 March 2025 to 20 September 2025,`: the jobs are in the order of their days. */
function spanOf(jobs: readonly Job[], say: ViewContext['say']): string {
  const [first] = jobs;
  const last = jobs.at(-1);
  const many = countOf(jobs.length, say('record'), say('records'));
  if (first === undefined || last === undefined) return many;
  return `${many}, ${say('from')} ${dayText(first.date.from)} ${say('to')} ${dayText(last.date.to)},`;
}
