// Eleventy run by itself with the configuration of the project gives the same HTML as the program, and the same assets.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { searchIndexFile } from '../../src/render/search-file.ts';
import { siteAssets } from '../../src/render/assets.ts';
import { binderSite } from './binder-site.ts';

const machine = 'tests/fixtures/tern-350';
const today = '2026-11-14';
const output = mkdtempSync(join(tmpdir(), 'splitpin-'));
afterAll(() => rmSync(output, { recursive: true }));

it('gives the same pages and assets, and nothing else', async () => {
  const eleventy = ['--import', 'tsx', 'node_modules/@11ty/eleventy/cmd.cjs', '--config=.eleventy.ts'];
  const env = { ...process.env, SPLITPIN_FOLDER: machine, SPLITPIN_TODAY: today, SPLITPIN_OUT: output };
  execFileSync(process.execPath, eleventy, { env, stdio: 'pipe' });
  const { pages } = await binderSite(machine, today);
  const written = readdirSync(output, { recursive: true, encoding: 'utf8' }).filter((file) => /\.\w+$/.test(file));
  const assets = [...siteAssets().map(({ file }) => file), searchIndexFile, 'assets/next-test-data.js'];
  expect(written.toSorted()).toEqual([...pages.keys(), ...assets].toSorted());
  const differing = [...pages].filter(([file, html]) => readFileSync(join(output, file), 'utf8') !== html);
  expect(differing.map(([file]) => file)).toEqual([]);
});
