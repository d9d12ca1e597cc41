// build and check as processes: what must simply work, and what each ends with.
import { existsSync, mkdtempSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { openPdf, pageText } from '../pdf/read-pdf.ts';
import { compiled } from '../set-up/compiled.ts';
import { contents, day, run } from './beside.ts';
import { runProgram } from './process.ts';
import { put, small, smallMachine } from './small-machine.ts';

let program = '';
beforeAll(async () => {
  program = await compiled();
});

function withoutManifest(folder: string): Readonly<Record<string, string>> {
  const { '.splitpin.json': _, ...rest } = contents(folder);
  return rest;
}

/** The files of a folder that print the fingerprint of the records. */
function withFingerprint(folder: string): readonly string[] {
  const kind = folder === 'print' ? 'pdf' : 'html';
  return ['history'].map((sheet) => `${folder}/${sheet}.${kind}`);
}

/** What a page or a PDF says, without the fingerprint. */
async function unprinted(file: string, held: string): Promise<string> {
  const fingerprint = /[0-9a-f]{8}(?:\s+[0-9a-f]{8}){7}/u;
  const said = file.endsWith('.pdf') ? await textOf(Buffer.from(held, 'latin1')) : held;
  expect(said, file).toMatch(fingerprint);
  return said.replace(fingerprint, '');
}

async function textOf(bytes: Buffer): Promise<string> {
  const document = await openPdf(bytes);
  const pages: string[] = [];
  for (let page = 1; page <= document.numPages; page += 1) pages.push(await pageText(document, page));
  await document.destroy();
  return pages.join('\n');
}

describe('the command line', () => {
  const anywhere = { folder: tmpdir() };

  test('helps with every command and an example of each', async () => {
    const { code, out } = await runProgram(program, ['--help'], anywhere);
    expect(code).toBe(0);
    for (const command of ['build', 'check', 'print', 'serve']) {
      expect(out).toContain('splitpin ' + command);
      const help = await runProgram(program, [command, '--help'], anywhere);
      expect([help.code, help.out.includes('Examples'), help.out.includes('Exit codes')]).toEqual([0, true, true]);
    }
  });

  test('ends with 2 on words that it does not know, and says which', async () => {
    const cases = [
      ['bild', '.'],
      ['build'],
      ['build', '.', '--paper', 'a3'],
      ['build', '.', '--today', '2024-02-30'],
      ['check', '.', '--quick'],
    ];
    for (const words of cases) {
      const { code, err, out } = await runProgram(program, words, anywhere);
      expect([words, code, out]).toEqual([words, 2, '']);
      expect(err).toContain('error:');
    }
  });

  test('refuses what is not a machine folder with its place', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'splitpin-empty-'));
    for (const command of ['build', 'check', 'serve']) {
      const { code, err } = await runProgram(program, [command, 'nothing here'], { folder });
      expect([code, err.includes('not-a-machine-folder'), err.includes('nothing here')]).toEqual([1, true, true]);
    }
  });
});

