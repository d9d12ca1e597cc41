// build, check and print as processes: what must simply work, what must be refused with its place, and what each ends with.
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  realpathSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { openPdf, pageText } from '../pdf/read-pdf.ts';
import { bombPng } from '../photos/bomb-png.ts';
import { compiled } from '../set-up/compiled.ts';
import { haltingHalfWay, runProgram, startProgram, type Circumstances, type Ended } from './process.ts';
import { put, small, smallMachine } from './small-machine.ts';

let program = '';
beforeAll(async () => {
  program = await compiled();
});

const day = ['--today', '2024-06-01'];

/** Runs the program beside a machine folder. */
async function run(machine: string, words: readonly string[], more: Partial<Circumstances> = {}): Promise<Ended> {
  return runProgram(program, words, { folder: dirname(machine), ...more });
}

/** Every file below a folder with its text, by name. */
function contents(folder: string): Readonly<Record<string, string>> {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    statSync(join(folder, name)).isFile(),
  );
  return Object.fromEntries(files.sort().map((name) => [name, readFileSync(join(folder, name), 'latin1')]));
}

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

describe('a build that cannot be', () => {
  /** The small machine spoilt in one way; the first build is good, so that there is an output to lose. */
  async function spoilt(
    files: Readonly<Record<string, string | Uint8Array>>,
    spoil: (machine: string) => void = () => undefined,
  ) {
    const machine = smallMachine();
    const good = await run(machine, ['build', 'bike', '--site-only', ...day]);
    expect(good.code).toBe(0);
    const before = contents(join(dirname(machine), 'out/bike'));
    put(machine, files);
    spoil(machine);
    const built = await run(machine, ['build', 'bike', '--site-only', ...day]);
    expect(contents(join(dirname(machine), 'out/bike'))).toEqual(before);
    expect(readdirSync(join(dirname(machine), 'out'))).toEqual(['bike']);
    const checked = await run(machine, ['check', 'bike', ...day]);
    return { built, checked };
  }
  const withPhoto = (file: string): string =>
    `---\ntitle: Photo\ndate: 2024-05-01\nkind: cleaning\nstate: done\nphotos: [{file: ${file}, caption: A photo}]\n---\n`;

  const cases: readonly {
    what: string;
    code: string;
    files: Readonly<Record<string, string | Uint8Array>>;
    place: string;
  }[] = [
    {
      what: 'broken YAML',
      code: 'yaml-',
      files: { 'jobs/x.md': '---\ntitle: [a\ndate: 2024-05-01\n---\n' },
      place: 'jobs/x.md:',
    },
    {
      what: 'front matter that is code',
      code: 'front-matter-language',
      files: { 'jobs/x.md': '---js\nrequire("fs").writeFileSync("hacked","")\n---\n' },
      place: 'jobs/x.md:1',
    },
    {
      what: 'no front matter',
      code: 'front-matter-missing',
      files: { 'jobs/x.md': 'just words\n' },
      place: 'jobs/x.md',
    },
    {
      what: 'a record over 1 MB',
      code: 'record-too-large',
      files: { 'jobs/x.md': '---\ntitle: a\n---\n' + 'long '.repeat(220_000) },
      place: 'jobs/x.md',
    },
    {
      what: 'a missing photo',
      code: 'photo-',
      files: { 'jobs/x.md': withPhoto('photos/none.jpg') },
      place: 'jobs/x.md:6:',
    },
    {
      what: 'a climbing photo path',
      code: 'path-climbs',
      files: { 'jobs/x.md': withPhoto('photos/../../secret.jpg') },
      place: 'jobs/x.md:6:',
    },
    {
      what: 'a drawing that calls itself a photo',
      code: 'photo-not-a-picture',
      files: { 'jobs/x.md': withPhoto('photos/x.jpg'), 'photos/x.jpg': '<svg xmlns="http://www.w3.org/2000/svg"/>' },
      place: 'photos/x.jpg',
    },
    {
      what: 'a photo over 60 megapixels',
      code: 'photo-too-large',
      files: { 'jobs/x.md': withPhoto('photos/x.png'), 'photos/x.png': bombPng(9000, 7000) },
      place: 'photos/x.png',
    },
    {
      what: 'two records of one name',
      code: '',
      files: { 'jobs/old/2024-03-02-bought.md': small['jobs/2024-03-02-bought.md'] ?? '' },
      place: '2024-03-02-bought.md',
    },
  ];
  test.each(cases)('$what: exit 1 with its place, nothing lost', async ({ code, files, place }) => {
    const { built, checked } = await spoilt(files);
    for (const { code: ended, err } of [built, checked]) {
      expect([ended, err]).toEqual([1, expect.stringContaining(code)]);
      expect(err).toContain(place);
    }
    expect(built.err).toContain('nothing was written');
  });

  test('a photo that breaks off', async () => {
    const whole = readFileSync(join(import.meta.dirname, 'plain.png'));
    const { built } = await spoilt({
      'jobs/x.md': withPhoto('photos/x.png'),
      'photos/x.png': whole.subarray(0, whole.length - 20),
    });
    expect([built.code, built.err]).toEqual([1, expect.stringContaining('photos/x.png photo-broken')]);
  });

  test('links out of the folder, of records and of photos', async () => {
    const { built, checked } = await spoilt({ 'jobs/x.md': withPhoto('photos/x.jpg') }, (machine) => {
      mkdirSync(join(machine, 'photos'));
      symlinkSync('/etc/hostname', join(machine, 'photos/x.jpg'));
      symlinkSync('/etc/hostname', join(machine, 'jobs/y.md'));
    });
    for (const { code, err } of [built, checked]) {
      expect(code).toBe(1);
      expect(err).toContain('jobs/y.md link-not-followed');
      expect(err).toMatch(/jobs\/x\.md:6:\d+ path-through-link/);
    }
  });

  test('an output folder that is not ours, and one inside the machine', async () => {
    const machine = smallMachine();
    put(dirname(machine), { 'out/bike/thesis.txt': 'years of work' });
    const refused = await run(machine, ['build', 'bike', ...day]);
    expect([refused.code, refused.err]).toEqual([1, expect.stringContaining('output-not-ours')]);
    expect(contents(join(dirname(machine), 'out'))).toEqual({ 'bike/thesis.txt': 'years of work' });
    const inside = await run(machine, ['build', 'bike', '--out', 'bike/out', ...day]);
    expect([inside.code, inside.err]).toEqual([1, expect.stringContaining('output-in-machine-folder')]);
    expect(existsSync(join(machine, 'out'))).toBe(false);
  });

  test('an output folder that cannot be written', async () => {
    const machine = smallMachine();
    const { code, err } = await run(machine, ['build', 'bike', '--out', '/proc/splitpin/out', ...day]);
    expect([code, err]).toEqual([1, expect.stringContaining('output-not-writable')]);
  });

  test('stays out of the machine folder when it is run inside it', async () => {
    const machine = smallMachine();
    const { code } = await runProgram(program, ['build', '.', '--site-only', ...day], { folder: machine });
    expect(code).toBe(0);
    expect(existsSync(join(dirname(machine), 'out/bike/index.html'))).toBe(true);
    expect(readdirSync(machine).sort()).toEqual(['jobs', 'machine.yaml', 'maker']);
  });

  test.each(['SIGKILL', 'SIGTERM', 'SIGINT'] as const)(
    'killed half-way by %s: the old output stays, and the next run clears up',
    async (signal) => {
      const machine = smallMachine();
      const out = join(dirname(machine), 'out');
      await run(machine, ['build', 'bike', ...day]);
      const before = contents(join(out, 'bike'));
      const running = startProgram(program, ['build', 'bike', '--today', '2024-06-02'], {
        folder: dirname(machine),
        environment: { NODE_OPTIONS: haltingHalfWay },
      });
      const ended = new Promise((done) => running.child.on('close', done));
      while (readdirSync(out).length < 2 && running.child.exitCode === null)
        await new Promise((done) => setTimeout(done, 2));
      running.child.kill(signal);
      const waking = setInterval(() => running.child.kill('SIGCONT'), 20);
      await ended;
      clearInterval(waking);
      expect(contents(join(out, 'bike'))).toEqual(before);
      expect(readdirSync(out)).toHaveLength(signal === 'SIGKILL' ? 2 : 1);
      const next = await run(machine, ['build', 'bike', '--today', '2024-06-02']);
      expect([next.code, readdirSync(out)]).toEqual([0, ['bike']]);
    },
  );
});

