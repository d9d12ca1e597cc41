// A row with several ticks is answered as a whole: asked again, a tick that is not named any more is taken back.
import type { Answer } from '../../entry/answer.ts';
import type { Blank } from '../../entry/blank.ts';

/** The answers, with a `no` for each tick that stands in a row of which another was answered. */
export function wholeRows(blanks: readonly Blank[], answers: readonly Answer[]): readonly Answer[] {
  const said = new Set(answers.filter(({ value }) => value.trim() !== '').map(({ blank }) => blank));
  const rows = new Set(blanks.filter(({ id }) => said.has(id)).flatMap(({ grades }) => grades ?? []));
  const gone = blanks.filter(
    ({ id, grades, given }) => grades !== undefined && rows.has(grades) && given === 'yes' && !said.has(id),
  );
  return [...answers, ...gone.map(({ id }) => ({ blank: id, value: 'no' }))];
}
