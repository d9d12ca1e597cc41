// The history binder as a tagged PDF, against programs that print the same text and photos from HTML; how fast, how large, how it grows.
import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { liveHeapPerPage } from './live-heap.ts';
import { run, tooLong, type Cost } from './measure.ts';
import { writePictures } from './pictures.ts';
import { asPrintedHtml } from './printed-html.ts';
import { isInstalled, median, pairs, type Contender, type Line } from './rows.ts';
import { records, withPhotos, writeMachine } from './workload.ts';

/** One history: so many records, so many photos, and how often each pair is run. */
interface Work {
  readonly name: string;
  readonly records: number;
  readonly photos: number;
  readonly turns: number;
  /** How many times less than Chromium and WeasyPrint: what must be, what should be. */
  readonly chromium: readonly [number, number];
  readonly weasyprint: readonly [number, number];
  /** Ours only: to see how it grows. */
  readonly alone?: boolean;
}

/** Seconds that another program is given for one run; where it takes longer, that is said, and ours are measured by themselves. */
const patience = 240;

/** Together they take some minutes on two quiet cores: where another program takes a minute, one turn is enough. */
const works: readonly Work[] = [
  { name: '500 records and 60 photos', records: 500, photos: 60, turns: 3, chromium: [2.5, 4], weasyprint: [8, 12] },
  { name: '500 pages', records: 440, photos: 0, turns: 3, chromium: [2.5, 4], weasyprint: [8, 12] },
  { name: '1,000 pages', records: 880, photos: 0, turns: 1, chromium: [2.5, 4], weasyprint: [8, 12], alone: true },
  { name: '2,000 pages', records: 1760, photos: 0, turns: 1, chromium: [5, 9], weasyprint: [8, 12] },
];

interface Measured {
  readonly work: Work;
  readonly pages: number;
  /** Without the photos, which pass through as they are. */
  readonly bytes: number;
  readonly costs: readonly Cost[];
  readonly lines: readonly Line[];
}

/** Rows for each history. `short` leaves out the long one. */
export async function printRows(folder: string, program: string, short: boolean): Promise<readonly Line[]> {
  const measured: Measured[] = [];
  for (const work of works) {
    if (short && work.records > 600) continue;
    measured.push(await measure(join(folder, String(measured.length)), program, short ? { ...work, turns: 1 } : work));
  }
  const heaps: Line[] = [];
  for (const [index, { work }] of measured.entries()) {
    if (work.photos > 0) continue;
    const live = await liveHeapPerPage(join(folder, String(index), 'machine'));
    heaps.push({
      work: 'history of ' + work.name,
      against: 'live heap a page',
      measured: live,
      must: 20,
      aim: 10,
      better: 'less',
      unit: 'KB',
    });
  }
  return [...measured.flatMap(({ lines }) => lines), ...growth(measured), ...heaps];
}

async function measure(folder: string, program: string, work: Work): Promise<Measured> {
  mkdirSync(folder);
  const plain = records(work.records);
  const photos = await writePictures(join(folder, 'machine'), work.photos);
  const all = withPhotos(plain, photos);
  writeMachine(join(folder, 'machine'), all);
  writeFileSync(join(folder, 'history.html'), asPrintedHtml(all));
  const ours = (): Contender => ({
    command: [
      process.execPath,
      program,
      'print',
      'machine',
      'history',
      '--out',
      'ours',
      '--today',
      '2024-02-01',
      '--without-data',
    ],
    folder,
  });
  // Photos are made small beforehand, as the other programs are given them.
  if (photos.length > 0)
    await run([process.execPath, program, 'build', 'machine', '--out', 'out/machine', '--today', '2024-02-01'], folder);
  const besideChromium = await beside('chromium', ours, chromiumIn(folder), work);
  const weasyprint = { command: ['weasyprint', '-q', 'history.html', 'weasyprint.pdf'], folder };
  const besideWeasyprint = await beside('weasyprint', ours, weasyprint, { ...work, turns: 1 });
  const costs = [...(besideChromium?.ours ?? []), ...(besideWeasyprint?.ours ?? [])];
  if (costs.length === 0) costs.push(...(await pairs(ours, ours(), 1)).ours);
  const file = readFileSync(join(folder, 'ours', 'history.pdf'));
  const pages = Number(/\/Type \/Pages\s*\/Count (\d+)/.exec(file.toString('latin1'))?.[1]);
  const pictures = photos.reduce((sum, photo) => sum + statSync(join(folder, 'machine', photo)).size, 0);
  const found = { work, pages, bytes: file.length - pictures, costs };
  return { ...found, lines: linesOf(found, besideChromium?.ratio, besideWeasyprint?.ratio) };
}

