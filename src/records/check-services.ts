// A line of the maker's schedule that can never come due: nothing in it ever says when.
import type { Problem } from '../problem/problem.ts';
import type { Records, ServiceLine } from './model.ts';
import { below } from './reference.ts';

/** Maker's lines without any bound that are done with no other line, and charts that have nothing to repeat. */
export function checkServices({ maker }: Records): readonly Problem[] {
  const withAnother = new Set(maker.services.flatMap((line) => line.includes.filter((id) => id !== line.id)));
  return maker.services.flatMap((line) => {
    if (!hasBound(line) && !withAnother.has(line.id)) return [never(line)];
    return line.thenFrom !== undefined && line.every?.distance === undefined ? [nothingToRepeat(line)] : [];
  });
}

function hasBound(line: ServiceLine): boolean {
  const steps = [line.first, line.every, line.second, line.wear].some((one) => one !== undefined);
  return steps || line.afterStorage || Object.keys(line.severe).length > 0;
}

function never(line: ServiceLine): Problem {
  return {
    code: 'service-never-due',
    severity: 'problem',
    at: line.at,
    message: `${line.item} can never come due: no interval, no first service, no wear limit, and no other service includes it.`,
    hint: 'Write `every:`, `first:` or `wear:`, or name it under `includes:` of the service that it is done with.',
  };
}

function nothingToRepeat(line: ServiceLine): Problem {
  return {
    code: 'service-never-due',
    severity: 'problem',
    at: below(line.at, 'then from'),
    message: `${line.item} is to repeat from a column by distance, and its \`every\` has no distance to repeat.`,
    hint: 'Write the distance under `every:`, or leave `then from` out.',
  };
}
