// Names in jobs that content defines: procedures followed, checks done, points released, services done.
import type { Problem } from '../problem/problem.ts';
import type { Content } from './content-model.ts';
import type { Job, Records } from './model.ts';
import { below, unknownReference } from './reference.ts';
import { declaredUnread } from './unread-ids.ts';

/** Procedures, checks, released points and services that neither content nor the maker's data know. */
export function checkContentReferences(records: Records, content: Content): readonly Problem[] {
  const procedures = new Set(content.procedures.keys());
  const checks = new Set(content.holdPoints.flatMap((point) => point.checks.map((check) => check.id)));
  const held = new Set([...content.holdPoints.map((point) => point.id), ...checks]);
  const lines = [...records.maker.services, ...content.schedules.flatMap((schedule) => schedule.services)];
  const services = new Set([...lines, ...declaredUnread(records)].map((line) => line.id));
  return records.jobs.flatMap((job) => [
    ...unknown(job, 'procedures', job.procedures, 'procedure', procedures),
    ...unknown(job, 'services', job.services, 'service', services),
    ...job.checks
      .filter(({ check }) => !checks.has(check))
      .map(({ check, at }) => unknownReference(check, below(at, 'check'), 'check', checks)),
    ...(job.releases ?? [])
      .filter(({ of }) => !held.has(of))
      .map(({ of, at }) => unknownReference(of, below(at, 'of'), 'hold point or check', held)),
  ]);
}

function unknown(
  job: Job,
  key: string,
  words: readonly string[],
  what: string,
  names: ReadonlySet<string>,
): readonly Problem[] {
  return words.flatMap((word, i) =>
    names.has(word) ? [] : [unknownReference(word, { file: job.file, path: [key, i] }, what, names)],
  );
}
