// Rows of the benchmark's table: a measured ratio, what it must be and what it should be.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run, type Cost } from './measure.ts';

export interface Line {
  readonly work: string;
  readonly against: string;
  /** Undefined when the other program is not here. */
  readonly measured: number | undefined;
  readonly must: number;
  readonly aim: number;
  readonly better: 'less' | 'more';
  readonly unit: '×' | 'MB' | 'KB' | 'ms' | 'pages/s';
}

/** Median of numbers. */
export function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const [low = 0, high = low] = sorted.length % 2 === 1 ? [sorted[middle]] : [sorted[middle - 1], sorted[middle]];
  return (low + high) / 2;
}

export interface Contender {
  readonly command: readonly string[];
  readonly folder: string;
  /** Seconds that it may take. */
  readonly most?: number;
}

/** Runs two programs in turn and gives the median of the ratios of each pair, so that a busy moment spoils one pair only. */
export async function pairs(
  ours: (turn: number) => Contender,
  theirs: Contender,
  turns: number,
): Promise<{ readonly ratio: number; readonly ours: readonly Cost[]; readonly theirs: readonly Cost[] }> {
  const mine: Cost[] = [];
  const others: Cost[] = [];
  for (let turn = 0; turn < turns; turn += 1) {
    const { command, folder } = ours(turn);
    mine.push(await run(command, folder));
    others.push(await run(theirs.command, theirs.folder, theirs.most));
  }
  const ratios = mine.map((cost, turn) => cost.cpu / (others[turn]?.cpu ?? Number.NaN));
  return { ratio: median(ratios), ours: mine, theirs: others };
}

/** Whether a program is installed. */
export function isInstalled(program: string): boolean {
  return (process.env['PATH'] ?? '').split(delimiter).some((folder) => existsSync(join(folder, program)));
}

/** The table as Markdown, with a line for what was skipped. */
export function table(lines: readonly Line[]): string {
  const rows = lines.map(
    (line) =>
      `| ${line.work} | ${line.against} | ${measured(line)} | ${bound(line, line.must)} | ${bound(line, line.aim)} | ${verdict(line)} |`,
  );
  const missing = [...new Set(lines.filter((line) => line.measured === undefined).map((line) => line.against))];
  return [
    '| work | against | measured | must | aim | |',
    '| --- | --- | --- | --- | --- | --- |',
    ...rows,
    ...(missing.length === 0 ? [] : ['', 'Skipped, not installed or passed over: ' + missing.join(', ') + '.']),
  ].join('\n');
}

function measured({ measured: number, unit }: Line): string {
  if (number === undefined) return 'skipped';
  return number.toFixed(unit === '×' || (unit === 'ms' && number < 10) ? 2 : unit === 'KB' ? 1 : 0) + ' ' + unit;
}
function bound({ better, unit }: Line, number: number): string {
  return (better === 'less' ? '≤ ' : '≥ ') + String(number) + ' ' + unit;
}
function verdict({ measured: number, must, aim, better }: Line): string {
  if (number === undefined) return '';
  const reaches = (limit: number): boolean => (better === 'less' ? number <= limit : number >= limit);
  if (reaches(aim)) return 'aim met';
  return reaches(must) ? 'must met' : 'NOT MET';
}
