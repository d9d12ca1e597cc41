// The general schedules that the due list draws on: what each was taken from, for engines of what size it was meant, and whether this one is of that size.
import { sweptVolume } from '../../calc/displacement.ts';
import { inUnit, of } from '../../quantity/quantity.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { cubicCentimetre, millimetre } from '../../quantity/units.ts';
import type { Content } from '../../records/content-model.ts';
import type { Machine, ServiceLine } from '../../records/model.ts';
import type { DueLine } from '../book.ts';

/** An engine of the class that was bored out, or is a little smaller than its name, is of that size yet. Judgement. */
const near = 1.1;

export interface GeneralSchedule {
  readonly schedule: Content['schedules'][number];
  /** Lines of the due list that are from it. */
  readonly lines: readonly ServiceLine[];
  /** Whether the engine is of the size it was meant for; undefined where one of the two is not known. */
  readonly fits?: boolean;
}

/** All cylinders together, of bore and stroke in machine.yaml; undefined without both, or while the number of cylinders is not known. */
export function displacementOf({ geometry, features }: Machine): Quantity<'volume'> | undefined {
  const { bore, stroke } = geometry;
  if (bore === undefined || stroke === undefined || features.notKnown?.includes('cylinders') === true) return undefined;
  const [b, s] = [bore, stroke].map((one) => inUnit<'length'>(one.quantity, millimetre));
  return of(sweptVolume(b ?? 0, s ?? 0, features.cylinders), cubicCentimetre);
}

/** In the order of the content; one that gives no line is left out. */
export function generalSchedules(
  content: Content,
  machine: Machine,
  due: readonly DueLine[],
): readonly GeneralSchedule[] {
  const size = displacementOf(machine);
  const general = due.map(({ service }) => service).filter(({ basis }) => basis === 'general');
  return content.schedules.flatMap((schedule): readonly GeneralSchedule[] => {
    const file = schedule.services[0]?.at.file;
    const lines = general.filter(({ at }) => at.file === file);
    if (lines.length === 0) return [];
    const { low, high } = schedule.meantFor ?? {};
    if (schedule.meantFor === undefined || size === undefined) return [{ schedule, lines }];
    return [{ schedule, lines, fits: size * near >= (low ?? 0) && size <= (high ?? Infinity) * near }];
  });
}
