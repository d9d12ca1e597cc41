// Where references lead: to pages that are there, to a PDF only when PDFs are made, and otherwise nowhere.
import { expect, it } from 'vitest';
import { renderPage } from '../../src/render/page.ts';
import { lineOf, siteFrame } from '../../src/render/site-frame.ts';

const pages = [
  { file: 'index.html', title: 'The machine', section: 'machine' },
  { file: 'log.html', title: 'Log', section: 'log' },
  { file: 'sheets.html', title: 'Sheets', section: 'sheets to print' },
  { file: 'jobs/a.html', title: 'A', section: 'log' },
  { file: 'jobs/b.html', title: 'B', section: 'log' },
  { file: 'sheets/torque-table.html', title: 'Torque', section: 'any time' },
  { file: 'workings.html', title: 'Workings', section: 'workings' },
];
const facts = { machine: 'M', frame: '', language: 'en-GB', recordsDate: '', recordsVersion: '' } as const;
const frame = siteFrame(pages, facts);

it.each([
  ['job:a', 'jobs/a.html'],
  ['job:none', undefined],
  ['sheet:torque-table', 'sheets/torque-table.html'],
  ['print:torque-table', 'print/torque-table.pdf'],
  ['print:none', undefined],
  ['page:index.html', 'index.html'],
  ['page:workings', 'workings.html'],
  ['working:torque-head', 'workings.html#torque-head'],
  ['javascript:alert(1)', undefined],
  ['jobs/a.html', undefined],
])('%s leads to %s', (reference, target) => {
  expect(frame.targetOf(reference)).toBe(target);
});

it('leads to no PDF when none are made', () => {
  expect(siteFrame(pages, { ...facts, prints: false }).targetOf('print:torque-table')).toBeUndefined();
});

it('offers no PDF on a page when none are made', () => {
  const page = { file: 'index.html', title: 'The machine', section: 'machine', blocks: [], pdf: 'print/a.pdf' };
  expect(renderPage(page, frame)).toContain('href="print/a.pdf"');
  expect(renderPage(page, siteFrame(pages, { ...facts, prints: false }))).not.toContain('print/a.pdf');
});

it('lists the sections that begin at the top as contents, in order', () => {
  expect(frame.contents).toEqual([
    { title: 'machine', file: 'index.html', section: 'machine' },
    { title: 'log', file: 'log.html', section: 'log' },
    { title: 'sheets to print', file: 'sheets.html', section: 'sheets to print' },
    { title: 'workings', file: 'workings.html', section: 'workings' },
  ]);
});

it.each([
  ['jobs/a.html', 'log', 'log.html'],
  ['sheets/torque-table.html', 'any time', 'sheets.html'],
  ['sheets/teardown.html', 'log', 'sheets.html'],
  ['index.html', 'machine', 'index.html'],
  ['sheets-and-more.html', 'other', undefined],
])('sets %s under the right line of the contents', (file, section, line) => {
  expect(lineOf(frame.contents, { file, section, title: '' })?.file).toBe(line);
});
