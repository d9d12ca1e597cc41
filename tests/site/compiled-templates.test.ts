// The package carries templates compiled beforehand; they give what the template files give, and fail on what is missing.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import nunjucks from 'nunjucks';
import { expect, it } from 'vitest';
import { renderTemplate } from '../../src/render/engine.ts';
import { templateOptions } from '../../src/render/template-options.ts';
import { compiledTemplates } from '../../src/tools/templates.ts';

const source = compiledTemplates('templates');

/** What the page for a telephone is made of. */
const page = {
  page: { title: 'Hot <oil>', machine: 'Pipit', about: '', language: 'en-GB', carried: '{}', parts: [] },
  style: '',
  script: '',
  policy: "default-src 'none'",
};

it('compiles every template to code that gives the same HTML', async () => {
  const folder = mkdtempSync(join(import.meta.dirname, '.compiled-'));
  const module = join(folder, 'templates.mjs');
  writeFileSync(module, source);
  const { templateLoader }: { templateLoader: () => nunjucks.ILoaderAny } = await import(pathToFileURL(module).href);
  rmSync(folder, { recursive: true });
  const engine = new nunjucks.Environment(templateLoader(), templateOptions);
  const expected = renderTemplate('phone.njk', page);
  expect(expected).toContain('Hot &lt;oil&gt;');
  expect(engine.render('phone.njk', page)).toBe(expected);
});

it('gives the same bytes each time', () => {
  expect(compiledTemplates('templates')).toBe(source);
});

it('throws when a template is handed nothing where a value is due', () => {
  expect(() => renderTemplate('phone.njk', { ...page, policy: undefined })).toThrow(/undefined/);
});
