// What the site generator by itself is given: the pages of one machine, their frame and its pictures, made as the program makes them.
import { resolve } from 'node:path';
import type { UserConfig } from '@11ty/eleventy';
import { namedPhotos } from '../command/named-photos.ts';
import { readMachine } from '../command/read-machine.ts';
import { frameFor } from '../command/site-frame-for.ts';
import { dayOf } from '../command/today.ts';
import { searchEntries } from '../build.ts';
import { packageFolder } from '../disk.ts';
import { makePhotos } from '../photos/photo-work.ts';
import { siteAssets } from '../render/assets.ts';
import { configureSite } from '../render/eleventy-config.ts';
import { pageScripts } from '../render/page-scripts.ts';
import { searchFileText, searchIndexFile } from '../render/search-file.ts';

export interface SiteAlone {
  /** Machine folder; without it, the demo. */
  readonly machine: string | undefined;
  readonly output: string;
  /** `2026-11-14`; without it, this day. */
  readonly today: string | undefined;
}

/** Puts pages, pictures and assets into a configuration. */
export async function configureAlone(configuration: UserConfig, { machine, output, today }: SiteAlone): Promise<void> {
  const path = machine ?? resolve(packageFolder(), 'demo-bike');
  const { binder, folder } = readMachine(path, today ?? dayOf(new Date()), {});
  if (binder === undefined) throw new Error('The records cannot be read; `splitpin check` says why.');
  const made = await makePhotos({
    assets: namedPhotos(binder, folder.assets),
    into: resolve(output),
    known: new Map(),
    takeOver: () => false,
    progress: () => {},
  });
  const photos = new Map(made.value.map((photo) => [photo.file, photo]));
  configureSite(configuration, binder.pages, frameFor(binder, photos));
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
}
