// A machine's own cautions: new ones, or a graver grade for one that there is; never a softer grade or other words.
import type { Outcome, Problem } from '../../problem/problem.ts';
import type { Caution } from '../content-model.ts';
import { weakened } from './weakened.ts';

const grades: readonly Caution['grade'][] = ['NOTE', 'CAUTION', 'WARNING'];

/** All cautions, the machine's among them. */
export function addCautions(
  known: ReadonlyMap<string, Caution>,
  own: readonly Caution[],
): Outcome<ReadonlyMap<string, Caution>> {
  const value = new Map(known);
  const problems: Problem[] = [];
  for (const caution of own) {
    const before = known.get(caution.id);
    const found = before === undefined ? undefined : softer(before, caution);
    if (found === undefined) value.set(caution.id, caution);
    else problems.push(found);
  }
  return { value, problems };
}

function softer(before: Caution, now: Caution): Problem | undefined {
  if (now.line !== before.line)
    return weakened(
      now.at,
      'line',
      `the line of “${now.id}” in other words`,
      'Give yours an id of its own; both are printed.',
    );
  if (grades.indexOf(now.grade) >= grades.indexOf(before.grade)) return undefined;
  return weakened(
    now.at,
    'grade',
    `“${now.id}” as a ${now.grade}, which is a ${before.grade}`,
    `Write ${before.grade}, or leave it out.`,
  );
}
