// Which service lines are for this machine: the maker's, and general ones for what the maker does not speak of.
import type { ServiceLine } from '../../records/model.ts';
import { appliesTo } from '../applies.ts';
import type { Ground } from '../ground.ts';
import { notOnIt, topicsOf } from './topics.ts';

/** Brakes, tyres and oil get no grace, whatever a schedule says (common practice). */
const noGrace = /\b(?:brakes?|tyres?|tires?|oil)\b/iu;

/** Share of an interval that a line may run over, 0 to 1. */
export function graceOf(line: ServiceLine): number {
  if (noGrace.test(line.item) || noGrace.test(line.id.replaceAll('-', ' '))) return 0;
  return line.grace;
}

/**
 * The maker's lines for this frame number, and after them those of the general schedules that apply and that say what the
 * maker does not speak of; each of these is marked as general. A line on nothing but what the machine has not got is left out.
 */
export function serviceLines(ground: Ground): readonly ServiceLine[] {
  const { features } = ground.records.machine;
  const makers = ground.maker.services;
  const schedules = ground.content.schedules.filter((one) => appliesTo(one.applies, features));
  if (schedules.length === 0) return makers;
  const ids = new Set(makers.map((line) => line.id));
  const spoken = new Set(makers.flatMap(topicsOf));
  const missing = notOnIt(features);
  const lines = new Map(schedules.flatMap((one) => one.services).map((line) => [line.id, line]));
  const filling = [...lines.values()].filter((line) => {
    const about = topicsOf(line);
    if (ids.has(line.id) || (about.length > 0 && about.every((topic) => missing.has(topic)))) return false;
    return makers.length === 0 || about.length === 0 || about.some((topic) => !spoken.has(topic));
  });
  return [...makers, ...filling.map((line): ServiceLine => ({ ...line, basis: 'general' }))];
}
