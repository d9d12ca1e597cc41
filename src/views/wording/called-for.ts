// Why a fastener is to be tightened again, in a few words.
import type { Reason } from '../../book/plan/called-for.ts';
import { dayText } from './day.ts';

/** The reason in a few words, with its day. */
export function reasonText(say: (words: string) => string, reason: Reason): string {
  if (reason.why === 'due') return `${say('by the schedule')}: ${say(reason.due.state)}`;
  if (reason.why === 'going together') return `${say('after the planned work, one heat cycle, cold again')}`;
  const day = dayText(reason.job.date.from);
  return reason.why === 'run hot since'
    ? `${say('run hot')} ${day}`
    : `${say('ridden')} ${day}, ${say('not seen since')}`;
}
