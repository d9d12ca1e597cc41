// What came with a package stays as it came: photos by their bytes, and whatever is held when records are rewritten.
import { mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { answersBeforehand } from '../../src/command/asker.ts';
import { checkCommand } from '../../src/command/check-command.ts';
import { sha256 } from '../../src/command/fingerprint-of.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { upgradeCommand } from '../../src/command/upgrade-command.ts';
import { keptTerminal } from '../../src/command/workshop/kept-terminal.ts';
import { buildMachine } from '../../src/command/workshop/machine-build.ts';
import { adopt, wagtail, writePackage } from './package.ts';

let around = '';
let here = '';
beforeEach(() => {
  around = realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-adopt-')));
  here = join(around, 'workshop');
  mkdirSync(here);
});
afterEach(() => rmSync(around, { recursive: true, force: true }));

const packed = (records?: Readonly<Record<string, string | Buffer>>): string =>
  writePackage(join(around, 'package'), records);
const put = (file: string, text: string): void => {
  mkdirSync(join(here, file, '..'), { recursive: true });
  writeFileSync(join(here, file), text);
};
const codesOf = (folder: string): readonly string[] =>
  readMachine(join(here, folder), '2026-11-20', {}).problems.map(({ code, at }) => `${code} ${at.file}`);

/** A picture of one point, in a PNG. */
const point = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

const pictured = {
  ...wagtail,
  'photos/plug.png': Buffer.from(point, 'base64'),
  'jobs/2025-05-01-plug.md': (wagtail['jobs/2025-05-01-plug.md'] ?? '').replace(
    'hands: [hand 1]\n',
    'hands: [hand 1]\nphotos: [{file: photos/plug.png, caption: The plug}]\n',
  ),
};

test('a photo that came stays as it came: one that was changed, or is gone, is named by check and stops a build', async () => {
  const { said } = await adopt(here, packed(pictured));
  expect(said).toContain('and so do the photos');
  const photo = join(here, 'wagtail/photos/plug.png');
  expect(statSync(photo).mode & 0o777).toBe(0o444);
  expect(readFileSync(join(here, 'wagtail/adopted.yaml'), 'utf8')).toMatch(
    /^photos:\n {2}- \{file: photos\/plug\.png, hash: [0-9a-f]{64}\}$/mu,
  );
  const checked = async (): Promise<readonly [number, string]> => {
    const { terminal, lines } = keptTerminal(false);
    const around = { terminal, folder: here, clock: () => new Date('2026-11-20T12:00:00') };
    const code = await checkCommand('wagtail', {}, around);
    return [code, lines.map(({ line }) => line).join('\n')];
  };
  expect(await checked()).toEqual([0, expect.not.stringContaining('adopted-')]);
  rmSync(photo);
  // One byte more, after the end of the picture: it is the same picture, and another file.
  writeFileSync(photo, Buffer.concat([Buffer.from(point, 'base64'), Buffer.from([0])]));
  expect(await checked()).toEqual([1, expect.stringContaining('photos/plug.png adopted-photo-changed')]);
  const { terminal, lines } = keptTerminal(false);
  const job = { machine: join(here, 'wagtail'), out: join(around, 'out'), today: '2026-11-20', options: {} };
  expect((await buildMachine({ ...job, program: 'one', choices: '' }, terminal)).code).toBe(1);
  expect(lines.map(({ line }) => line).join('\n')).toContain('adopted-photo-changed');
  rmSync(photo);
  const [code, gone] = await checked();
  expect([code, gone.includes('photos/plug.png came with the machine from its former owner, and is gone.')]).toEqual([
    1,
    true,
  ]);
});

test('upgrade leaves what is held as it came, says so, and marks the new owner’s own', async () => {
  await adopt(here, packed());
  const text = '# of the former owner\nsplitpin: 1\nbook: {title: Book, edition: first}\n';
  const mark = readFileSync(join(here, 'wagtail/adopted.yaml'), 'utf8');
  put('wagtail/maker/book.yaml', text);
  put(
    'wagtail/adopted.yaml',
    mark.replace('records:\n', `records:\n  - {file: maker/book.yaml, hash: ${sha256(text)}}\n`),
  );
  const { terminal, lines } = keptTerminal(false);
  const around = { terminal, folder: here, clock: () => new Date('2026-11-20T12:00:00') };
  const code = await upgradeCommand('wagtail', { editor: true, yes: true }, around, answersBeforehand([]));
  const said = lines.map(({ line }) => line).join('\n');
  expect(code, said).toBe(0);
  expect(said).toContain('From the former owner, and left as they came (1 record): maker/book.yaml');
  expect(readFileSync(join(here, 'wagtail/maker/book.yaml'), 'utf8')).toBe(text);
  expect(readFileSync(join(here, 'wagtail/machine.yaml'), 'utf8')).toContain('yaml-language-server');
  expect(codesOf('wagtail').filter((one) => one.startsWith('adopted'))).toEqual([]);
});
