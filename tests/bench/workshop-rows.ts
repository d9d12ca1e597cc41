// A workshop of twenty machines with two hundred records each: its cost grows with the machines, its memory does not, and the cores share it.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { run, type Cost } from './measure.ts';
import type { Line } from './rows.ts';
import { records, writeMachine } from './workload.ts';

const each = 200;

/** Builds half of the machines and all of them, everything made anew. */
export async function workshopRows(folder: string, program: string, machines: number): Promise<readonly Line[]> {
  const all = records(each);
  const shops = [machines / 2, machines].map((count) => {
    const shop = join(folder, `shop-${String(count)}`);
    for (let number = 1; number <= count; number += 1) {
      const machine = join(shop, `machine-${String(number).padStart(2, '0')}`);
      mkdirSync(machine, { recursive: true });
      writeMachine(machine, all);
      // Each is a machine of its own, with a number of its own.
      const path = join(machine, 'machine.yaml');
      writeFileSync(path, readFileSync(path, 'utf8').replace(/stamped: [^,}]+/u, `stamped: B-${String(number)}`));
    }
    return shop;
  });
  const costs: Cost[] = [];
  for (const shop of shops) {
    const words = [process.execPath, program, 'build', shop, '--out', `${shop}-out`, '--today', '2024-02-01'];
    costs.push(await run(words, folder));
    rmSync(`${shop}-out`, { recursive: true });
  }
  const [half, whole] = costs;
  if (half === undefined || whole === undefined) return [];
  const work = `workshop of ${String(machines)} machines × ${String(each)} records, with PDFs`;
  const against = `${String(machines / 2)} machines`;
  const cores = availableParallelism();
  return [
    {
      work: `${work}: processor time`,
      against,
      measured: whole.cpu / half.cpu,
      must: 2.2,
      aim: 2.05,
      better: 'less',
      unit: '×',
    },
    {
      work: `${work}: most memory`,
      against,
      measured: whole.peak / half.peak,
      must: 1.3,
      aim: 1.1,
      better: 'less',
      unit: '×',
    },
    {
      work: `${work}: most memory`,
      against: '',
      measured: whole.peak,
      must: 1500,
      aim: 1000,
      better: 'less',
      unit: 'MB',
    },
    {
      work: `${work}: cores at work, of ${String(cores)}`,
      against: 'the time it took',
      measured: whole.cpu / whole.wall,
      must: cores * 0.7,
      aim: cores * 0.85,
      better: 'more',
      unit: '×',
    },
  ];
}
