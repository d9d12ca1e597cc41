// The scripts that pages carry are those that their sources give: a change below src/bench, or in what it uses, is bundled anew.
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import {
  browserScripts,
  scriptModule,
  scriptModuleText,
  siteScript,
  siteScripts,
  siteScriptText,
} from '../../src/tools/browser-scripts.ts';

it.each(browserScripts)('%s is as `npm run scripts` makes it', async (name) => {
  expect(readFileSync(scriptModule(name), 'utf8')).toBe(await scriptModuleText(name));
});

it.each(siteScripts)('templates/%s.js is as `npm run scripts` makes it', async (name) => {
  expect(readFileSync(siteScript(name), 'utf8')).toBe(await siteScriptText(name));
});
