// The page of all keys is what the readers say of themselves. After a change: npx vitest run tests/manual -u
import { expect, test } from 'vitest';
import { fieldReference } from '../../src/records/field-reference.ts';
import { readContent } from '../../src/records/read-content.ts';

test('the page of all keys is up to date', async () => {
  await expect(fieldReference()).toMatchFileSnapshot('../../content/pages/fields.md');
});

test('it is a page of the manual and names every kind', () => {
  const { value, problems } = readContent([{ file: 'content/pages/fields.md', text: fieldReference() }]);
  expect(problems).toEqual([]);
  expect(value.pages.get('fields')?.body).toContain('## jobs/*.md');
  expect(value.pages.get('fields')?.body).toContain('| **title** |');
});