describe('the terminal', () => {
  const hostile = {
    'jobs/x.md': '---\ntitle: "red \u001b[31m text \u202e turned"\ndate: 2024-05-01\nkind: nothing\nstate: done\n---\n',
  };

  test('never gets control characters or turned text raw, and no colour in a pipe', async () => {
    const machine = smallMachine(hostile);
    for (const environment of [{}, { NO_COLOR: '1' }, { FORCE_COLOR: '1' }]) {
      const { code, out, err } = await run(machine, ['check', 'bike', ...day], { environment });
      expect(code).toBe(1);
      // oxlint-disable-next-line no-control-regex -- they are what must not be there
      expect(out + err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);
    }
  });

  test('gets nothing about progress in a pipe', async () => {
    const machine = smallMachine();
    const { err } = await run(machine, ['build', 'bike', '--site-only', ...day]);
    expect(err).toBe('');
  });
});

describe('print', () => {
  const typo = {
    'jobs/2024-05-04-old-ride.md': (small['jobs/2024-05-04-old-ride.md'] ?? '').replace('950 mi', '12,480 mi'),
  };

  test('prints a sheet though another record has a mistake, and says what was left out', async () => {
    const machine = smallMachine(typo);
    const built = await run(machine, ['build', 'bike', ...day]);
    expect(built.code).toBe(1);
    const { code, out, err } = await run(machine, ['print', 'bike', 'torque-table', ...day]);
    expect(code).toBe(0);
    expect(out).toContain(join('out/bike-print', 'torque-table.pdf'));
    expect(out).toMatch(/left out: .*jobs\/2024-05-04-old-ride\.md/i);
    expect(err).toContain('jobs/2024-05-04-old-ride.md:6:11 number-ambiguous');
    const pdf = readFileSync(join(dirname(machine), 'out/bike-print/torque-table.pdf'));
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    expect(readdirSync(join(dirname(machine), 'out/bike-print'))).toEqual(['torque-table.pdf']);
  });

  test('prints every sheet of a planned job by the name of the job', async () => {
    const planned =
      '---\ntitle: Rings\ndate: 2024-06-08\nkind: measuring\nstate: planned\nreadings: [{item: ring-gap}]\n---\n';
    const machine = smallMachine({ 'jobs/2024-06-08-rings.md': planned, ...typo });
    const { code, out } = await run(machine, ['print', 'bike', '2024-06-08-rings', '--out', 'tonight', ...day]);
    expect(code).toBe(0);
    const files = readdirSync(join(dirname(machine), 'tonight'));
    expect(files.length).toBeGreaterThan(0);
    for (const file of files)
      expect([file.endsWith('-2024-06-08-rings.pdf'), out.includes(file)]).toEqual([true, true]);
    const kind = await run(machine, ['print', 'bike', 'measuring', '--out', 'kind', ...day]);
    expect([kind.code, readdirSync(join(dirname(machine), 'kind'))]).toEqual([0, ['measuring-2024-06-08-rings.pdf']]);
  });

  test('names the sheets, the nearest first, when there is none of that name', async () => {
    const machine = smallMachine();
    const { code, err } = await run(machine, ['print', 'bike', 'torque-tabel', ...day]);
    expect(code).toBe(2);
    expect(err.split('\n')[1]).toContain('torque-table');
    const list = await run(machine, ['print', 'bike', 'list', ...day]);
    expect([list.code, list.out.includes('torque-table')]).toEqual([0, true]);
  });

  test('cannot when the machine itself cannot be read', async () => {
    const machine = smallMachine({
      'machine.yaml': (small['machine.yaml'] ?? '').replace('stroke: two', 'stroke: three'),
    });
    const { code, err, out } = await run(machine, ['print', 'bike', 'torque-table', ...day]);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('machine.yaml:9:');
  });

  test('asks for one machine of a workshop', async () => {
    const machine = smallMachine({}, 'workshop/one');
    put(dirname(machine), Object.fromEntries(Object.entries(small).map(([file, text]) => ['two/' + file, text])));
    const { code, err } = await runProgram(program, ['print', '.', 'torque-table', ...day], {
      folder: dirname(machine),
    });
    expect([code, err.includes('one'), err.includes('two')]).toEqual([2, true, true]);
  });
});

test('an output folder beside which this user may not write is refused', async () => {
  if (process.getuid?.() !== 0) return;
  const machine = smallMachine();
  const base = realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-closed-')));
  writeFileSync(join(base, 'mine'), '');
  chmodSync(dirname(machine), 0o755);
  const { code, err } = await runProgram(program, ['build', machine, '--out', join(base, 'bike'), ...day], {
    folder: tmpdir(),
    user: 65_534,
  });
  expect([code, err]).toEqual([1, expect.stringContaining('output-not-writable')]);
  expect(readdirSync(base)).toEqual(['mine']);
  rmSync(base, { recursive: true });
});
