// Which service lines are for this machine: the maker's; general ones only where the maker has none.
import type { ServiceLine } from '../../records/model.ts';
import { appliesTo } from '../applies.ts';
import type { Ground } from '../ground.ts';

/** Brakes, tyres and oil get no grace, whatever a schedule says (common practice). */
const noGrace = /\b(?:brakes?|tyres?|tires?|oil)\b/iu;

/** Share of an interval that a line may run over, 0 to 1. */
export function graceOf(line: ServiceLine): number {
  if (noGrace.test(line.item) || noGrace.test(line.id.replaceAll('-', ' '))) return 0;
  return line.grace;
}

/** The maker's lines for this frame number; else those of the general schedules that apply, each marked general. */
export function serviceLines(ground: Ground): readonly ServiceLine[] {
  if (ground.records.maker.services.length > 0) return ground.maker.services;
  const schedules = ground.content.schedules.filter((one) => appliesTo(one.applies, ground.records.machine.features));
  const lines = new Map(schedules.flatMap((one) => one.services).map((line) => [line.id, line]));
  return [...lines.values()].map((line) => ({ ...line, basis: 'general' }));
}
