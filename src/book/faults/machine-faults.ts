// The fault tables of one machine: what applies to it, by its features.
import { noFaultTables, type FaultTables } from '../../records/fault-model.ts';
import type { Content } from '../../records/content-model.ts';
import type { Features } from '../../records/model.ts';
import { appliesTo } from '../applies.ts';

/** Causes, tests, outcomes and rows that are for this machine; a row of which an outcome is not, is not. */
export function machineFaults(content: Content, features: Features): FaultTables {
  const { causes, tests, together } = content.faults ?? noFaultTables;
  const mine = tests
    .filter((test) => appliesTo(test.applies, features))
    .map((test) => ({ ...test, outcomes: test.outcomes.filter((one) => appliesTo(one.applies, features)) }));
  const seen = new Set(mine.flatMap((test) => test.outcomes.map((one) => `${test.id}=${one.saw}`)));
  return {
    causes: causes.filter((cause) => appliesTo(cause.applies, features)),
    tests: mine,
    together: together.filter((row) => appliesTo(row.applies, features) && row.saw.every((ref) => seen.has(ref))),
  };
}
