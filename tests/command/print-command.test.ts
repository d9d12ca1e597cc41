// print as a process, which prints what it can; and what the terminal never gets.
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { compiled } from '../set-up/compiled.ts';
import { day, run } from './beside.ts';
import { runProgram } from './process.ts';
import { put, small, smallMachine } from './small-machine.ts';

let program = '';
beforeAll(async () => {
  program = await compiled();
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

  test('prints every sheet of a planned job by its procedure, or by words of its title', async () => {
    const planned = (title: string) =>
      `---\ntitle: ${title}\ndate: 2024-06-08\nkind: service\nstate: planned\nprocedures: [wheel-rear-out]\n---\n`;
    const machine = smallMachine({ 'jobs/2024-06-08-hind.md': planned('The hind leg') });
    for (const name of ['wheel-rear-out', 'rear-out', 'hind leg']) {
      const { code, out } = await run(machine, ['print', 'bike', name, '--out', 'tonight', ...day]);
      expect([name, code, out]).toEqual([name, 0, expect.stringContaining('teardown-2024-06-08-hind.pdf')]);
    }
    put(machine, { 'jobs/2024-07-08-again.md': planned('Again') });
    const { code, err } = await run(machine, ['print', 'bike', 'wheel-rear-out', ...day]);
    expect([code, err]).toEqual([2, expect.stringContaining('“wheel-rear-out” may mean several jobs')]);
    expect(err).toMatch(/2024-06-08-hind .*The hind leg\n.*2024-07-08-again .*Again/u);
  });

  test('prints with a planned intake the sheet that its record keeps, and nothing to take apart', async () => {
    const planned =
      '---\ntitle: First look\ndate: 2024-06-08\nkind: intake\nstate: planned\nreadings: [{item: tread}]\n---\n';
    const machine = smallMachine({ 'jobs/2024-06-08-look.md': planned });
    const { code } = await run(machine, ['print', 'bike', '2024-06-08-look', '--out', 'tonight', ...day]);
    const files = readdirSync(join(dirname(machine), 'tonight')).toSorted();
    expect([code, files]).toEqual([0, ['intake.pdf', 'measuring-2024-06-08-look.pdf']]);
    const byPart = await run(machine, ['print', 'bike', 'look', '--out', 'by-part', ...day]);
    expect([byPart.code, readdirSync(join(dirname(machine), 'by-part')).toSorted()]).toEqual([0, files]);
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
