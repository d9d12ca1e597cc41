// The search for a fault in words: what is seen, why a cause leads, how a test is done. The sheet, the page and the command say the same.
import { formatDecimal } from '../../quantity/decimal.ts';
import type { Diagnosis, LeadingCause, Seen } from './diagnosis.ts';

/**
 * Leading causes of a group: at most three. Once something seen speaks for any cause, a group that nothing speaks for names one,
 * and only where that is at least possible by itself.
 */
export function leading({ evidence }: Diagnosis, causes: readonly LeadingCause[], most = 3): readonly LeadingCause[] {
  if (!evidence.speaks) return causes.filter(({ now }) => now >= leastToName).slice(0, most);
  const raised = causes.filter(({ now, before }) => now > before && now >= leastToName);
  return raised.length > 0 ? raised.slice(0, most) : causes.filter(({ now }) => now >= possible).slice(0, 1);
}

/** Odds below which a cause is not named on paper, and from which one is that nothing speaks for. */
const leastToName = 0.1;
const possible = 0.2;

/** `spark: thin and yellow` of something seen; an outcome that names its test already is enough. */
export function seenWords({ test, outcome }: Seen): string {
  const name = test.short ?? test.test;
  const words = lowerFirst(outcome?.words ?? 'told nothing');
  return words.startsWith(lowerFirst(name)) ? words : `${name}: ${words}`;
}

/** The words of an outcome of `test=outcome`, or of several joined with ` + `. */
export function partWords(found: Diagnosis, from: string): string {
  const words = from.split(' + ').map((ref) => {
    const [id, saw] = ref.split('=');
    const test = found.faults.tests.find((one) => one.id === id);
    const outcome = test?.outcomes.find((one) => one.saw === saw);
    return test === undefined || outcome === undefined ? ref : seenWords({ test, outcome });
  });
  return words.join(' + ');
}

/** Why a cause stands where it does: what speaks for it, then against, at most so many. */
export function reasons(found: Diagnosis, one: LeadingCause, most = 3): readonly string[] {
  const parts = one.parts.filter(({ times }) => times > 1).map(({ from }) => `${partWords(found, from)}`);
  const against = one.parts.filter(({ times }) => times < 1).map(({ from }) => `against it: ${partWords(found, from)}`);
  const all = [...parts, ...moves(one), ...against].slice(0, most);
  return all.length > 0
    ? all
    : [found.standing === 'long stored' ? 'common on what has stood' : 'nothing speaks against it yet'];
}

/** Work on a cause, or on what it lies in, since the engine ran last. */
export function moves({ known }: LeadingCause): readonly string[] {
  return known.map(({ why, times }) => (times < 1 ? `worked on since: ${why}` : `moved since: ${why}`));
}

/** The arithmetic of one cause, each observation with its part: odds, not a chance. */
export function workingOf(found: Diagnosis, one: LeadingCause): string {
  const factors = one.parts.map(
    ({ from, times }) => `× ${formatDecimal(times, times < 1 ? 3 : 0)} (${partWords(found, from)})`,
  );
  const result = factors.length === 0 ? [] : [`= ${odds(one.now)}`];
  return [`odds ${odds(one.before)}`, ...factors, ...result].join(' ');
}

function odds(value: number): string {
  return formatDecimal(value, value < 1 ? 3 : value < 10 ? 2 : 0);
}

export function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
