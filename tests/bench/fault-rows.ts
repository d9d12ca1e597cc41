// Ranking of faults: what is seen weighed, every test asked what it would tell, on a machine with all that it can have.
import { fileURLToPath } from 'node:url';
import { causeOdds } from '../../src/calc/faults/cause-odds.ts';
import { weigh } from '../../src/calc/faults/evidence.ts';
import { nextTests } from '../../src/calc/faults/next-tests.ts';
import type { OddsTable } from '../../src/calc/faults/odds-table.ts';
import { median, type Line } from './rows.ts';

const [causes, tests, turns] = [50, 40, 21];
const times = [8, 3, 1 / 3, 1 / 8, 50, 0] as const;

/** 50 causes, 40 tests of four outcomes, each of which speaks of eight causes. */
function table(): OddsTable {
  const outcomes = (test: number): OddsTable['tests'][number]['outcomes'] =>
    Array.from({ length: 4 }, (_, outcome) => ({
      id: String(outcome),
      share: 0.25,
      says: Array.from({ length: 8 }, (_says, says) => ({
        cause: String((test * 7 + outcome * 11 + says * 5) % causes),
        times: times[(test + outcome + says) % times.length] ?? 1,
      })),
      notWith: [],
    }));
  return {
    causes: Array.from({ length: causes }, (_, id) => ({ id: String(id), odds: 0.25 })),
    tests: Array.from({ length: tests }, (_, test) => ({
      id: String(test),
      looksAt: String(test % 30),
      effort: 5,
      free: false,
      notice: false,
      running: false,
      turning: false,
      turns: false,
      when: [],
      unless: [],
      after: [],
      held: [],
      outcomes: outcomes(test),
    })),
    together: Array.from({ length: 10 }, (_, row) => ({
      saw: [`${String(row)}=1`, `${String(row + 1)}=2`],
      says: [{ cause: String(row), times: 3 }],
    })),
    runs: true,
  };
}

/** The middle of some rankings in processor time, the first left out. */
export function faultRows(): readonly Line[] {
  const of = table();
  const timed = (): number => {
    const begun = process.cpuUsage();
    const evidence = weigh(of, ['0=1', '3=2', '8=0', '13=3']);
    if (causeOdds(evidence).length + nextTests(evidence).next.length === 0) throw new Error('nothing was ranked');
    const { user, system } = process.cpuUsage(begun);
    return (user + system) / 1000;
  };
  timed();
  return [
    {
      work: `next test: ${String(causes)} causes, ${String(tests)} tests`,
      against: 'a bound',
      measured: median(Array.from({ length: turns }, timed)),
      must: 20,
      aim: 10,
      better: 'less',
      unit: 'ms',
    },
  ];
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  for (const { work, measured, must } of faultRows())
    console.log([work, measured?.toFixed(2), 'ms of', must].join(' '));
