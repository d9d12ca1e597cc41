// Deposits on exchange parts: spent until the old part is back; what a payment or a deposit come back tells already is not told twice.
import type { Job, MoneyEntry, PartEntry } from '../../records/model.ts';
import { hasWords } from '../names.ts';
import type { Namer } from '../names.ts';
import type { CostLine } from './cost-line.ts';
import { lineOf, sameMoney } from './cost-line.ts';

interface Core {
  readonly job: Job;
  readonly part: PartEntry;
  readonly deposit: NonNullable<PartEntry['core']>['deposit'];
  returned: boolean;
}

/** One deposit for one buy, however often its records speak of it: a later entry of that part and amount goes on from it. */
function coresOf(jobs: readonly Job[], key: Namer): readonly Core[] {
  const cores: Core[] = [];
  for (const job of jobs)
    for (const part of job.parts) {
      const { core } = part;
      if (core === undefined || part.state === 'wanted') continue;
      const before = cores.find(
        (one) =>
          !one.returned &&
          one.job !== job &&
          key(one.part.part) === key(part.part) &&
          sameMoney(one.deposit, core.deposit),
      );
      if (before === undefined) cores.push({ job, part, deposit: core.deposit, returned: core.returned !== undefined });
      else before.returned ||= core.returned !== undefined;
    }
  return cores;
}

function speaksOf(entry: MoneyEntry, { part, deposit }: Core): boolean {
  return sameMoney(entry.amount, deposit) && hasWords(entry.for, part.part);
}

/** Lines that the money entries do not hold themselves. */
export function coreLines(jobs: readonly Job[], key: Namer): readonly CostLine[] {
  const cores = coresOf(jobs, key);
  if (cores.length === 0) return [];
  const entries = jobs.flatMap(({ money }) => money);
  const unused = new Set(entries);
  const take = (core: Core, kind: MoneyEntry['kind']): boolean => {
    const found = entries.find((one) => unused.has(one) && one.kind === kind && speaksOf(one, core));
    if (found !== undefined) unused.delete(found);
    return found !== undefined;
  };
  return cores.flatMap((core): readonly CostLine[] => {
    const { job, part, deposit, returned } = core;
    const out = take(core, 'deposit');
    const back = take(core, 'deposit back');
    const net = (out ? 1 : 0) - (back ? 1 : 0);
    const wanted = returned || back ? 0 : 1;
    if (net === wanted) return [];
    const kind = wanted > net ? 'deposit' : 'deposit back';
    const entry: MoneyEntry = {
      kind,
      amount: deposit,
      for: `${part.part}, on exchange`,
      group: 'deposits',
      at: part.at,
    };
    return [lineOf(job, entry, 'deposits', deposit, wanted > net ? 1 : -1)];
  });
}
