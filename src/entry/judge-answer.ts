// What is said at once of an answer: it cannot be read, one unit was taken for another, it lies past its limit, it is far from the last reading.
import { grossSlip, slipOf } from '../book/queries/unit-slip.ts';
import { isTooClose, measureOf, verdictOf, type Measure } from '../book/verdict.ts';
import type { Book, Blank as PlanBlank } from '../book/book.ts';
import { dimensionsOf } from '../records/dimensions-of.ts';
import type { Job } from '../records/model.ts';
import type { WrittenRange, Written } from '../quantity/quantity.ts';
import type { Blank } from './blank.ts';
import { cleanAnswer, tickSaid } from './clean-answer.ts';
import { judgeClock } from './judge-clock.ts';
import { readBoxValue } from './read-value.ts';
import type { Target } from './target.ts';
import { otherTarget, targetsOf } from './targets.ts';
import { judgeNumber } from './write-number.ts';

export interface Judged {
  /** `unreadable` cannot be kept; every other may stand. */
  readonly code:
    | 'unreadable'
    | 'unit-slip'
    | 'past-limit'
    | 'outside-range'
    | 'far-from-last'
    | 'too-close'
    | 'went-back'
    | 'read-otherwise';
  readonly text: string;
}

/** Nothing where there is nothing to say. Notes, `?` and `-` are never judged. */
export function judgeAnswer(book: Book, job: Job, blank: Blank, value: string): readonly Judged[] {
  const said = cleanAnswer(value);
  if (said === '' || said === '?' || said === '-') return [];
  const target = targetsOf(book, job).get(blank.id) ?? otherTarget(book, job.id, blank.id, blank.kind);
  if (blank.kind === 'tick') return tickSaid(said) === undefined ? [unreadable('This is a tick: yes, no or `-`.')] : [];
  if (target.kind === 'torque') return ofTorque(book, target, blank, said);
  if (target.kind === 'foot' && target.field === 'odometer') return judgeClock(book, job, said);
  if (target.kind === 'number') return judgeNumber(book, target.name, said);
  if (target.kind !== 'reading') return [];
  const asked = book.plans
    .find((plan) => plan.job.id === job.id)
    ?.blanks.find(({ id }) => id === blank.id.slice(0, blank.id.lastIndexOf('/')));
  const read = readBoxValue(said, blank.unit ?? '', dimensionsOf(book.records.maker)(target.item));
  if (read.kind === 'refused') return [unreadable(sentence(read.message, read.hint))];
  if (read.kind === 'words' || asked === undefined) return [];
  return ofReading(book, asked, read.written);
}

function ofReading(book: Book, asked: PlanBlank, written: Written): readonly Judged[] {
  const measure = measureOf(asked.limit, asked.setting);
  const value = { kind: 'read', written } as const;
  const tool = asked.limit?.instrument ?? asked.last?.instrument;
  const verdict = verdictOf(
    value,
    measure,
    book.records.instruments.find(({ id }) => id === tool),
  );
  const slip =
    verdict === 'within standard'
      ? undefined
      : (slipFrom(written, middleOf(measure?.standard) ?? lastOf(asked)) ?? grossFrom(written, measure));
  if (slip !== undefined)
    return [{ code: 'unit-slip', text: `About ${slip} times off what is to be expected: one unit taken for another?` }];
  if (verdict === 'past the limit') return [{ code: 'past-limit', text: 'Past its limit.' }];
  if (verdict === 'outside the range') return [{ code: 'outside-range', text: 'Outside its range.' }];
  if (isTooClose(verdict)) {
    const by = verdict === 'too close to call with this instrument' ? 'with this instrument' : 'by the digits written';
    return [{ code: 'too-close', text: `Too close to its limit to call ${by}.` }];
  }
  const last = lastOf(asked);
  if (last === undefined || verdict === 'within standard' || !isFar(written.quantity, last)) return [];
  return [{ code: 'far-from-last', text: 'Far from the last reading.' }];
}

function ofTorque(
  book: Book,
  target: Extract<Target, { readonly kind: 'torque' }>,
  blank: Blank,
  said: string,
): readonly Judged[] {
  if (!target.reached || /^(?:reached|yielded|stripped|by feel)$/iu.test(said)) return [];
  const read = readBoxValue(said, blank.unit ?? '', 'torque');
  if (read.kind === 'refused')
    return [
      unreadable(sentence(read.message, 'write a torque with its unit, or: reached, by feel, yielded, stripped')),
    ];
  const value = book.torque.find(({ fastener }) => fastener.id === target.fastener)?.value;
  if (read.kind === 'words' || value === undefined) return [];
  const { quantity } = read.written;
  const [low, high] = [value.low.quantity, value.high?.quantity ?? value.low.quantity];
  const slip = slipFrom(read.written, (low + high) / 2);
  if (slip !== undefined)
    return [{ code: 'unit-slip', text: `About ${slip} times off the figure beside it: one unit taken for another?` }];
  if (quantity > high * nearTorque) return [{ code: 'outside-range', text: 'More than the figure beside it.' }];
  return quantity < low / nearTorque ? [{ code: 'outside-range', text: 'Less than the figure beside it.' }] : [];
}

/** A click wrench is good to a few per cent; our choice of when to speak, common practice, not a tolerance. */
const nearTorque = 1.06;

/** Three times off or more is far, by judgement: wear and work seldom move a reading so far. */
const far = 3;

function isFar(now: number, before: number): boolean {
  if (now <= 0 || before <= 0) return false;
  return now / before >= far || before / now >= far;
}

function lastOf(asked: PlanBlank): number | undefined {
  return asked.last?.value.kind === 'read' ? asked.last.value.written.quantity : undefined;
}

function middleOf(range: WrittenRange | undefined): number | undefined {
  if (range?.low === undefined || range.high === undefined) return range?.low ?? range?.high;
  return (range.low + range.high) / 2;
}

function grossFrom(written: Written, measure: Measure | undefined): string | undefined {
  const factor = measure === undefined ? undefined : grossSlip(measure, written.quantity, written.unit.dimension);
  return factor === undefined ? undefined : timesOff(factor);
}

function slipFrom(written: Written, expected: number | undefined): string | undefined {
  if (expected === undefined || expected === 0) return undefined;
  const factor = slipOf(written.quantity, expected, written.unit.dimension);
  return factor === undefined ? undefined : timesOff(factor);
}

function timesOff(factor: number): string {
  return String(Math.round(factor * 10) / 10);
}

function unreadable(text: string): Judged {
  return { code: 'unreadable', text };
}

function sentence(message: string, hint: string | undefined): string {
  const first = message.charAt(0).toUpperCase() + message.slice(1);
  return hint === undefined ? `${first}.` : `${first}: ${hint}.`;
}