/** Ours and another program in turn; nothing where it is not installed, or takes too long, which is said. */
async function beside(
  program: string,
  ours: () => Contender,
  theirs: Contender,
  work: Work,
): Promise<Awaited<ReturnType<typeof pairs>> | undefined> {
  if (work.alone === true || !isInstalled(program)) return undefined;
  try {
    return await pairs(ours, { ...theirs, most: patience }, work.turns);
  } catch (cause) {
    if (!(cause instanceof Error) || !('code' in cause) || cause.code !== tooLong) throw cause;
    console.error(`passed over: history of ${work.name}: ${cause.message}`);
    return undefined;
  }
}

function chromiumIn(folder: string): Contender {
  const words = ['--headless', '--no-sandbox', '--disable-gpu', `--user-data-dir=${join(folder, 'profile')}`];
  const print = ['--print-to-pdf=chromium.pdf', '--no-pdf-header-footer', join(folder, 'history.html')];
  return { command: ['chromium', ...words, ...print], folder };
}

function linesOf(
  { work, pages, bytes, costs }: Omit<Measured, 'lines'>,
  chromium: number | undefined,
  weasyprint: number | undefined,
): readonly Line[] {
  const name = 'history of ' + work.name;
  const less = (ratio: number | undefined): number | undefined => (ratio === undefined ? undefined : 1 / ratio);
  const [least, most] = work.chromium;
  const [leastOther, mostOther] = work.weasyprint;
  const more = { work: name, better: 'more', unit: '×' } as const;
  const others: readonly Line[] = [
    { ...more, against: 'chromium, CPU: so many times less', measured: less(chromium), must: least, aim: most },
    {
      ...more,
      against: 'weasyprint, CPU: so many times less',
      measured: less(weasyprint),
      must: leastOther,
      aim: mostOther,
    },
  ];
  const lines: Line[] = [
    ...(work.alone === true ? [] : others),
    {
      work: name,
      against: 'pages a second of CPU, reading and all',
      measured: pages / cpuOf(costs),
      must: 100,
      aim: 200,
      better: 'more',
      unit: 'pages/s',
    },
    {
      work: name,
      against: 'file a page, without photos',
      measured: bytes / 1024 / pages,
      must: 12,
      aim: 8,
      better: 'less',
      unit: 'KB',
    },
  ];
  if (pages < 1500) return lines;
  const peak = median(costs.map((cost) => cost.peak));
  return [
    ...lines,
    { work: name, against: 'peak memory', measured: peak, must: 400, aim: 270, better: 'less', unit: 'MB' },
  ];
}

/** What a further page costs in a long history, as a share of what one costs in a short one: at 1 the cost is linear. */
function growth(measured: readonly Measured[]): readonly Line[] {
  const [short, ...longer] = measured.filter(({ work }) => work.photos === 0);
  return short === undefined ? [] : longer.flatMap((long) => grown(short, long));
}

function grown(short: Measured, long: Measured): readonly Line[] {
  const further = (cpuOf(long.costs) - cpuOf(short.costs)) / (long.pages - short.pages);
  const each = cpuOf(short.costs) / short.pages;
  return [
    {
      work: `history from ${short.work.name} to ${long.work.name}`,
      against: 'a further page / a page of 500, CPU',
      measured: further / each,
      must: 1.1,
      aim: 1,
      better: 'less',
      unit: '×',
    },
  ];
}

function cpuOf(costs: readonly Cost[]): number {
  return median(costs.map((cost) => cost.cpu));
}
