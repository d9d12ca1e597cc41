// A package as its buyer gets it: looked through by other means than ours, checked with other programs, spoiled, and broken off while it is made.
import { execFileSync } from 'node:child_process';
import { appendFileSync, cpSync, existsSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { basename, dirname, join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import { openPdf, pageText } from '../pdf/read-pdf.ts';
import { bytesBelow, emptyFolder, handOver, secretMachine, secrets, verify, type Said } from './package-folder.ts';

let machine = '';
let made: Said = { code: -1, out: '' };
let out = '';
let folder = '';
let before: ReadonlyMap<string, Buffer> = new Map();

beforeAll(async () => {
  machine = await secretMachine();
  before = bytesBelow(dirname(machine));
  made = await handOver(machine);
  out = join(dirname(machine), 'out/bike-handover');
  folder = join(out, 'bike-package');
}, 300_000);

function bare(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '');
}

describe('what goes and what stays', () => {
  test('was said before it was written', () => {
    expect(made.out).toMatch(/^Stays with you:/u);
    for (const secret of ['QX-7731', 'ZED 219T', '17 Quarry Lane', '07700 900 417', 'photos/mine.jpg', 'Tamsin Orrell'])
      expect(made.out).toContain(secret);
    expect(made.out).toContain('photos/plain.jpg (1 part covered)');
    expect(made.code).toBe(0);
  });
  test('nothing of the owner’s was changed', () => {
    for (const [file, bytes] of before)
      expect(readFileSync(join(dirname(machine), file)).equals(bytes), file).toBe(true);
  });
});

describe('no secret is in it', () => {
  test('in no text, page, data, table or name', () => {
    for (const [file, bytes] of bytesBelow(folder)) {
      const text = bare(file + bytes.toString('utf8')) + bytes.toString('latin1').toLowerCase();
      for (const secret of secrets) expect(text.includes(bare(secret)), `${secret} in ${file}`).toBe(false);
    }
  });
  test('in no PDF: pages, title, file inside it', async () => {
    const pdfs = [...bytesBelow(folder)].filter(([file]) => file.endsWith('.pdf'));
    expect(pdfs.length).toBeGreaterThan(20);
    let attached = 0;
    for (const [file, bytes] of pdfs) {
      const pdf = await openPdf(bytes);
      const pages = await Promise.all(
        Array.from({ length: pdf.numPages }, async (_, index) => pageText(pdf, index + 1)),
      );
      const files: unknown = await pdf.getAttachments();
      const inside = Object.values(files ?? {}).map((one: unknown) => attachedText(one));
      attached += inside.length;
      const text = bare(JSON.stringify([pages, await pdf.getMetadata(), inside, await pdf.getOutline()]));
      expect(text.length, file).toBeGreaterThan(20);
      for (const secret of secrets) expect(text.includes(bare(secret)), `${secret} in ${file}`).toBe(false);
    }
    expect(attached).toBe(1);
  });
  test('no picture says where or by whom; what was to be covered is black, what was private is not there', async () => {
    const pictures = [...bytesBelow(folder)].filter(([file]) => /\.jpe?g$/u.test(file));
    expect(pictures.map(([file]) => basename(file))).not.toContain('mine.jpg');
    expect(pictures.length).toBe(3);
    for (const [file, bytes] of pictures) {
      const { exif, xmp, iptc } = await sharp(bytes).metadata();
      expect([exif, xmp, iptc], file).toEqual([undefined, undefined, undefined]);
      const { data, info } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true });
      const at = (x: number): number =>
        data[Math.floor(info.height / 2) * info.width * 3 + Math.floor(x * info.width) * 3 + 1] ?? -1;
      expect(at(0.2), file).toBeLessThan(16);
      expect(at(0.8), file).toBeGreaterThan(150);
    }
  });
});

function attachedText(one: unknown): string {
  if (typeof one !== 'object' || one === null || !('content' in one)) return '';
  return one.content instanceof Uint8Array ? Buffer.from(one.content).toString('utf8') : '';
}

