// A build that cannot be, as a process: every bad input is told with its place, and nothing that was made before is lost.
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { bombPng } from '../photos/bomb-png.ts';
import { compiled } from '../set-up/compiled.ts';
import { contents, day, run } from './beside.ts';
import { haltingHalfWay, runProgram, startProgram } from './process.ts';
import { put, small, smallMachine } from './small-machine.ts';

let program = '';
beforeAll(async () => {
  program = await compiled();
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
