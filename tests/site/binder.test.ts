// The sites of real machines: every link leads somewhere, every reference was found, every kind of page is valid HTML.
import { rmSync } from 'node:fs';
import { HtmlValidate } from 'html-validate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { binderSite, type BinderSite } from './binder-site.ts';
import { linkFaults } from './check-links.ts';
import { oneOfEachKind } from './kinds-of-page.ts';
import { writeSite } from './site-folder.ts';
import { validateOptions } from './validate-options.ts';

const machines = [
  { name: 'demo-bike', folder: 'demo-bike', day: '2026-11-14' },
  { name: 'the four-stroke twin', folder: 'tests/fixtures/tern-350', day: '2026-11-14' },
];

describe.each(machines)('the site of $name', ({ folder: machine, day }) => {
  let site: BinderSite;
  let folder: string;
  beforeAll(async () => {
    site = await binderSite(machine, day);
    folder = writeSite(site.files);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('has links that all lead to a file and a place in it', () => {
    expect(site.pages.size).toBeGreaterThan(20);
    expect(linkFaults(folder, site.pages)).toEqual([]);
  });

  it('has no reference that was not found', () => {
    expect(site.lost).toEqual([]);
  });

  it('is valid HTML, one page of each kind', async () => {
    const validate = new HtmlValidate(validateOptions);
    const kinds = oneOfEachKind([...site.pages.keys()]);
    const faults = await Promise.all(
      kinds.map(async (file) => {
        const report = await validate.validateString(site.pages.get(file) ?? '');
        const messages = report.results.flatMap((result) => result.messages);
        return messages.map(({ line, ruleId, message }) => `${file}:${line} ${ruleId} ${message}`);
      }),
    );
    expect(kinds.length).toBeGreaterThan(20);
    expect(faults.flat()).toEqual([]);
  });

  it('names no page twice, not even in another letter case', () => {
    const names = site.files.map(({ file }) => file.toLowerCase());
    expect(names.length).toBe(new Set(names).size);
  });
});
