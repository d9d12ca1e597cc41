// What somebody calls a test and its outcome: by id, by mark, by another name; and the nearest names when there is none.
import type { FaultOutcome, FaultTest } from '../../records/fault-model.ts';
import { nearest } from '../../records/nearest.ts';
import { silent } from '../../calc/faults/odds-table.ts';

/** A test with an outcome of it; without an outcome it was done and told nothing. */
export interface NamedOutcome {
  readonly test: FaultTest;
  readonly outcome?: FaultOutcome;
}

/** What was named, or why it was not understood, with the nearest names. */
export type Naming =
  | { readonly ok: true; readonly value: NamedOutcome }
  | { readonly ok: false; readonly message: string; readonly near: readonly string[] };

/** Finds a test and its outcome; `silent` is an outcome of every test. */
export function nameOutcome(tests: readonly FaultTest[], test: string, saw: string): Naming {
  const found = testNamed(tests, test);
  if (found === undefined) {
    const names = tests.flatMap((one) => [one.id, ...one.also]);
    return { ok: false, message: `There is no test or sign “${test}”.`, near: nearIn(test, names) };
  }
  if (saw === silent) return { ok: true, value: { test: found } };
  const outcome = found.outcomes.find((one) => one.saw === saw) ?? found.outcomes.find((one) => one.also.includes(saw));
  if (outcome !== undefined) return { ok: true, value: { test: found, outcome } };
  const ids = found.outcomes.map((one) => one.saw);
  const message =
    saw === ''
      ? `What did “${found.id}” show? Write it after the name, as ${found.id}=${ids[0] ?? silent}.`
      : `“${found.id}” has no outcome “${saw}”.`;
  return { ok: false, message, near: [...new Set([...ids, silent])] };
}

/** A test by its id, its mark or another name of it; ids go first. */
export function testNamed(tests: readonly FaultTest[], name: string): FaultTest | undefined {
  const small = name.toLowerCase();
  return (
    tests.find((one) => one.id === small) ??
    tests.find((one) => one.mark?.toLowerCase() === small) ??
    tests.find((one) => one.also.includes(small))
  );
}

function nearIn(word: string, names: readonly string[]): readonly string[] {
  const parts = word
    .toLowerCase()
    .split('-')
    .filter((part) => part.length > 2);
  const sharing = names.filter((name) => parts.some((part) => name.includes(part)));
  return [...new Set([...nearest(word, names), ...sharing])].slice(0, 6);
}
