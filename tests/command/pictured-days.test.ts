// A record that says no day has the day of its first picture: of the camera, else of the name; without either it is told.
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readMachine } from '../../src/command/read-machine.ts';

let folder = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'splitpin-pictured-'));
  for (const name of ['jobs', 'photos']) mkdirSync(join(folder, name));
  copyFileSync('tests/fixtures/from-the-manual/machine.yaml', join(folder, 'machine.yaml'));
  const picture = sharp({ create: { width: 8, height: 8, channels: 3, background: '#888' } }).jpeg();
  const dated = picture.clone().withExif({ IFD2: { DateTimeOriginal: '2024:05:04 15:30:12' } });
  await dated.toFile(join(folder, 'photos', 'head.jpg'));
  await picture.clone().toFile(join(folder, 'photos', '2024-05-11-points.jpg'));
  await picture.clone().toFile(join(folder, 'photos', 'bench.jpg'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function read(photos: string, date = '') {
  const text = `---\ntitle: Head off\n${date}kind: strip\nstate: done\nphotos:\n${photos}---\nWords.\n`;
  writeFileSync(join(folder, 'jobs', 'head-off.md'), text);
  const { binder, problems } = readMachine(folder, '2026-11-14', {});
  return { job: binder?.book.records.jobs[0], codes: problems.map(({ code }) => code), pages: binder?.pages };
}
const photo = (file: string) => `  - {file: photos/${file}, caption: as it came}\n`;

test('the camera says the day; the earliest picture counts', () => {
  const { job, pages } = read(photo('2024-05-11-points.jpg') + photo('head.jpg'));
  expect(job).toMatchObject({ date: { from: '2024-05-04' }, dayFrom: 'photographs' });
  const page = pages?.find(({ file }) => file.startsWith('jobs/') && file.includes('head-off'));
  expect(JSON.stringify(page?.make().blocks)).toContain('as its first photograph was taken');
});

test('the name says it where no camera does', () => {
  expect(read(photo('2024-05-11-points.jpg')).job?.date.from).toBe('2024-05-11');
});

test('what the record says goes before any picture', () => {
  const { job } = read(photo('head.jpg'), 'date: 2024-06-01\n');
  expect(job?.date.from).toBe('2024-06-01');
  expect(job?.dayFrom).toBeUndefined();
});

test('without a day of any kind the record is told as before', () => {
  const { job, codes } = read(photo('bench.jpg'));
  expect(job).toBeUndefined();
  expect(codes).toContain('key-missing');
});
