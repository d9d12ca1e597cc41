// A folder of photos: dated by camera or name, filed under the tag or sheet that was shot first, shown before anything is written.
import { cpSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, writeFileSync, existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { toBuffer } from 'qrcode';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { stops } from '../../src/build.ts';
import { answersBeforehand } from '../../src/command/asker.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { takeCommand } from '../../src/command/take-command.ts';
import { exifTime, nameTime, photoTime } from '../../src/photos/photo-time.ts';
import { squareCodeIn } from '../../src/photos/square-code-in.ts';
import { smallMachine } from '../command/small-machine.ts';
import { take } from '../forms/take-here.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** A plain picture, each of its own colour so that no two are alike, taken at a time. */
async function shot(folder: string, name: string, time: string | undefined, shade: number): Promise<void> {
  const picture = sharp({ create: { width: 90, height: 60, channels: 3, background: { r: shade, g: 90, b: 20 } } });
  const dated = time === undefined ? picture : picture.withExif({ IFD2: { DateTimeOriginal: time } });
  writeFileSync(join(folder, name), await (name.endsWith('.png') ? dated.png() : dated.jpeg()).toBuffer());
}

/** A tag as a camera sees it: somewhat turned, not sharp, on a brown bench. */
async function shotOfCode(folder: string, name: string, time: string, code: string): Promise<void> {
  const square = await toBuffer(code, { width: 420, margin: 4 });
  const bench = { create: { width: 1400, height: 1000, channels: 3, background: '#6b5b45' } } as const;
  const turned = await sharp(square).rotate(9, { background: '#f4f0e8' }).toBuffer();
  const laid = await sharp(bench)
    .composite([{ input: turned, left: 500, top: 260 }])
    .png()
    .toBuffer();
  const seen = await sharp(laid)
    .blur(1)
    .jpeg({ quality: 75 })
    .withExif({ IFD2: { DateTimeOriginal: time } })
    .toBuffer();
  writeFileSync(join(folder, name), seen);
}

function shots(machine: string): string {
  const folder = join(dirname(machine), 'shots');
  mkdirSync(folder);
  return folder;
}
const job = (machine: string, id: string): string => readFileSync(join(machine, 'jobs', `${id}.md`), 'utf8');

describe('photos', () => {
  test('those after a tag go under its bag and job until the next tag; another day ends it', async () => {
    const machine = smallMachine();
    const folder = shots(machine);
    await shot(folder, 'IMG_1.jpg', '2024-04-06'.replaceAll('-', ':') + ' 09:00:00', 10);
    await shotOfCode(folder, 'IMG_2.jpg', '2024:04:06 10:00:00', 'T1-000123 bag 1 step 4 2024-04-06-head-off');
    await shot(folder, 'IMG_3.jpg', '2024:04:06 10:05:00', 30);
    await shotOfCode(folder, 'IMG_4.jpg', '2024:04:06 11:00:00', 'T1-000123 TD 2024-03-02-bought');
    await shot(folder, 'IMG_5.jpg', '2024:04:06 11:05:00', 50);
    await shotOfCode(folder, 'IMG_6.jpg', '2024:04:06 12:00:00', 'X9-000777 bag 1 2024-04-06-head-off');
    await shot(folder, 'IMG_7.jpg', '2024:04:06 12:05:00', 70);
    await shot(folder, 'IMG_8.jpg', '2024:04:07 08:00:00', 90);
    const before = job(machine, '2024-04-06-head-off');

    const shown = await take(machine, [folder], { show: true });
    expect(shown.code).toBe(0);
    expect(shown.said).toContain(
      'IMG_3.jpg  2024-04-06 10:05 (by the camera)  “Bag 1, step 4”, after the code of bag 1, step 4 at 10:00',
    );
    expect(shown.said).toContain('IMG_7.jpg: left out, for it follows a code that is none of this machine: X9-000777');
    expect(job(machine, '2024-04-06-head-off')).toBe(before);
    expect(existsSync(join(machine, 'photos'))).toBe(false);

    const took = await take(machine, [folder], {}, ['yes']);
    expect(took.said).toContain('6 photos copied, 3 records written.');
    expect(job(machine, '2024-04-06-head-off')).toBe(
      before.replace(
        '\n---\nIt came',
        `
photos:
  - {file: photos/2024-04-06/IMG_1.jpg}
  - {file: photos/2024-04-06/IMG_2.jpg, caption: "The tag of bag 1, step 4"}
  - {file: photos/2024-04-06/IMG_3.jpg, caption: "Bag 1, step 4"}
---
It came`,
      ),
    );
    expect(job(machine, '2024-03-02-bought')).toContain('photos/2024-04-06/IMG_5.jpg');
    expect(job(machine, '2024-04-07-photos')).toContain('  - {file: photos/2024-04-07/IMG_8.jpg}');
    expect(stops(readMachine(machine, '2024-06-01', {}).problems)).toEqual([]);
    expect(readFileSync(join(machine, 'photos/2024-04-06/IMG_3.jpg'))).toEqual(readFileSync(join(folder, 'IMG_3.jpg')));
    const again = await take(machine, [folder], { yes: true });
    expect([again.code, again.said]).toEqual([0, expect.stringContaining('Nothing is new')]);
  });

  test('a machine with an address is known by it, and its older paper by its number', async () => {
    const machine = smallMachine();
    const text = readFileSync(join(machine, 'machine.yaml'), 'utf8');
    writeFileSync(join(machine, 'machine.yaml'), text + 'place: {site: "https://binder.example/"}\n');
    const folder = shots(machine);
    await shotOfCode(
      folder,
      'a.jpg',
      '2024:05:01 10:00:00',
      'https://binder.example/off.html#bag-1/2024-04-06-head-off',
    );
    await shot(folder, 'b.jpg', '2024:05:01 10:01:00', 20);
    await shotOfCode(
      folder,
      'c.jpg',
      '2024:05:01 11:00:00',
      'https://binder.example/sheets/teardown-2024-03-02-bought.html',
    );
    await shot(folder, 'd.jpg', '2024:05:01 11:01:00', 40);
    await shotOfCode(folder, 'e.jpg', '2024:05:01 12:00:00', 'T1-000123 bag 1 2024-04-06-head-off');
    await shot(folder, 'f.jpg', '2024:05:01 12:01:00', 60);
    await take(machine, [folder], { yes: true });
    expect(job(machine, '2024-04-06-head-off')).toMatch(/b\.jpg, caption: Bag 1[\s\S]*f\.jpg, caption: Bag 1/u);
    expect(job(machine, '2024-03-02-bought')).toContain('d.jpg');
  });

  test('a photo without a date stops it until the person has said; a broken one is named', async () => {
    const machine = smallMachine();
    const folder = shots(machine);
    await shot(folder, 'plain.png', undefined, 10);
    await shot(folder, '2024-05-05 10.11.12.png', undefined, 20);
    writeFileSync(join(folder, 'IMG_20240505_101010.jpg'), 'no picture');
    const stopped = await take(machine, [folder], { yes: true });
    expect(stopped.code).toBe(2);
    expect(stopped.said).toContain('plain.png: neither the camera nor its name says when it was taken');
    expect(stopped.said).toContain('photo-not-a-picture');
    const took = await take(machine, [folder], { yes: true, how: ['undated=leave-out', 'kind=cleaning'] });
    expect(took.said).toContain('1 photo copied, 1 record written.');
    expect(job(machine, '2024-05-05-photos')).toContain('kind: cleaning');
    expect(readdirSync(join(machine, 'photos/2024-05-05'))).toEqual(['2024-05-05 10.11.12.png']);
  });

  test('all can go to one record; a name that is taken is not written over', async () => {
    const machine = smallMachine();
    const folder = shots(machine);
    await shot(folder, 'IMG_1.jpg', '2024:05:05 10:00:00', 10);
    await take(machine, [folder], { yes: true, how: ['job=2024-03-02-bought'] });
    const first = readFileSync(join(machine, 'photos/2024-05-05/IMG_1.jpg'));
    await shot(folder, 'IMG_1.jpg', '2024:05:05 11:00:00', 99);
    await take(machine, [folder], { yes: true, how: ['job=2024-03-02-bought'] });
    expect(readFileSync(join(machine, 'photos/2024-05-05/IMG_1.jpg'))).toEqual(first);
    expect(job(machine, '2024-03-02-bought')).toContain('photos/2024-05-05/IMG_1-2.jpg');
    expect((await take(machine, [folder], { how: ['job=none-such'] })).code).toBe(2);
  });

  test('a taking that broke off between copying and noting is finished by taking again', async () => {
    const machine = smallMachine();
    const folder = shots(machine);
    await shot(folder, 'IMG_1.jpg', '2024:05:04 09:00:00', 10);
    await shot(folder, 'IMG_2.jpg', '2024:05:04 09:01:00', 20);
    mkdirSync(join(machine, 'photos/2024-05-04'), { recursive: true });
    cpSync(join(folder, 'IMG_1.jpg'), join(machine, 'photos/2024-05-04/IMG_1.jpg'));
    const first = await take(machine, [folder], { yes: true });
    expect(first.said).toContain('copied already, not noted yet');
    expect(first.said).toContain('a new record, kind repair');
    expect(job(machine, '2024-05-04-photos')).toContain('photos/2024-05-04/IMG_1.jpg');
    expect(readdirSync(join(machine, 'photos/2024-05-04')).toSorted()).toEqual(['IMG_1.jpg', 'IMG_2.jpg']);
    const second = await take(machine, [folder], { yes: true });
    expect(second.said).toContain('2 photos are in the records already');
  });

  test('a record that somebody changes meanwhile is not touched, and it is said', async () => {
    const machine = smallMachine();
    const folder = shots(machine);
    await shot(folder, 'IMG_1.jpg', '2024:03:02 10:00:00', 10);
    const record = join(machine, 'jobs/2024-03-02-bought.md');
    const theirs = readFileSync(record, 'utf8').replace('barn', 'chapel');
    const said: string[] = [];
    const line = (text: string): void => void said.push(text);
    const around = {
      terminal: { say: line, tell: line, progress: () => undefined, colour: false },
      folder: machine,
      clock: () => new Date('2024-06-01T12:00:00'),
    };
    const asker = {
      ...answersBeforehand([]),
      ask: async () => {
        writeFileSync(record, theirs);
        return Promise.resolve('yes');
      },
    };
    expect(await takeCommand(machine, [folder], {}, around, asker)).toBe(1);
    expect(readFileSync(record, 'utf8')).toBe(theirs);
    expect(said.join('\n')).toContain('jobs/2024-03-02-bought.md was changed meanwhile and was not touched');
  });

  test.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])('go into %s', async (name) => {
    const machine = join(mkdtempSync(join(tmpdir(), 'splitpin-photos-')), 'bike');
    cpSync(join(root, name), machine, { recursive: true });
    const folder = shots(machine);
    await shot(folder, 'x.jpg', '2019:05:05 10:00:00', 10);
    const took = await take(machine, [folder], { yes: true });
    expect([took.code, took.said]).toEqual([0, expect.stringContaining('1 photo copied')]);
  });
});

