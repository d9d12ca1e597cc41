// The pages keep the rules of HTML, one page of each kind.
import { HtmlValidate } from 'html-validate';
import { expect, it } from 'vitest';
import { renderPage } from '../../src/render/page.ts';
import { samplePage } from './sample-pages.ts';
import { sampleFrame, sampleSpecs } from './sample-site.ts';
import { validateOptions } from './validate-options.ts';

const validate = new HtmlValidate(validateOptions);

async function faultsOf(html: string): Promise<readonly string[]> {
  const report = await validate.validateString(html);
  return report.results.flatMap((result) =>
    result.messages.map(({ line, column, ruleId, message }) => `${line}:${column} ${ruleId} ${message}`),
  );
}

it.each(sampleSpecs)('$file is valid', async (spec) => {
  expect(await faultsOf(renderPage(spec.make(), sampleFrame))).toEqual([]);
});

it('would see a fault', async () => {
  const html = renderPage(samplePage([]), sampleFrame).replace('<h1>', '<h1 style="color: red"><p>');
  const rules = (await faultsOf(html)).map((fault) => fault.split(' ')[1]);
  expect(rules).toEqual(expect.arrayContaining(['no-inline-style', 'element-permitted-content']));
});