describe('build', () => {
  test('makes the whole binder, says what, where and what needs an eye; then finds that nothing has changed', async () => {
    const machine = smallMachine();
    const first = await run(machine, ['build', 'bike', ...day]);
    expect([first.code, first.err]).toEqual([0, '']);
    const out = join(dirname(machine), 'out/bike');
    for (const line of [join('out/bike', 'index.html'), 'Needs your eye:', 'held: ', 'still off'])
      expect(first.out).toContain(line);
    expect(existsSync(join(out, 'print/torque-table.pdf'))).toBe(true);
    expect(JSON.parse(readFileSync(join(out, 'data/binder.json'), 'utf8'))).toMatchObject({
      format: 1,
      today: '2024-06-01',
    });
    const before = contents(out);
    const { ino } = statSync(out);
    const second = await run(machine, ['build', 'bike', ...day]);
    expect([second.code, second.out.includes('Nothing has changed')]).toEqual([0, true]);
    expect(second.out).toContain(join('out/bike', 'index.html'));
    // A binder that is handed on tells nothing of the machine it was made on.
    expect(readFileSync(join(out, '.splitpin.json'), 'utf8')).not.toContain(dirname(machine));
    expect(second.out.startsWith(first.out.trimEnd())).toBe(true);
    expect([contents(out), statSync(out).ino]).toEqual([before, ino]);
    expect(readdirSync(machine).sort()).toEqual(['jobs', 'machine.yaml', 'maker']);
  });

  test('a changed record changes its pages; all the rest is taken over as it was', async () => {
    const machine = smallMachine();
    await run(machine, ['build', 'bike', ...day]);
    const style = join(dirname(machine), 'out/bike/assets/splitpin.css');
    const { ino } = statSync(style);
    put(machine, { 'jobs/2024-03-02-bought.md': (small['jobs/2024-03-02-bought.md'] ?? '').replace('barn', 'chapel') });
    const again = await run(machine, ['build', 'bike', ...day]);
    expect(again.out).toMatch(/\d+ files? written, \d+ files unchanged/);
    expect(readFileSync(join(dirname(machine), 'out/bike/jobs/2024-03-02-bought.html'), 'utf8')).toContain('chapel');
    expect(statSync(style).ino).toBe(ino);
  });

  test('gives the same bytes from CRLF, BOM, no last line end, another folder, another order and three time zones', async () => {
    const trimmed = Object.fromEntries(Object.entries(small).map(([file, text]) => [file, text.trimEnd()]));
    const plain = smallMachine(trimmed);
    await run(plain, ['build', 'bike', ...day]);
    const wanted = withoutManifest(join(dirname(plain), 'out/bike'));
    expect(Object.keys(wanted).length).toBeGreaterThan(20);
    const crlf = Object.fromEntries(
      Object.entries(trimmed).map(([file, text]) => [file, '\ufeff' + text.replaceAll('\n', '\r\n')]),
    );
    const cases = [
      ['America/St_Johns', crlf],
      ['Pacific/Kiritimati', trimmed],
      ['Asia/Kathmandu', crlf],
    ] as const;
    for (const [zone, files] of cases) {
      const machine = smallMachine(Object.fromEntries(Object.entries(files).toReversed()));
      const { code, err } = await run(machine, ['build', 'bike', ...day], { environment: { TZ: zone } });
      expect([zone, code, err]).toEqual([zone, 0, '']);
      const got = withoutManifest(join(dirname(machine), 'out/bike'));
      expect(Object.keys(got)).toEqual(Object.keys(wanted));
      const differing = Object.keys(wanted).filter((file) => got[file] !== wanted[file]);
      // The fingerprint is of the records letter by letter, line ends among them; it alone may differ, and does.
      expect([zone, differing]).toEqual([zone, files === crlf ? ['print', 'sheets'].flatMap(withFingerprint) : []]);
      for (const file of differing)
        expect(await unprinted(file, got[file] ?? '')).toEqual(await unprinted(file, wanted[file] ?? ''));
    }
  });

  test('takes the day of this place’s calendar when none is given', async () => {
    const machine = smallMachine();
    const east = await run(machine, ['build', 'bike', '--site-only'], { environment: { TZ: 'Etc/GMT-14' } });
    const west = await run(machine, ['build', 'bike', '--site-only'], { environment: { TZ: 'Etc/GMT+12' } });
    // Twenty-six hours lie between the two, so that their calendars never agree and the second finds something changed.
    expect([east.code, west.code, west.out.includes('Nothing has changed')]).toEqual([0, 0, false]);
  });

  test('takes names with spaces, quotes and letters of every script', async () => {
    const name = `Größe "日本" it's`;
    const job = small['jobs/2024-03-02-bought.md'] ?? '';
    const photo = readFileSync(join(import.meta.dirname, 'plain.png'));
    const machine = smallMachine(
      {
        "jobs/the 'old' «bill» – Ωmega.md": job
          .replace('Bought', 'Paper')
          .replace('odometer: 1000 mi', "photos: [{file: photos/l'été à 2.png, caption: Summer}]"),
        "photos/l'été à 2.png": photo,
      },
      name,
    );
    const { code, err } = await run(machine, ['build', name, ...day]);
    expect([code, err]).toEqual([0, '']);
    const out = join(dirname(machine), 'out', name);
    expect(readdirSync(join(out, 'jobs'))).toContain("the 'old' «bill» – Ωmega.html");
    expect(readdirSync(join(out, 'photos/large'))).toEqual(["l'été à 2.png.jpg"]);
  });

  test('makes every machine of a workshop, with the workshop’s instruments', async () => {
    const machine = smallMachine({}, 'workshop/one');
    const two = Object.entries(small).map(([file, text]) => ['two/' + file, text.replace('T1-000123', 'T2-000456')]);
    put(dirname(machine), Object.fromEntries(two));
    put(dirname(machine), {
      'instruments.yaml':
        'splitpin: 1\ninstruments:\n  - {id: feelers, name: Feeler gauges, measures: length, resolution: 0.05 mm}\n',
    });
    const base = dirname(dirname(machine));
    const { code, err } = await runProgram(program, ['build', 'workshop', '--site-only', ...day], { folder: base });
    expect([code, err]).toEqual([0, '']);
    for (const each of ['one', 'two']) expect(existsSync(join(base, 'out/workshop', each, 'index.html'))).toBe(true);
    expect(readFileSync(join(base, 'out/workshop/index.html'), 'utf8')).toContain('Feeler gauges');
  });
});
