// A small site of sample pages: a first page, jobs before and after each other, a sheet, the workings.
import type { SiteFrame, SitePage } from '../../src/render/site-frame.ts';
import { siteFrame } from '../../src/render/site-frame.ts';
import type { Block, Page } from '../../src/sheet/sheet.ts';
import { renderPage } from '../../src/render/page.ts';
import { sampleBlocks, samplePage } from './sample-pages.ts';
import { standInPicture } from './stand-in-picture.ts';
import type { WrittenFile } from './site-folder.ts';

const heading = (text: string, id: string): Block => ({ type: 'heading', level: 1, text, id });

const pages: readonly Page[] = [
  { file: 'index.html', title: 'The machine', section: 'machine', blocks: [sampleBlocks.facts, sampleBlocks.prose] },
  { file: 'log.html', title: 'Log by date', section: 'log', blocks: [longTable()] },
  {
    file: 'jobs/2024-05-04-bought.html',
    title: 'The day it came home',
    section: 'jobs',
    blocks: [heading('As found', 'as-found'), sampleBlocks.photo],
    next: { file: 'jobs/2026-11-top-end.html', title: 'Top end' },
  },
  { ...samplePage(), previous: { file: 'jobs/2024-05-04-bought.html', title: 'The day it came home' } },
  {
    file: 'workings.html',
    title: 'Workings',
    section: 'workings',
    blocks: [heading('Compression', 'compression'), heading('Head nut', 'head-nut')],
  },
];

/** The specs of the sample site. */
export const sampleSpecs: readonly SitePage[] = pages.map((page) => ({
  file: page.file,
  title: page.title,
  section: page.section,
  make: () => page,
}));

export const sampleFrame: SiteFrame = siteFrame(sampleSpecs, {
  machine: 'Larkmoor Pipit 175',
  frame: '4417',
  language: 'en-GB',
  recordsDate: '2026-11-20',
  recordsVersion: 'a1b2c3',
  photoOf: (file) => ({ large: file, small: `photos/small/${file.slice('photos/'.length)}`, width: 8, height: 6 }),
});

/** Everything of the sample site but its assets, the pictures and the PDF it leads to included. */
export async function sampleFiles(): Promise<readonly WrittenFile[]> {
  const picture = await standInPicture();
  return [
    ...sampleSpecs.map((spec) => ({ file: spec.file, content: renderPage(spec.make(), sampleFrame) })),
    { file: 'photos/crown.jpg', content: picture },
    { file: 'photos/small/crown.jpg', content: picture },
    { file: 'print/2026-11-top-end.pdf', content: '%PDF-1.7\n' },
  ];
}

function longTable(): Block {
  const rows = Array.from({ length: 40 }, (_, index) => ({
    kind: 'cells' as const,
    cells: [
      { text: `2024-${index}` },
      { text: [{ kind: 'link' as const, text: `Job ${index}`, to: 'job:2024-05-04-bought' }] },
    ],
  }));
  return {
    type: 'table',
    columns: [
      { head: 'Date', width: 1 },
      { head: 'Job', width: 4 },
    ],
    rows: [{ kind: 'band', text: '2024' }, ...rows],
    empty: 'No jobs yet.',
    use: 'read',
  };
}
