// The site of many records, built again into a folder that is there: ours makes every page anew, for another day each turn.
import { join } from 'node:path';
import { run } from './measure.ts';
import { eleventyFiles, hugoFiles, writeFolder } from './peers.ts';
import { isInstalled, median, pairs, type Contender, type Line } from './rows.ts';
import { records, writeMachine } from './workload.ts';

const bounds: Readonly<Record<number, { readonly hugo: [number, number]; readonly eleventy: [number, number] }>> = {
  1000: { hugo: [2, 1.6], eleventy: [0.9, 0.7] },
  5000: { hugo: [1, 0.7], eleventy: [0.65, 0.5] },
};

/** Rows for each number of records: CPU against both peers, and our largest memory. */
export async function htmlRows(
  folder: string,
  program: string,
  root: string,
  counts: readonly number[],
  turns: number,
): Promise<readonly Line[]> {
  const lines: Line[] = [];
  const seconds: number[] = [];
  for (const count of counts) {
    const size = await oneSize(join(folder, String(count)), program, root, count, turns);
    lines.push(...size.lines);
    seconds.push(size.seconds);
  }
  const [only = 0] = counts;
  if (counts.length > 1) return [...lines, ...addedRecord(counts, seconds)];
  // One size says nothing of growth: ours alone is measured with twice as many.
  const twice = await oursAlone(join(folder, 'twice'), program, 2 * only, turns);
  return [...lines, ...addedRecord([only, 2 * only], [...seconds, twice])];
}

/** Median CPU seconds of our site of so many records. */
async function oursAlone(folder: string, program: string, count: number, turns: number): Promise<number> {
  writeMachine(join(folder, 'machine'), records(count));
  const costs: number[] = [];
  for (let turn = -1; turn < turns; turn += 1) {
    const { command } = ours(folder, program, turn + 1);
    const { cpu } = await run(command, folder);
    // The first is into an empty folder.
    if (turn >= 0) costs.push(cpu);
  }
  return median(costs);
}

/** Our site built for a day of its own each turn, so that every page is made anew. */
function ours(folder: string, program: string, turn: number): Contender {
  const day = `2024-02-${String(turn + 1).padStart(2, '0')}`;
  const asked = ['build', 'machine', '--site-only', '--out', 'site', '--today', day];
  return { command: [process.execPath, program, ...asked], folder };
}

/** What one record more costs: the difference between the smallest and the largest site, over the records between them. */
function addedRecord(counts: readonly number[], seconds: readonly number[]): readonly Line[] {
  const [few = 0] = counts;
  const many = counts.at(-1) ?? few;
  if (many <= few) return [];
  const measured = (1000 * ((seconds.at(-1) ?? 0) - (seconds[0] ?? 0))) / (many - few);
  const work = `HTML of a record more, from ${few.toLocaleString('en-GB')} to ${many.toLocaleString('en-GB')}`;
  return [{ work, against: 'CPU', measured, must: 0.6, aim: 0.45, better: 'less', unit: 'ms' }];
}

async function oneSize(
  folder: string,
  program: string,
  root: string,
  count: number,
  turns: number,
): Promise<{ readonly lines: readonly Line[]; readonly seconds: number }> {
  const all = records(count);
  writeMachine(join(folder, 'machine'), all);
  writeFolder(join(folder, 'hugo'), hugoFiles(all));
  writeFolder(join(folder, 'eleventy'), eleventyFiles(all));
  const hugo: Contender = { command: ['hugo', '--quiet'], folder: join(folder, 'hugo') };
  const eleventy: Contender = {
    command: [
      process.execPath,
      join(root, 'node_modules/@11ty/eleventy/cmd.cjs'),
      '--quiet',
      '--config=eleventy.config.cjs',
    ],
    folder: join(folder, 'eleventy'),
  };
  const hasHugo = isInstalled('hugo');
  // Once each into an empty folder, so that all turns build over what is there.
  const first = ours(folder, program, 27);
  await run(first.command, first.folder);
  await run(eleventy.command, eleventy.folder);
  if (hasHugo) await run(hugo.command, hugo.folder);
  const beside = await pairs((turn) => ours(folder, program, turn), eleventy, turns);
  const besideHugo = hasHugo ? await pairs((turn) => ours(folder, program, turn + turns), hugo, turns) : undefined;
  const limits = bounds[count] ?? { hugo: [1, 1], eleventy: [1, 1] };
  const work = `site of ${count.toLocaleString('en-GB')} records, built again`;
  const line = { better: 'less', unit: '×' } as const;
  const lines: readonly Line[] = [
    { ...line, work, against: 'Hugo, CPU', measured: besideHugo?.ratio, must: limits.hugo[0], aim: limits.hugo[1] },
    {
      ...line,
      work,
      against: 'bare Eleventy, CPU',
      measured: beside.ratio,
      must: limits.eleventy[0],
      aim: limits.eleventy[1],
    },
    ...(count < 5000
      ? []
      : [
          {
            work,
            against: 'peak memory',
            measured: median(beside.ours.map((cost) => cost.peak)),
            must: 300,
            aim: 240,
            better: 'less',
            unit: 'MB',
          } as const,
        ]),
  ];
  return { lines, seconds: median(beside.ours.map((cost) => cost.cpu)) };
}
