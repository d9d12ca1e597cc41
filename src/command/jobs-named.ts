// The open jobs that a word may mean: by a part of their names, else by a procedure that they follow, else by words of their titles.
import type { Job } from '../records/model.ts';

/** The jobs meant, in their order; the first way that finds any is the one that counts. */
export function jobsNamed(word: string, jobs: readonly Job[]): readonly Job[] {
  const name = hyphened(word);
  if (name === '') return [];
  const ways: readonly ((job: Job) => boolean)[] = [
    ({ id }) => id.includes(word),
    ({ procedures }) => procedures.includes(name),
    ({ procedures }) => procedures.some((id) => id.includes(name)),
    ({ title }) => `-${hyphened(title)}-`.includes(`-${name}-`),
  ];
  for (const isMeant of ways) {
    const found = jobs.filter(isMeant);
    if (found.length > 0) return found;
  }
  return [];
}

/** `Rear wheel out` as an id is written. */
function hyphened(words: string): string {
  return words
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/gu, '');
}
