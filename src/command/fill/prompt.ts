// What is shown at a question: what is asked, with unit, standard, limit, last reading and caution, as on the sheet.
import type { Blank } from '../../entry/blank.ts';

/** Lines shown above the prompt; a caution stands there as on paper. */
export function linesAbove({ caution }: Blank): readonly string[] {
  return caution === undefined ? [] : [`   ${caution.grade} ${caution.text}`];
}

/** `Chain slack, as found (mm; limit 20 to 30 mm; last 32 mm, 2026-01-17): ` */
export function promptFor(blank: Blank, given: string | undefined): string {
  const { unit, standard, limit, last, expected, kind, step } = blank;
  const beside = [
    kind === 'tick' ? 'y, n' : (unit ?? ''),
    blank.id.endsWith('/foot/date') ? 't for today' : '',
    standard === undefined ? '' : `standard ${standard}`,
    limit === undefined ? '' : `limit ${limit}`,
    last === undefined ? '' : kind === 'tick' ? last : `last ${last}`,
    expected === undefined ? '' : `expect ${expected}`,
    given === undefined ? '' : `now ${given}`,
  ].filter((text) => text !== '');
  return `${step === undefined || kind === 'text' ? '' : `${step}  `}${blank.asks}${beside.length === 0 ? '' : ` (${beside.join('; ')})`}: `;
}

/** The same for a fastener: a value says that it was tightened, `y` says no more than that. */
export function torquePrompt(reached: Blank): string {
  const { unit, standard, asks } = reached;
  const beside = [unit ?? '', standard === undefined ? '' : `standard ${standard}`, 'y: tightened, not read'];
  return `${asks} (${beside.filter((text) => text !== '').join('; ')}): `;
}

/** The same for the two boxes of a reading: as found, or both with `>` between. */
export function pairPrompt(found: Blank, left: Blank): string {
  const [now, then] = [found.given, left.given];
  const given = now === undefined && then === undefined ? undefined : `${now ?? '…'} > ${then ?? '…'}`;
  return promptFor({ ...found, asks: found.asks.replace(/, as found$/u, '') }, given).replace(
    /: $/u,
    ', found > left: ',
  );
}
