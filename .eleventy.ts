// Eleventy's configuration for running it by itself: the site of one machine, the same HTML as the program's, without PDFs.
// SPLITPIN_FOLDER names the machine, SPLITPIN_OUT the output folder, SPLITPIN_TODAY the day; see DEVELOPERS.md.
import { resolve } from 'node:path';
import type { UserConfig } from '@11ty/eleventy';
import { searchEntries } from './src/build.ts';
import { namedPhotos } from './src/command/named-photos.ts';
import { readMachine } from './src/command/read-machine.ts';
import { frameFor } from './src/command/site-frame-for.ts';
import { dayOf } from './src/command/today.ts';
import { packageFolder } from './src/disk.ts';
import { makePhotos } from './src/photos/photo-work.ts';
import { siteAssets } from './src/render/assets.ts';
import { configureSite } from './src/render/eleventy-config.ts';
import { pageScripts } from './src/render/page-scripts.ts';
import { searchFileText, searchIndexFile } from './src/render/search-file.ts';

const machine = process.env['SPLITPIN_FOLDER'] ?? resolve(packageFolder(), 'demo-bike');
const output = process.env['SPLITPIN_OUT'] ?? 'out/eleventy';
const today = process.env['SPLITPIN_TODAY'] ?? dayOf(new Date());

export default async function (configuration: UserConfig): Promise<{ readonly dir: object }> {
  const { binder, folder } = readMachine(machine, today, {});
  if (binder === undefined) throw new Error('The records cannot be read; `splitpin check` says why.');
  const made = await makePhotos({
    assets: namedPhotos(binder, folder.assets),
    into: resolve(output),
    known: new Map(),
    takeOver: () => false,
    progress: () => {},
  });
  configureSite(configuration, binder.pages, frameFor(binder, new Map(made.value.map((photo) => [photo.file, photo]))));
  configuration.addTemplate('search-index.11ty.js', {
    data: { permalink: searchIndexFile, eleventyExcludeFromCollections: true },
    render: () => searchFileText(searchEntries(binder.book, binder.pages), binder.book.content.words),
  });
  for (const [index, { file, text }] of pageScripts(binder.pages).entries()) {
    configuration.addTemplate(`page-script-${String(index)}.11ty.js`, {
      data: { permalink: file, eleventyExcludeFromCollections: true },
      render: text,
    });
  }
  for (const { file, absolute } of siteAssets()) configuration.addPassthroughCopy({ [absolute]: file });
  return { dir: { input: 'templates', output } };
}
