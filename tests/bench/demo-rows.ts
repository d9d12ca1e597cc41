// The demo machine against an empty run of Node: what a person waits for.
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { pairs, type Line } from './rows.ts';

/** check, a build with nothing changed, and a whole build with cold photos. */
export async function demoRows(folder: string, program: string, demo: string, turns: number): Promise<readonly Line[]> {
  const node = process.execPath;
  const empty = { command: [node, '-e', '0'], folder };
  const day = ['--today', '2026-11-14'];
  const build = (out: string): readonly string[] => [node, program, 'build', demo, '--out', join(folder, out), ...day];
  const check = await pairs(() => ({ command: [node, program, 'check', demo, ...day], folder }), empty, turns);
  const cold = await pairs(
    () => {
      rmSync(join(folder, 'cold'), { recursive: true, force: true });
      return { command: build('cold'), folder };
    },
    empty,
    turns,
  );
  const sheets = await pairs(
    () => {
      rmSync(join(folder, 'sheets'), { recursive: true, force: true });
      return { command: [node, program, 'print', demo, 'all', '--out', join(folder, 'sheets'), ...day], folder };
    },
    empty,
    turns,
  );
  const warm = await pairs(() => ({ command: build('cold'), folder }), empty, turns);
  const against = 'an empty `node -e 0`, CPU';
  return [
    { work: 'demo: `check`', against, measured: check.ratio, must: 6, aim: 3, better: 'less', unit: '×' },
    {
      work: 'demo: `build`, nothing changed',
      against,
      measured: warm.ratio,
      must: 8,
      aim: 4,
      better: 'less',
      unit: '×',
    },
    { work: 'demo: all sheets', against, measured: sheets.ratio, must: 35, aim: 25, better: 'less', unit: '×' },
    {
      work: 'demo: whole `build`, photos cold',
      against,
      measured: cold.ratio,
      must: 40,
      aim: 20,
      better: 'less',
      unit: '×',
    },
  ];
}
