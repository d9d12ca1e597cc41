// What is said beside a job that does not fit: how many evenings it takes, that it can be begun, that others took the time.
import type { Asked } from './evening.ts';
import { minutesText } from './estimate.ts';
import type { Obstacle } from './obstacle.ts';
import { beginText, eveningsText } from './plan-text.ts';
import type { PlannedJob } from './plan-of-work.ts';

/** Lines below the obstacles of one job; `left` is what the chosen jobs leave of the evening. */
export function besideTime(
  planned: PlannedJob,
  because: readonly Obstacle[],
  asked: Asked,
  left: number,
): readonly string[] {
  const long = because.find((one) => one.kind === 'time');
  const minutes = long?.kind === 'time' ? long.minutes : undefined;
  const begin = beginText(planned);
  const alone = because.some(({ kind }) => kind === 'helper');
  return [
    ...(minutes !== undefined && minutes > asked.minutes ? [eveningsText(minutes, asked.minutes)] : []),
    ...(minutes !== undefined && minutes <= asked.minutes
      ? [`only ${minutesText(left)} are left after the others`]
      : []),
    ...(begin === undefined || alone ? [] : [begin]),
  ];
}
