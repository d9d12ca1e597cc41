// The history binder as a tagged PDF, against programs that print the same text from HTML.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { liveHeapPerPage } from './live-heap.ts';
import { asPrintedHtml } from './printed-html.ts';
import { isInstalled, median, pairs, type Contender, type Line } from './rows.ts';
import { records, writeMachine } from './workload.ts';

/** So many records fill a page of our history; a long one has more of them to a page, since a table of readings fills whole pages. */
const recordsPerPage = (pages: number): number => (pages <= 500 ? 1.1 : 1.27);

const bounds: Readonly<Record<number, { readonly chromium: [number, number]; readonly weasyprint: [number, number] }>> =
  {
    500: { chromium: [2.5, 4], weasyprint: [6, 12] },
    2000: { chromium: [5, 9], weasyprint: [6, 12] },
  };

/** Rows for each number of pages: how many times less CPU we use, and our memory. */
export async function printRows(
  folder: string,
  program: string,
  counts: readonly number[],
  turns: number,
): Promise<readonly Line[]> {
  const lines: Line[] = [];
  for (const pages of counts) lines.push(...(await oneSize(join(folder, String(pages)), program, pages, turns)));
  const live = await liveHeapPerPage(join(folder, String(counts.at(-1) ?? 500), 'machine'));
  lines.push({
    work: 'history PDF',
    against: 'live heap a page',
    measured: live,
    must: 20,
    aim: 10,
    better: 'less',
    unit: 'KB',
  });
  return lines;
}

async function oneSize(folder: string, program: string, pages: number, turns: number): Promise<readonly Line[]> {
  const all = records(Math.round(pages * recordsPerPage(pages)));
  mkdirSync(folder);
  writeMachine(join(folder, 'machine'), all);
  writeFileSync(join(folder, 'history.html'), asPrintedHtml(all));
  const ours = (): Contender => ({
    command: [process.execPath, program, 'print', 'machine', 'history', '--out', 'ours', '--today', '2024-02-01'],
    folder,
  });
  const chromium: Contender = {
    command: [
      'chromium',
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      `--user-data-dir=${join(folder, 'profile')}`,
      '--print-to-pdf=chromium.pdf',
      '--no-pdf-header-footer',
      join(folder, 'history.html'),
    ],
    folder,
  };
  const weasyprint: Contender = { command: ['weasyprint', '-q', 'history.html', 'weasyprint.pdf'], folder };
  const besideChromium = isInstalled('chromium') ? await pairs(ours, chromium, turns) : undefined;
  // One turn is enough where the other program takes minutes.
  const besideWeasyprint = isInstalled('weasyprint') ? await pairs(ours, weasyprint, 1) : undefined;
  const limits = bounds[pages] ?? { chromium: [1, 1], weasyprint: [1, 1] };
  const work = `history PDF of ${pages.toLocaleString('en-GB')} pages`;
  const line = { work, better: 'more', unit: '×' } as const;
  const less = (ratio: number | undefined): number | undefined => (ratio === undefined ? undefined : 1 / ratio);
  const peaks = [...(besideChromium?.ours ?? []), ...(besideWeasyprint?.ours ?? [])].map((cost) => cost.peak);
  return [
    {
      ...line,
      against: 'chromium, CPU: so many times less',
      measured: less(besideChromium?.ratio),
      must: limits.chromium[0],
      aim: limits.chromium[1],
    },
    {
      ...line,
      against: 'weasyprint, CPU: so many times less',
      measured: less(besideWeasyprint?.ratio),
      must: limits.weasyprint[0],
      aim: limits.weasyprint[1],
    },
    ...(pages < 2000 || peaks.length === 0
      ? []
      : [
          {
            work,
            against: 'peak memory',
            measured: median(peaks),
            must: 400,
            aim: 270,
            better: 'less',
            unit: 'MB',
          } as const,
        ]),
  ];
}
