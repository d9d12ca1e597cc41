// A clock that died and nobody knows when: the distance is not known, and what has no history is due now.
import { expect, test } from 'vitest';
import { build, readContent } from '../../src/build.ts';
import { readContentFolder, readMachineFolder } from '../../src/disk.ts';
import { day } from '../book/records.ts';
import { plainText } from './evening.ts';

test('the fixture with a dead clock says that the distance is not known', () => {
  const folder = readMachineFolder('tests/fixtures/from-the-manual').value;
  const { files = [], assets = [], shared = [] } = folder ?? {};
  const content = readContent(readContentFolder());
  const made = build({ files, assets, shared, content, before: [], today: day('2026-09-01') }).value;
  expect(made?.book.odometer.now.machine).toBeUndefined();
  const oil = made?.book.due.find((line) => line.service.id === 'gearbox-oil-change');
  expect(oil).toMatchObject({ state: 'due', why: expect.stringContaining('unknown history counts as due now') });
  const chain = made?.book.due.find((line) => line.service.id === 'chain-adjust');
  expect(chain?.dueAt).toBeUndefined();
  expect(chain?.left).toBeUndefined();
  const page = plainText(made?.pages.find((one) => one.file === 'index.html')?.make().blocks ?? []);
  expect(page).toContain('Distance of the machine: not known');
  expect(page).not.toMatch(/: 0 km/u);
});
