// What a machine adds to the content: checks, cautions, procedures, schedules, edges. It adds; it takes nothing away and softens nothing.
import type { Outcome, Problem } from '../../problem/problem.ts';
import type { SourceFile } from '../../source/files.ts';
import { isOwnContent } from '../../source/machine-files.ts';
import { checkContent } from '../check-content.ts';
import { givenTwice } from '../check-ids.ts';
import { cautionsKind } from '../content-kinds/cautions.ts';
import { faultsKind } from '../content-kinds/faults.ts';
import { orderKind } from '../content-kinds/order.ts';
import { schedulesKind } from '../content-kinds/schedules.ts';
import type { Content } from '../content-model.ts';
import type { RecordKind } from '../kinds/record-kind.ts';
import { addedFaults } from '../fault-tables.ts';
import { keptList, keptWith } from '../kept-with.ts';
import { readFile } from '../read-file.ts';
import { addCautions } from './own-cautions.ts';
import { addHoldPoints, ownHoldPointsKind } from './own-hold-points.ts';
import { addProcedures } from './own-procedures.ts';
import { weakened } from './weakened.ts';

/** Content with what a machine folder adds to it, and what is wrong with that. Without such files the content is given back as it is. */
export function withOwnContent(content: Content, files: readonly SourceFile[]): Outcome<Content> {
  const own = sameFiles(files.filter(({ file }) => isOwnContent(file)));
  return own.length === 0 ? { value: content, problems: [] } : withOwn(content, own);
}

const sameFiles = keptList<SourceFile>();

/** The same for the same files: what follows from the content is kept with it. */
const withOwn = keptWith((content: Content, own: readonly SourceFile[]): Outcome<Content> => {
  const problems: Problem[] = [];
  const all = <T>(kind: RecordKind<T>): readonly T[] =>
    own.flatMap((source) => {
      if (!kind.matches(source.file)) return [];
      const reading = readFile(source, kind);
      problems.push(...reading.problems);
      return reading.problems.length > 0 || reading.value === undefined ? [] : [reading.value];
    });
  const kept = <T>({ value, problems: found }: Outcome<T>): T => {
    problems.push(...found);
    return value;
  };
  const cautions = all(cautionsKind).flat();
  const schedules = all(schedulesKind);
  const orders = all(orderKind);
  const faults = addedFaults(content.faults, all(faultsKind));
  const known = new Set(content.schedules.flatMap((one) => one.services.map((line) => line.id)));
  const lines = schedules.flatMap((one) => one.services);
  const twice = lines.filter((line) => known.has(line.id));
  problems.push(
    ...twice.map((line) =>
      weakened(
        line.at,
        'id',
        `the service “${line.id}” of a general schedule`,
        'Write the maker’s into maker/*.yaml, with its source.',
      ),
    ),
  );
  const value: Content = {
    ...content,
    cautions: kept(addCautions(content.cautions, cautions)),
    procedures: kept(addProcedures(content.procedures, own)),
    holdPoints: kept(addHoldPoints(content.holdPoints, all(ownHoldPointsKind))),
    schedules: [
      ...content.schedules,
      ...schedules.map((one) => ({ ...one, services: one.services.filter((line) => !known.has(line.id)) })),
    ],
    orders: [...(content.orders ?? []), ...orders],
    faults,
  };
  const steps = (value.orders ?? []).flatMap((order) => order.steps);
  const named = [cautions, lines, steps, faults.causes, faults.tests];
  const mine = new Set(own.map(({ file }) => file));
  const checked = checkContent(value).filter(({ at }) => mine.has(at.file));
  return { value, problems: [...problems, ...named.flatMap(givenTwice), ...checked] };
});
