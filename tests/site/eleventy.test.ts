// The site through Eleventy is the same as page by page, and nothing in the owner's folder can change that.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { renderOne } from '../../src/render/page.ts';
import { renderSite, type SiteFile } from '../../src/render/site.ts';
import { sampleFrame, sampleSpecs } from './sample-site.ts';

const home = process.cwd();
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'splitpin-'));
  process.chdir(folder);
});
afterEach(() => {
  process.chdir(home);
  rmSync(folder, { recursive: true });
});

/** Everything that was given away, in the order of the pages. */
async function rendered(specs: typeof sampleSpecs): Promise<readonly (SiteFile | undefined)[]> {
  const given = new Map<string, SiteFile>();
  await renderSite(specs, sampleFrame, (file) => given.set(file.file, file));
  expect(given.size).toBe(specs.length);
  return specs.map(({ file }) => given.get(file));
}

const expected = sampleSpecs.map((spec) => renderOne(spec, sampleFrame));

it('gives every page, in order, as it is rendered alone', async () => {
  expect(await rendered(sampleSpecs)).toEqual(expected);
});

it('keeps names with spaces, quotes and letters of any script', async () => {
  const odd = sampleSpecs.map((spec, index) => {
    const file = `jobs/ñ "’ 日本 ${index}.html`;
    return { ...spec, file, make: () => ({ ...spec.make(), file }) };
  });
  const files = await rendered(odd);
  expect(files.map((each) => each?.file)).toEqual(odd.map(({ file }) => file));
});

it('gives every page of a site that is taken in several lots', async () => {
  const [spec] = sampleSpecs;
  if (spec === undefined) throw new Error('no sample');
  const many = Array.from({ length: 250 }, (_, index) => {
    const file = `jobs/${String(index)}.html`;
    return { ...spec, file, make: () => ({ ...spec.make(), file, title: `Page ${String(index)}` }) };
  });
  const files = await rendered(many);
  expect(files.map((each) => each?.file)).toEqual(many.map(({ file }) => file));
  expect(files[249]?.content).toContain('<h1>Page 249</h1>');
});

it('runs no configuration, data or ignore file that lies about where it is started', async () => {
  writeFileSync('eleventy.config.js', 'throw new Error("was run")');
  writeFileSync('.eleventy.js', 'throw new Error("was run")');
  writeFileSync('.gitignore', '*');
  writeFileSync('.eleventyignore', '*');
  writeFileSync('page.md', '---js\n{ title: process.exit(3) }\n---\n');
  expect(await rendered(sampleSpecs)).toEqual(expected);
});

it('throws the very fault of whoever takes the pages', async () => {
  const full = Object.assign(new Error('no room'), { code: 'ENOSPC' });
  const refuse = (): never => {
    throw full;
  };
  await expect(renderSite(sampleSpecs, sampleFrame, refuse)).rejects.toBe(full);
});
