// A workshop of twenty machines with two hundred records each: its cost grows with the machines, its memory does not, and the cores share it.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { run, type Cost } from './measure.ts';
import type { Line } from './rows.ts';
import { records, writeMachine } from './workload.ts';

const each = 200;

/** Builds a quarter of the machines, half of them and all of them, everything made anew. */
export async function workshopRows(folder: string, program: string, machines: number): Promise<readonly Line[]> {
  const all = records(each);
  const measured: Measured[] = [];
  for (const count of [machines / 4, machines / 2, machines]) {
    const shop = join(folder, `shop-${String(count)}`);
    writeShop(shop, count, all);
    const words = [process.execPath, program, 'build', shop, '--out', `${shop}-out`, '--today', '2024-02-01'];
    const cost = await run(words, folder);
    measured.push({ count, cost });
    console.error(`  ${figures({ count, cost })}`);
    for (const made of [shop, `${shop}-out`]) rmSync(made, { recursive: true });
  }
  const [quarter, half, whole] = measured;
  if (quarter === undefined || half === undefined || whole === undefined) return [];
  return [...growth(quarter, half), ...growth(half, whole), ...atItsLargest(whole)];
}

interface Measured {
  readonly count: number;
  readonly cost: Cost;
}

function writeShop(shop: string, count: number, all: ReturnType<typeof records>): void {
  for (let number = 1; number <= count; number += 1) {
    const machine = join(shop, `machine-${String(number).padStart(2, '0')}`);
    mkdirSync(machine, { recursive: true });
    writeMachine(machine, all);
    // Each is a machine of its own, with a number of its own.
    const path = join(machine, 'machine.yaml');
    writeFileSync(path, readFileSync(path, 'utf8').replace(/stamped: [^,}]+/u, `stamped: B-${String(number)}`));
  }
}

/** `20 machines × 200 records: 66.1 s of processor time, 38 s, 652 MB`. */
function figures({ count, cost }: Measured): string {
  const spent = `${cost.cpu.toFixed(1)} s of processor time in ${cost.wall.toFixed(0)} s`;
  return `workshop of ${String(count)} machines × ${String(each)} records, with PDFs: ${spent}, ${cost.peak.toFixed(0)} MB`;
}

/** Twice the machines: twice the processor time, and no more memory. */
function growth(half: Measured, whole: Measured): readonly Line[] {
  const against = `${String(half.count)} machines`;
  const less = { against, better: 'less', unit: '×' } as const;
  return [
    {
      ...less,
      work: `${figures(whole)}; processor time`,
      measured: whole.cost.cpu / half.cost.cpu,
      must: 2.2,
      aim: 2.05,
    },
    { ...less, work: 'the same; most memory', measured: whole.cost.peak / half.cost.peak, must: 1.3, aim: 1.1 },
  ];
}

function atItsLargest({ cost }: Measured): readonly Line[] {
  const cores = availableParallelism();
  return [
    {
      work: 'the same; most memory',
      against: '',
      measured: cost.peak,
      must: 1500,
      aim: 1000,
      better: 'less',
      unit: 'MB',
    },
    {
      work: `the same; cores that its threads keep at work, of ${String(cores)}`,
      against: 'the first thread and the busiest other',
      measured: cost.cores,
      must: cores * 0.7,
      aim: cores * 0.85,
      better: 'more',
      unit: '×',
    },
  ];
}