describe('the package', () => {
  test('is whole by sha256sum, by its own lists, and by verify as folder and as ZIP', async () => {
    execFileSync('sha256sum', ['--strict', '--quiet', '-c', 'manifest-sha256.txt', 'tagmanifest-sha256.txt'], {
      cwd: folder,
    });
    expect(await verify(folder)).toMatchObject({ code: 0 });
    expect(await verify(`${folder}.zip`)).toMatchObject({ code: 0 });
  });
  test('named by the folder around it, is not called broken: what to name is said', async () => {
    const around = emptyFolder();
    cpSync(folder, join(around, 'the-package'), { recursive: true });
    const one = await verify(around);
    expect(one.code).not.toBe(0);
    expect(one.out).toContain(`is the folder around a package. Name the package: ${join(around, 'the-package')}\n`);
    expect(one.out).not.toContain('bagit.txt');
    const further = emptyFolder();
    cpSync(folder, join(further, 'out', 'the-package'), { recursive: true });
    expect((await verify(further)).out).toContain(`Name the package: ${join(further, 'out', 'the-package')}\n`);
    expect((await verify(emptyFolder())).out).toContain('is no package: there is no bagit.txt in it');
    cpSync(`${folder}.zip`, join(around, 'the-package.zip'));
    const two = await verify(around);
    expect(two.out).toContain(`  ${join(around, 'the-package')}\n  ${join(around, 'the-package.zip')}\n`);
  });
  test('declares itself as RFC 8493 asks', () => {
    expect(readFileSync(join(folder, 'bagit.txt'), 'utf8')).toBe(
      'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n',
    );
    const payload = [...bytesBelow(join(folder, 'data')).values()];
    const sum = payload.reduce((all, bytes) => all + bytes.length, 0);
    expect(readFileSync(join(folder, 'bag-info.txt'), 'utf8')).toContain(
      `Payload-Oxum: ${String(sum)}.${String(payload.length)}\n`,
    );
  });
  test('has one fingerprint in its list, its read-me, its history and on the terminal', async () => {
    const list = readFileSync(join(folder, 'data/records/bike/records.sha256'));
    execFileSync('sha256sum', ['--quiet', '-c', 'records.sha256'], { cwd: join(folder, 'data/records/bike') });
    const print = createHash('sha256').update(list).digest('hex');
    const readMe = readFileSync(join(folder, 'read-me.txt'), 'utf8');
    expect(bare(readMe)).toContain(print);
    expect(bare(made.out)).toContain(print);
    const pdf = await openPdf(readFileSync(join(folder, 'data/binder/print/history.pdf')));
    const pages = await Promise.all(Array.from({ length: pdf.numPages }, async (_, index) => pageText(pdf, index + 1)));
    expect(bare(pages.join(' '))).toContain(print);
    expect(pages.join(' ')).toContain('Buyer’s copy');
  });
  test('says on its first page what it is and what is to be read first', () => {
    const first = readFileSync(join(folder, 'data/binder/index.html'), 'utf8');
    expect(first).toContain('Buyer’s copy. Left out: names');
    const links = [
      ...first.matchAll(/href="([^"#]+)[^"]*">(Known faults|What is due|Odometer statement|First-ride talk)</gu),
    ];
    expect(links.map((one) => one[2])).toEqual([
      'Known faults',
      'What is due',
      'Odometer statement',
      'First-ride talk',
    ]);
    for (const [, file = ''] of links) expect(existsSync(join(folder, 'data/binder', file)), file).toBe(true);
  });
  test('holds the binder, the records, tables, the data with its schema, and the formats', () => {
    for (const file of [
      'binder/index.html',
      'binder/print/handover-all.pdf',
      'binder/data/binder.json',
      'binder/data/binder.schema.json',
      'records/instruments.yaml',
      'records/bike/machine.yaml',
      'tables/readings.csv',
      'tables/left-out.csv',
      'formats/formats.md',
    ])
      expect(existsSync(join(folder, 'data', file)), file).toBe(true);
    expect(existsSync(join(folder, 'data/binder/.splitpin.json'))).toBe(false);
    const lines = readFileSync(join(folder, 'read-me.txt'), 'utf8').split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
  });
});

describe('a package that was spoiled', () => {
  const spoiled = (spoil: (copy: string) => void): string => {
    const copy = join(emptyFolder(), 'p');
    cpSync(folder, copy, { recursive: true });
    spoil(copy);
    return copy;
  };
  test.each<[string, (copy: string) => void, string]>([
    [
      'one byte',
      (copy) => appendFileSync(join(copy, 'data/records/bike/machine.yaml'), ' '),
      'changed  data/records/bike/machine.yaml',
    ],
    ['a file gone', (copy) => rmSync(join(copy, 'data/tables/jobs.csv')), 'missing  data/tables/jobs.csv'],
    ['a file more', (copy) => writeFileSync(join(copy, 'data/more.txt'), 'x'), 'added    data/more.txt'],
    ['a tag file changed', (copy) => appendFileSync(join(copy, 'read-me.txt'), 'x'), 'changed  read-me.txt'],
    ['a tag file more', (copy) => writeFileSync(join(copy, 'open-me.txt'), 'x'), 'added    open-me.txt'],
    ['no manifest', (copy) => rmSync(join(copy, 'manifest-sha256.txt')), 'missing  manifest-sha256.txt'],
    [
      'a manifest that climbs',
      (copy) => appendFileSync(join(copy, 'manifest-sha256.txt'), `${'0'.repeat(64)}  data/../../x\n`),
      'climbs out of the package',
    ],
    [
      'a manifest with words',
      (copy) => appendFileSync(join(copy, 'manifest-sha256.txt'), 'hello\n'),
      'is no hash and path',
    ],
    ['no declaration', (copy) => rmSync(join(copy, 'bagit.txt')), 'this is no package'],
  ])('%s is named', async (_name, spoil, said) => {
    const result = await verify(spoiled(spoil));
    expect(result.code).toBe(1);
    expect(result.out).toContain(said);
  });
  test('a record changed with new lists over it still has another fingerprint than the paper', async () => {
    const copy = spoiled((at) => {
      const record = 'data/records/bike/jobs/2024-03-02-bought.md';
      writeFileSync(join(at, record), readFileSync(join(at, record), 'utf8').replace('barn', 'hall'));
      execFileSync(
        'sh',
        [
          '-c',
          'cd data/records/bike && sed "s/^.*  \\(jobs.2024-03-02.*\\)$/$(sha256sum jobs/2024-03-02-bought.md | cut -c1-64)  \\1/" records.sha256 > ../r && mv ../r records.sha256',
        ],
        { cwd: at },
      );
      execFileSync(
        'sh',
        [
          '-c',
          'find data -type f -print0 | LC_ALL=C sort -z | xargs -0 sha256sum > manifest-sha256.txt; sha256sum bagit.txt bag-info.txt manifest-sha256.txt read-me.txt > tagmanifest-sha256.txt',
        ],
        { cwd: at },
      );
    });
    const result = await verify(copy);
    expect(result.code).toBe(1);
    expect(result.out).toContain('the fingerprint in it is not that of the records');
  });
});

describe('broken off', () => {
  const around = (): readonly string[] => readdirSync(dirname(out)).toSorted();
  const asItWas = (was: ReadonlyMap<string, Buffer>): void => {
    const now = bytesBelow(out);
    expect([...now.keys()]).toEqual([...was.keys()]);
    for (const [file, bytes] of was) expect(now.get(file)?.equals(bytes), file).toBe(true);
  };
  const full = (): never => {
    throw Object.assign(new Error('no space'), { code: 'ENOSPC' });
  };

  test.each(['begin', 'records', 'binder'])(
    'before “%s”, the package that was there before is there still, whole, and nothing else',
    async (at) => {
      const [was, names] = [bytesBelow(out), around()];
      const result = await handOver(machine, { yes: true, withoutPrices: true }, (step) => {
        if (step === at) full();
      });
      expect(result.code).toBe(3);
      asItWas(was);
      expect(around()).toEqual(names);
    },
  );

  // Whatever ends a run at a step finds the folder as it is seen there; what the run itself clears away is the same from each of them.
  test('at any step after, it is there whole; and what was about to take its place is the same again, whatever the time zone', async () => {
    const [was, names, zone] = [bytesBelow(out), around(), process.env['TZ']];
    const met: string[] = [];
    let aside: ReadonlyMap<string, Buffer> = new Map();
    process.env['TZ'] = 'Pacific/Auckland';
    try {
      const result = await handOver(machine, { yes: true }, (step) => {
        met.push(step);
        asItWas(was);
        if (step !== 'swap') return;
        const [own = ''] = around().filter((name) => !names.includes(name));
        aside = bytesBelow(join(dirname(out), own));
        full();
      });
      expect(result.code, result.out).toBe(3);
    } finally {
      if (zone === undefined) delete process.env['TZ'];
      else process.env['TZ'] = zone;
    }
    expect(met).toEqual(['begin', 'records', 'binder', 'tables', 'lists', 'look through', 'zip', 'swap']);
    asItWas(was);
    expect(around()).toEqual(names);
    const own = ({ 0: file }: readonly [string, Buffer]): boolean => file !== '.splitpin.json';
    expect(
      [...aside]
        .filter(own)
        .map(([file]) => file)
        .toSorted(),
    ).toEqual(
      [...was]
        .filter(own)
        .map(([file]) => file)
        .toSorted(),
    );
    const others = [...was].filter(own).filter(([file, bytes]) => aside.get(file)?.equals(bytes) !== true);
    expect(others.map(([file]) => file)).toEqual([]);
  });
});