describe('the time of a photo', () => {
  test('is read from names of many cameras and phones', () => {
    const day = '2024-05-04';
    const cases: readonly (readonly [string, string | undefined])[] = [
      ['IMG_20240504_153012.jpg', '15:30:12'],
      ['PXL_20240504_153012123.jpg', '15:30:12'],
      ['2024-05-04 15.30.12.jpg', '15:30:12'],
      ['Photo 2024-05-04 at 15.30.12.png', '15:30:12'],
      ['20240504-head-off.png', undefined],
    ];
    for (const [name, time] of cases)
      expect([name, nameTime(name)]).toEqual([name, { day, ...(time === undefined ? {} : { time }), from: 'name' }]);
    for (const name of ['IMG_1234.jpg', '20241399.jpg', '120240504.jpg', 'frame-1969.png'])
      expect(nameTime(name)).toBeUndefined();
  });
  test('is read from a HEIC file, where the camera wrote it', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'splitpin-heic-'));
    await shot(folder, 'a.jpg', '2024:05:04 15:30:12', 10);
    const { exif = Buffer.alloc(0) } = await sharp(join(folder, 'a.jpg')).metadata();
    const plain = readFileSync(join(root, 'tests/photos/quarters.heic'));
    writeFileSync(join(folder, 'b.heic'), Buffer.concat([plain, exif]));
    writeFileSync(join(folder, 'c.heic'), plain);
    const day = '2024-05-04';
    expect(await photoTime(join(folder, 'b.heic'), 'b.heic')).toEqual({ day, time: '15:30:12', from: 'camera' });
    expect(await photoTime(join(folder, 'c.heic'), 'c.heic')).toBeUndefined();
  });
  test('is not read from a broken block', () => {
    expect(exifTime(Buffer.from('Exif\0\0II*\0'))).toBeUndefined();
    expect(exifTime(Buffer.from([0x49, 0x49, 0x2a, 0, 0xff, 0xff, 0xff, 0x7f]))).toBeUndefined();
    expect(exifTime(Buffer.alloc(0))).toBeUndefined();
  });
  test('a picture without a code has none, and one that is no picture rejects', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'splitpin-code-'));
    await shot(folder, 'a.jpg', undefined, 10);
    expect(await squareCodeIn(join(folder, 'a.jpg'))).toBeUndefined();
    writeFileSync(join(folder, 'b.jpg'), 'nothing');
    await expect(squareCodeIn(join(folder, 'b.jpg'))).rejects.toThrow();
  });
});
