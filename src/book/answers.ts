// Queries that somebody answered: they rest until what they say changes.
import type { Problem } from '../problem/problem.ts';
import type { Answer, Job } from '../records/model.ts';
import { printOf } from '../records/signed-print.ts';

export interface Answered {
  readonly query: Problem;
  readonly answer: Answer;
  readonly job: Job;
}

/** The print of a query: over its code, its file and its sentence, so that other facts make another print. */
export function queryPrint({ code, at, message }: Problem): string {
  return printOf([code, at.file, message].join('\n'));
}

/** Parts the queries into those that are open and those that a record answers; linear in both. */
export function parted(
  queries: readonly Problem[],
  jobs: readonly Job[],
): { readonly open: readonly Problem[]; readonly answered: readonly Answered[] } {
  const given = new Map(
    jobs.flatMap((job) => (job.answers ?? []).map((answer) => [answer.query, { answer, job }] as const)),
  );
  if (given.size === 0) return { open: queries, answered: [] };
  const open: Problem[] = [];
  const answered: Answered[] = [];
  for (const query of queries) {
    const found = given.get(queryPrint(query));
    if (found === undefined) open.push(query);
    else answered.push({ query, ...found });
  }
  return { open, answered };
}
