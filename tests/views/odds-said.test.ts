// The page of the next test gives odds as they were worked; what odds are is said once, before the first of them, and not where none stand.
import { expect, test } from 'vitest';
import { blockText } from '../goldens/sheet-text.ts';
import { binderOf } from './binder.ts';

const tern = binderOf('tests/fixtures/tern-350', '2026-11-14');
const said = 'Odds of one: as likely as not.';

test('the page says what odds are before it gives any', () => {
  const page = tern.pages.find(({ file }) => file === 'next-test.html');
  const text = (page?.make().blocks ?? []).map((block) => blockText(block)).join('\n');
  const first = text.search(/odds 0\.\d/iu);
  expect(first).toBeGreaterThan(0);
  expect(text.split(said)).toHaveLength(2);
  expect(text.indexOf(said)).toBeLessThan(first);
});

test('the sheet, which has no odds, says nothing of them', () => {
  const sheet = tern.sheets.find(({ id }) => id === 'next-test');
  const text = (sheet?.blocks ?? []).map((block) => blockText(block)).join('\n');
  expect(text.length).toBeGreaterThan(100);
  expect(text).not.toMatch(/odds/iu);
});
