// The fingerprint of the records, and in plain words what it shows and what it does not; then every signed record and whether it stands.
import { fingerprintText } from '../records/fingerprint.ts';
import type { Job } from '../records/model.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { column, heading, lines, paragraphs, row, stack } from './wording/blocks.ts';
import { capped, olderOnes } from './wording/capped.ts';
import { dayText } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const fingerprint = defineView({
  id: 'fingerprint',
  purpose: 'The fingerprint of the records, what it shows and what not, and the signed records.',
  needs: 'machine',
  options: [],
  blocks: (context) => stack(printed(context), signed(context)),
});

function printed({ book, say }: ViewContext): readonly Block[] {
  if (book.fingerprint === undefined) return [];
  const code = [{ kind: 'code', text: fingerprintText(book.fingerprint) } as const];
  return [
    heading(2, say('Fingerprint of the records'), 'fingerprint'),
    paragraphs(code),
    lines([
      say(
        'The same fingerprint on paper and in a package says: the same record texts, letter by letter, nothing added, taken away or changed since this was printed.',
      ),
      say('It does not say that what they tell is true, nor who wrote it, nor when. Photographs are not in it.'),
      say(
        'It is the SHA-256 of the file records.sha256, which lists the SHA-256 of each record in the order of their names. Any program for such sums makes it again.',
      ),
    ]),
  ];
}

function signed({ book, say, rows: shown }: ViewContext): readonly Block[] {
  const rows = book.records.jobs.flatMap((job) => signedRow(job, say));
  if (rows.length === 0) return [];
  return [
    {
      type: 'table',
      caption: say('Signed records'),
      columns: [column(say('Record'), 6), column(say('Signed'), 3), column(say('As it was signed'), 5)],
      rows: shown === undefined ? rows : capped(rows.toReversed(), (rest) => olderOnes(say, rest), shown),
      empty: '',
      use: 'read',
    },
  ];
}

function signedRow(job: Job, say: ViewContext['say']): readonly Row[] {
  if (job.signed === undefined) return [];
  return [row([jobTitle(job)], dayText(job.signed.date), say(standsAs(job)))];
}

function standsAs({ signed: by, print }: Job): string {
  if (by?.print === undefined) return 'not to be told: signed without its print';
  return by.print === print ? 'yes' : 'no: changed after it was signed';
}
