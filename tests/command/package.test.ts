// The package as it is published: packed, installed in an empty folder, run by its name; and what it says of its licences.
import { execFile } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';
import { bundledPackages } from '../../src/tools/bundle.ts';
import { notices } from '../../src/tools/notices.ts';
import { runProgram } from './process.ts';
import { smallMachine } from './small-machine.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const call = promisify(execFile);

test('packs what it needs and nothing private, and runs from an empty folder', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'splitpin-package-'));
  const { stdout } = await call('npm', ['pack', '--json', '--pack-destination', folder], { cwd: root, maxBuffer: 1e8 });
  const packed: unknown = JSON.parse(stdout.slice(stdout.indexOf('[')));
  const text = JSON.stringify(packed);
  for (const file of [
    'dist/splitpin.js',
    'content/pages/formats.md',
    'templates/splitpin.css',
    'LICENSE',
    'NOTICES',
    'README.md',
  ]) {
    expect([file, text.includes(`"${file}"`)]).toEqual([file, true]);
  }
  for (const file of ['tests/', 'src/command', 'demo-bike/', '.ci/', 'node_modules/']) {
    expect([file, text.includes(`"path":"${file}`)]).toEqual([file, false]);
  }
  const [tarball = ''] = readdirSync(folder).filter((name) => name.endsWith('.tgz'));
  // Installed by hand: the package unpacked among the packages that it asks for, so that the test needs no network.
  const place = join(folder, 'node_modules/splitpin');
  mkdirSync(place, { recursive: true });
  await call('tar', ['-xzf', join(folder, tarball), '-C', place, '--strip-components=1']);
  const about: unknown = JSON.parse(readFileSync(join(place, 'package.json'), 'utf8'));
  const asked =
    typeof about === 'object' && about !== null ? Object.keys(Object(Reflect.get(about, 'dependencies'))) : [];
  for (const name of [...asked, ...needed(asked)]) link(name, folder);
  const machine = smallMachine();
  const out = join(folder, 'binder');
  const built = await runProgram(
    join(place, 'dist/splitpin.js'),
    ['build', machine, '--out', out, '--today', '2024-06-01'],
    { folder },
  );
  expect([built.code, built.err]).toEqual([0, '']);
  for (const file of ['index.html', 'print/torque-table.pdf', 'data/binder.json', 'assets/splitpin.css']) {
    expect([file, existsSync(join(out, file))]).toEqual([file, true]);
  }
  rmSync(folder, { recursive: true });
});

/** Everything that packages ask for in turn, as npm would put it beside them. */
function needed(names: readonly string[], seen = new Set<string>()): readonly string[] {
  for (const name of names) {
    const path = join(root, 'node_modules', name, 'package.json');
    if (seen.has(name) || !existsSync(path)) continue;
    seen.add(name);
    const about: unknown = JSON.parse(readFileSync(path, 'utf8'));
    if (typeof about !== 'object' || about === null) continue;
    for (const key of ['dependencies', 'optionalDependencies'])
      needed(Object.keys(Object(Reflect.get(about, key) ?? {})), seen);
  }
  return [...seen];
}

function link(name: string, folder: string): void {
  const from = join(root, 'node_modules', name);
  const to = join(folder, 'node_modules', name);
  if (!existsSync(from) || existsSync(to)) return;
  mkdirSync(join(to, '..'), { recursive: true });
  symlinkSync(from, to);
}

test('NOTICES names every package whose code is carried, with its licence', async () => {
  const written = readFileSync(join(root, 'NOTICES'), 'utf8');
  const carried = await bundledPackages();
  expect(carried.length).toBeGreaterThan(8);
  expect(written, 'run npm run notices').toBe(await notices());
});

test('the lock file names no registry', () => {
  const lock = readFileSync(join(root, 'package-lock.json'), 'utf8');
  expect(lock).toContain('"integrity"');
  expect(lock).not.toContain('"resolved"');
});
