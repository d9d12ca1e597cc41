// Every link of a site leads to a file and a place in it, without a server; and the checker itself catches each fault.
import { rmSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { linkFaults } from './check-links.ts';
import { sampleFiles } from './sample-site.ts';
import { writeSite } from './site-folder.ts';

const files = await sampleFiles();
const folder = writeSite(files);
const pages = new Map(
  files.flatMap(({ file, content }) =>
    typeof content === 'string' && file.endsWith('.html') ? [[file, content]] : [],
  ),
);
afterAll(() => rmSync(folder, { recursive: true }));

it('finds no fault in the sample site', () => {
  expect(pages.size).toBeGreaterThan(3);
  expect(linkFaults(folder, pages)).toEqual([]);
});

describe('the checker', () => {
  const faults = [
    ['<a href="https://example.org/">', 'leads outside'],
    ['<img src="//example.org/a.png">', 'leads outside'],
    ['<a href="/index.html">', 'begins at the root'],
    ['<a href="jobs/">', 'leads to a folder'],
    ['<a href="Index.html">', 'leads to no file'],
    ['<a href="log.html?page=2">', 'asks a server'],
    ['<a href="workings.html#no-such-place">', 'leads to no place'],
    ['<p id="a"></p><p id="a"></p>', 'is there twice'],
  ] as const;
  it.each(faults)('sees what is wrong with %s', (html, fault) => {
    const found = linkFaults(folder, new Map([...pages, ['index.html', html]]));
    expect(found.filter((sentence) => sentence.startsWith('index.html:')).join()).toContain(fault);
  });
});
