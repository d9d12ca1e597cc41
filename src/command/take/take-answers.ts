// `take` of the text that a telephone gives.
import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { answersBegin, readAnswersText } from './answers-text.ts';
import { putAnswers } from './put-answers.ts';
import type { TakeReader, TakeWork } from './reader.ts';

/** A job has some hundred blanks. */
const mostBytes = 4_000_000;

export const answersReader: TakeReader = {
  reads: 'answers from a telephone (text, from the page of a job)',
  knows: (_, head, folder) => !folder && answersBegin.test(head.toString('utf8')),
  take: takeText,
};

async function takeText(work: TakeWork): Promise<ExitCode> {
  const { terminal } = work.around;
  const name = basename(work.from);
  if (statSync(work.from).size > mostBytes) {
    terminal.tell(`${name} is larger than answers can be (4 MB). Nothing was taken.`);
    return exitCodes.problems;
  }
  const read = readAnswersText(readFileSync(work.from, 'utf8'));
  if ('why' in read) {
    terminal.tell(`${name}:${String(read.line)}: ${read.why}. Nothing was taken; send or save it again.`);
    return exitCodes.problems;
  }
  return putAnswers({ name, carries: read.carries, answers: read.answers, whole: false }, work);
}
