// A general schedule on an engine of another size than it was meant for.
import { formatDecimal } from '../../quantity/decimal.ts';
import { printQuantity } from '../../figure/print.ts';
import { cubicCentimetre } from '../../quantity/units.ts';
import { displacementOf, generalSchedules } from '../due/general-schedules.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** One a schedule; nothing where bore and stroke are not known, since the due list says so. */
export const scheduleForOtherSize: Look = ({ ground, due }) => {
  const { machine } = ground.records;
  const size = displacementOf(machine);
  if (size === undefined) return [];
  return generalSchedules(ground.content, machine, due).flatMap(({ schedule, lines, fits }) => {
    if (fits !== false) return [];
    const has = printQuantity(size, cubicCentimetre, 0);
    const of = `${formatDecimal(lines.length, 0)} ${lines.length === 1 ? 'line of the due list is' : 'lines of the due list are'}`;
    const message = `${of} from “${schedule.title}”, meant for engines of ${schedule.meantFor?.text ?? ''}; this one has ${has}`;
    const hint =
      'take what you can from the machine’s own book, under “services” in a file of maker/; bring these lines nearer where in doubt';
    return [query('schedule-for-other-size', { file: machine.file, path: ['geometry'] }, message, hint)];
  });
};
