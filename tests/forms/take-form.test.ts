// `take` of a filled form: into its record, shown first; refused for another machine or where the record says otherwise by now.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { readMachine } from '../../src/command/read-machine.ts';
import { bytesOf, copyOf, filled, jobForm, jobForms, remove, today, type JobForm } from './job-forms.ts';
import { take } from './take-here.ts';

const record = 'jobs/2026-11-21-top-end-again.md';
const bore = '2026-11-21-top-end-again/bore/left top across/found';
const bag = '2026-11-21-top-end-again/foot/next';

let forms: readonly JobForm[];
let folder: string;
const folders: string[] = [];
beforeAll(async () => {
  forms = await jobForms('demo-bike');
});
afterEach(() => folders.splice(0).forEach(remove));

function demo(): string {
  folder = copyOf('demo-bike');
  folders.push(folder);
  return folder;
}

async function put(kind: string, answers: Readonly<Record<string, string>>, name = 'filled.pdf'): Promise<string> {
  const form = forms.find(({ sheet }) => sheet.id.startsWith(kind));
  if (form === undefined) throw new Error(`no form of ${kind}`);
  const away = copyOf('tests/fixtures/from-the-manual');
  folders.push(away);
  const path = join(away, name);
  writeFileSync(path, await filled(form.bytes, answers));
  return path;
}

function text(file = record): string {
  return readFileSync(join(folder, file), 'utf8');
}

describe('a filled form', () => {
  it('is shown, and written when that is agreed to; every other byte stays', async () => {
    demo();
    const before = text();
    const path = await put('measuring', { [bore]: '50,62', [bag]: 'order the next size' });
    const shown = await take(folder, [path], { show: true });
    expect(shown.said).toContain('Cylinder bore, left top across, as found: 50.62 mm');
    expect(shown.said).toContain('Past its limit');
    expect(shown.said).toContain('Nothing was written.');
    expect(text()).toBe(before);
    expect((await take(folder, [path], {}, ['no'])).said).toContain('Nothing was written.');
    expect(text()).toBe(before);
    const took = await take(folder, [path], {}, ['yes']);
    expect(took.code, took.said).toBe(0);
    expect(text()).toContain('left top across: 50.62 mm');
    const kept = before.split('\n').filter((line) => !/^(state|next): /.test(line) && line !== '  - item: bore');
    for (const line of kept) expect(text()).toContain(line);
  });

  it('needs a yes: through a pipe without one nothing is written', async () => {
    demo();
    const before = bytesOf(folder);
    const took = await take(folder, [await put('measuring', { [bore]: '50.52' })]);
    expect(took.said).toContain('--yes');
    expect(bytesOf(folder)).toEqual(before);
  });

  it('is nothing new the second time', async () => {
    demo();
    const path = await put('measuring', { [bore]: '50,52' });
    await take(folder, [path], { yes: true });
    const once = text();
    const again = await take(folder, [path], { yes: true });
    expect(again.code, again.said).toBe(0);
    expect(again.said).toContain('1 answer stood in the record already');
    expect(again.said).toContain('nothing was written');
    expect(text()).toBe(once);
  });

  it('of one sheet does not make the others of the same job strangers', async () => {
    demo();
    const measuring = await put('measuring', { [bore]: '50.52' });
    const tearing = forms
      .find(({ sheet }) => sheet.id.startsWith('teardown'))
      ?.blanks.find(({ kind }) => kind === 'tick');
    const teardown = await put('teardown', { [tearing?.id ?? '']: 'yes' });
    const took = await take(folder, [measuring, teardown], { yes: true });
    expect(took.code, took.said).toBe(0);
    expect(took.said).toContain('nothing of that is against what is written here');
    expect(readMachine(folder, today, {}).problems.filter(({ severity }) => severity === 'problem')).toEqual([]);
  });

  it('half filled gives what is in it', async () => {
    demo();
    const took = await take(folder, [await put('measuring', {})], { yes: true });
    expect(took.code).toBe(0);
    expect(took.said).toContain('Nothing new is in it');
    const one = await take(folder, [await put('measuring', { [bore]: '50.52' })], { yes: true });
    expect(one.code, one.said).toBe(0);
    expect(text().match(/50\.52 mm/g)).toHaveLength(1);
  });
});

