// The data that the history carries: all of it, by the standard's own relation, without what is private, unless it is not wanted.
import { describe, expect, it } from 'vitest';
import type { Binder } from '../../src/build.ts';
import { binderData, withoutPrivate } from '../../src/build.ts';
import { siteList } from '../../src/compose/page-parts.ts';
import { carriedData } from '../../src/command/carried-data.ts';
import { makePdf, openPdf } from '../pdf/read-pdf.ts';
import { fileFaults } from '../pdf/file-rules.ts';
import { binderOf } from '../views/binder.ts';

const { book, sheets } = binderOf('demo-bike', '2026-11-14');
const binder: Binder = { book, sheets, pages: [], site: siteList([]), frame: '', recordsDate: '' };
const history = sheets.find((sheet) => sheet.id === 'history');
if (history === undefined) throw new Error('no history');

describe('the data inside the history', () => {
  it('are the binder’s, and no other sheet has them', async () => {
    const carried = carriedData(binder, false);
    expect(sheets.filter((sheet) => carried(sheet).length > 0).map((sheet) => sheet.id)).toEqual(['history']);
    const made = await makePdf(history, { attach: carried(history) });
    const files: Record<string, { content: Uint8Array }> = await (await openPdf(made.bytes)).getAttachments();
    const text = Buffer.from(files['binder.json']?.content ?? []).toString('utf8');
    const data: unknown = JSON.parse(text);
    expect(data).toMatchObject({ format: 1, today: '2026-11-14', recordsVersion: book.recordsVersion });
    expect(data).toHaveProperty('jobs.length', book.records.jobs.length);
    expect(await fileFaults(made.bytes)).toEqual([]);
    const again = await makePdf(history, { attach: carriedData(binder, false)(history) });
    expect(again.bytes.equals(made.bytes)).toBe(true);
  });
  it('are left out when they are not wanted', () => {
    expect(carriedData(binder, true)(history)).toEqual([]);
  });
  it('are without what is marked as private', () => {
    const all = JSON.stringify(binderData(book));
    const open = Buffer.from(carriedData(binder, false)(history)[0]?.bytes ?? []).toString('utf8');
    const hidden = book.records.machine.numbers.filter((number) => number.private);
    expect(hidden.length).toBeGreaterThan(0);
    for (const { stamped } of hidden) {
      expect(all).toContain('"' + stamped + '"');
      expect(open).not.toContain('"' + stamped + '"');
    }
    expect(open).not.toContain('"private":true');
    expect(open).not.toContain('"private": true');
  });
  it('stay away altogether where a single value inside a record is private', () => {
    const kept = [{ file: 'jobs/2024-05-04-bought.md', path: ['money', 0, 'amount'] }];
    expect(withoutPrivate(binderData(book), kept)).toBeUndefined();
    const shy: Binder = { ...binder, book: { ...book, records: { ...book.records, kept } } };
    expect(carriedData(shy, false)(history)).toEqual([]);
  });
});
