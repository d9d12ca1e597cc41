// `take` of a filled form: its fields, read in a thread of their own, into the record that they were printed from.
import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { blankOfField } from '../../pdf/form.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { faultSentences, type FilledField } from './filled-form.ts';
import { largestForm, readFormInThread } from './form-thread.ts';
import type { CameBack } from './match-answers.ts';
import { putAnswers } from './put-answers.ts';
import type { TakeReader, TakeWork } from './reader.ts';

export const formReader: TakeReader = {
  reads: 'a filled form (PDF, printed with `splitpin print --form`)',
  knows: (path, head, folder) => !folder && (/\.pdf$/iu.test(path) || head.includes('%PDF-')),
  take: takeForm,
};

async function takeForm(work: TakeWork): Promise<ExitCode> {
  const { terminal } = work.around;
  const name = basename(work.from);
  if (statSync(work.from).size > largestForm) {
    terminal.tell(`${name} is larger than a form can be (64 MB). Nothing was taken.`);
    return exitCodes.problems;
  }
  const reading = await readFormInThread(readFileSync(work.from));
  if ('fault' in reading) {
    terminal.tell(`${name}: ${faultSentences[reading.fault]}`);
    return exitCodes.problems;
  }
  const answers = reading.fields.map(cameBack);
  return putAnswers({ name, carries: reading.carries, answers, whole: true }, work);
}

/** A field whose first state was lost is taken as if it had been empty. */
function cameBack({ name, value, before = '' }: FilledField): CameBack {
  return { blank: blankOfField(name), value, before };
}