describe('a form of another machine or another version', () => {
  it('is refused for another machine, whatever is said', async () => {
    folder = copyOf('tests/fixtures/tern-350');
    folders.push(folder);
    const before = bytesOf(folder);
    const took = await take(folder, [await put('measuring', { [bore]: '50.52' })], { yes: true, how: ['wins=form'] });
    expect(took.code).toBe(1);
    expect(took.said).toContain('It is of another machine: Larkmoor Pipit 175');
    expect(bytesOf(folder)).toEqual(before);
  });

  it('is known by its frame when the machine was renamed', async () => {
    demo();
    const machine = text('machine.yaml').replace(/^name: .*$/m, 'name: The little one');
    writeFileSync(join(folder, 'machine.yaml'), machine);
    const took = await take(folder, [await put('measuring', { [bore]: '50.52' })], { yes: true });
    expect(took.code, took.said).toBe(0);
  });

  const changed = (): void => {
    demo();
    const now = text().replace('  - item: bore\n', '  - {item: bore, found: {left top across: 50.55 mm}}\n');
    expect(now).not.toBe(text());
    writeFileSync(join(folder, record), now);
  };

  it('is refused where the record says otherwise by now, until it is said which wins', async () => {
    changed();
    const before = text();
    const took = await take(folder, [await put('measuring', { [bore]: '50.52' })], { yes: true });
    expect(took.code).toBe(1);
    expect(took.said).toMatch(/the record says 50\.55\smm, here stands 50\.52/);
    expect(took.said).toContain('--how wins=form');
    expect(text()).toBe(before);
  });

  it.each([
    { wins: 'form', has: ['50.52 mm'], lacks: ['50.55 mm'] },
    { wins: 'record', has: ['50.55 mm'], lacks: ['50.52'] },
    { wins: 'both', has: ['50.55 mm', '50.52 mm'], lacks: [] },
  ])('wins=$wins is done', async ({ wins, has, lacks }) => {
    changed();
    const took = await take(folder, [await put('measuring', { [bore]: '50.52' })], {
      yes: true,
      how: [`wins=${wins}`],
    });
    expect(took.code, took.said).toBe(0);
    for (const one of has) expect(text()).toContain(one);
    for (const one of lacks) expect(text()).not.toContain(one);
  });

  it('of which two people filled two copies keeps both, and asks about it', async () => {
    demo();
    const asked = (): number => readMachine(folder, today, {}).problems.length;
    const one = await put('measuring', { [bore]: '50.52' });
    const other = await put('measuring', { [bore]: '50.58' });
    await take(folder, [one], { yes: true });
    const before = asked();
    expect((await take(folder, [other], { yes: true })).code).toBe(1);
    const took = await take(folder, [other], { yes: true, how: ['wins=both'] });
    expect(took.code, took.said).toBe(0);
    expect(text()).toContain('50.52 mm');
    expect(text()).toContain('50.58 mm');
    expect(asked()).toBeGreaterThan(before);
  });

  it('is refused when its job is done, or gone', async () => {
    demo();
    const path = await put('measuring', { [bore]: '50.52' });
    writeFileSync(join(folder, record), text().replace('state: planned', 'state: done'));
    expect((await take(folder, [path], { yes: true })).said).toContain('has no sheets to be filled in any more');
    remove(join(folder, record));
    expect((await take(folder, [path], { yes: true })).said).toContain('of which this folder has no record');
  });

  it('is not written over a record that was saved meanwhile', async () => {
    demo();
    const path = await put('measuring', { [bore]: '50.52' });
    const saved = text().replace('title: ', 'title: Saved meanwhile, ');
    const lines = { length: 0 };
    const asking = {
      atTerminal: true,
      ask: async () => {
        lines.length += 1;
        writeFileSync(join(folder, record), saved);
        return Promise.resolve('yes');
      },
      interrupted: () => false,
      close: () => undefined,
    };
    const { takeCommand } = await import('../../src/command/take-command.ts');
    const said: string[] = [];
    const terminal = {
      say: (one: string) => void said.push(one),
      tell: (one: string) => void said.push(one),
      progress: () => undefined,
      colour: false,
    };
    const around = { terminal, folder: process.cwd(), clock: () => new Date() };
    const code = await takeCommand(folder, [path], { today }, around, asking);
    expect(lines.length).toBe(1);
    expect(code).toBe(1);
    expect(said.join('\n')).toContain('was changed while this was being read');
    expect(text()).toBe(saved);
  });
});

describe('a sheet of the machine', () => {
  it('is kept by the open job of its kind: an intake written on the intake sheet', async () => {
    folder = copyOf('demo-bike');
    folders.push(folder);
    const file = 'jobs/2026-11-20-looked-over-again.md';
    writeFileSync(
      join(folder, file),
      '---\ntitle: Looked over again\ndate: 2026-11-20\nkind: intake\nstate: planned\n---\n',
    );
    const intake = await jobForm(folder, 'intake');
    if (intake === undefined) throw new Error('no form of the intake');
    const tick = intake.blanks.find(({ kind, given }) => kind === 'tick' && given === undefined);
    const path = join(folder, 'filled.pdf');
    writeFileSync(path, await filled(intake.bytes, { [tick?.id ?? '']: 'yes' }));
    const took = await take(folder, [path], { yes: true });
    expect(took.code, took.said).toBe(0);
    expect(text(file)).toContain('state: under way');
    const again = await jobForm(folder, 'intake');
    expect(again?.blanks.find(({ id }) => id === tick?.id)?.given).toBe('yes');
  });
});
