// upgrade: an earlier form becomes this one by the smallest edits; comments and every other byte stay, and each file is kept as it was.
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stops } from '../../src/build.ts';
import { answersBeforehand } from '../../src/command/asker.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { upgradeCommand, type UpgradeOptions } from '../../src/command/upgrade-command.ts';
import { upgradeRecord, withFirstComment } from '../../src/entry/upgrade-record.ts';
import { small, smallMachine } from './small-machine.ts';

const version = 'splitpin: 1\n';
const without = (file: string): string => (small[file] ?? '').replace(version, '');

async function upgrade(machine: string, options: UpgradeOptions, lines: readonly string[] = []) {
  const said: string[] = [];
  const line = (text: string): void => void said.push(text);
  const terminal = { say: line, tell: line, progress: () => undefined, colour: false };
  const around = { terminal, folder: machine, clock: () => new Date('2024-06-01T12:00:00') };
  const code = await upgradeCommand(machine, options, around, answersBeforehand(lines));
  return { code, said: said.join('\n') };
}
const text = (machine: string, file: string): string => readFileSync(join(machine, file), 'utf8');

describe('upgrade', () => {
  test('shows, asks, keeps a copy, and changes the one line', async () => {
    const old = `# my own words\r\n\r\n${without('machine.yaml').replaceAll('\n', '\r\n').replace('make: Test', 'make: Test   # stays')}`;
    const book = '\ufeff' + (small['maker/book.yaml'] ?? '').replace(version, 'splitpin: "1.0"  # of old\n');
    const machine = smallMachine({ 'machine.yaml': old, 'maker/book.yaml': book });
    expect((await upgrade(machine, {}, ['no'])).said).toContain('Nothing was written');
    expect((await upgrade(machine, {})).said).toContain('--yes');
    expect(text(machine, 'machine.yaml')).toBe(old);
    const done = await upgrade(machine, {}, ['yes']);
    expect([done.code, done.said]).toEqual([
      0,
      expect.stringContaining('2 files rewritten; as they were: .before-upgrade/2024-06-01'),
    ]);
    expect(text(machine, 'machine.yaml')).toBe(old.replace('name: Test machine', 'splitpin: 1\r\nname: Test machine'));
    expect(text(machine, 'maker/book.yaml').replace(/splitpin: "?1"?/u, '')).toBe(book.replace('splitpin: "1.0"', ''));
    expect(text(machine, '.before-upgrade/2024-06-01/machine.yaml')).toBe(old);
    expect(text(machine, '.before-upgrade/2024-06-01/maker/book.yaml')).toBe(book);
    expect(stops(readMachine(machine, '2024-06-01', {}).problems)).toEqual([]);
    expect((await upgrade(machine, {})).said).toContain('every record is as this program writes it');
  });

  test('a second one of a day keeps its copies apart', async () => {
    const machine = smallMachine({ 'machine.yaml': without('machine.yaml') });
    await upgrade(machine, { yes: true });
    writeFileSync(join(machine, 'machine.yaml'), without('machine.yaml'));
    await upgrade(machine, { yes: true });
    expect(readdirSync(join(machine, '.before-upgrade')).toSorted()).toEqual(['2024-06-01', '2024-06-01-2']);
  });

  test('a later format, one that never was, and a file that cannot be read are told, and nothing is written', async () => {
    for (const [words, said] of [
      ['2', 'newer than this program'],
      ['0', 'no version of the format that there ever was'],
      ['yesterday', 'no version of the format'],
      ['{', 'cannot be read'],
    ] as const) {
      const book = (small['maker/book.yaml'] ?? '').replace(version, `splitpin: ${words}\n`);
      const machine = smallMachine({ 'maker/book.yaml': book, 'machine.yaml': without('machine.yaml') });
      const tried = await upgrade(machine, { yes: true, editor: true });
      expect([tried.code, tried.said]).toEqual([1, expect.stringContaining(said)]);
      expect(text(machine, 'machine.yaml')).toBe(without('machine.yaml'));
      expect(existsSync(join(machine, '.before-upgrade'))).toBe(false);
      expect(existsSync(join(machine, '.schema'))).toBe(false);
    }
  });

  test('for editors: schemas beside the records, and a line that names each, once', async () => {
    const machine = smallMachine();
    const before = text(machine, 'maker/book.yaml');
    await upgrade(machine, { yes: true, editor: true });
    expect(readdirSync(join(machine, '.schema')).toSorted()).toEqual(
      ['instruments', 'job', 'machine', 'maker', 'wiring', 'workshop'].map((kind) => `${kind}.json`),
    );
    expect(text(machine, 'maker/book.yaml')).toBe(`# yaml-language-server: $schema=../.schema/maker.json\n${before}`);
    expect(text(machine, 'jobs/2024-03-02-bought.md')).toBe(small['jobs/2024-03-02-bought.md']);
    expect(stops(readMachine(machine, '2024-06-01', {}).problems)).toEqual([]);
    const once = text(machine, 'machine.yaml');
    await upgrade(machine, { yes: true, editor: true });
    expect(text(machine, 'machine.yaml')).toBe(once);
  });

  test('whatever comments and lines there are, all of them stay', () => {
    const comment = fc.string({ maxLength: 20 }).map((words) => '# ' + words.replaceAll(/[^\x20-\x7e]/gu, ''));
    const ends = fc.constantFrom('\n', '\r\n');
    fc.assert(
      fc.property(fc.array(comment, { maxLength: 4 }), fc.boolean(), ends, (comments, marked, end) => {
        const lines = [...comments, 'name: a  # b', ...comments, 'make: c'];
        const record = { file: 'machine.yaml', text: (marked ? '\ufeff' : '') + lines.join(end) + end };
        const made = upgradeRecord(record);
        if (made.kind !== 'changed') throw new Error(made.kind);
        expect(made.text.replace(`splitpin: 1${end}`, '')).toBe(record.text);
        expect(made.text.startsWith('\ufeff')).toBe(marked);
        const first = withFirstComment({ ...record, text: made.text }, '# yaml-language-server: x') ?? '';
        expect(first.replace(`# yaml-language-server: x${end}`, '')).toBe(made.text);
        expect(upgradeRecord({ ...record, text: first }).kind).toBe('as it is');
      }),
    );
  });
});
