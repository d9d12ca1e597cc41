// The site of a whole machine for the tests: real records and pages, with stand-ins for the photos and the PDFs beside them.
import { searchEntries } from '../../src/build.ts';
import { namedPhotos } from '../../src/command/named-photos.ts';
import { phonePages } from '../../src/command/phone-file.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { frameFor } from '../../src/command/site-frame-for.ts';
import { photoNames } from '../../src/photos/photo-names.ts';
import { renderOne } from '../../src/render/page.ts';
import { renderPhonePage } from '../../src/render/phone-page.ts';
import { pageScripts } from '../../src/render/page-scripts.ts';
import { searchFileText, searchIndexFile } from '../../src/render/search-file.ts';
import type { SiteFrame, SitePage } from '../../src/render/site-frame.ts';
import { keeper } from '../set-up/kept.ts';
import { standInPicture } from './stand-in-picture.ts';
import type { WrittenFile } from './site-folder.ts';

export interface BinderSite {
  readonly specs: readonly SitePage[];
  readonly frame: SiteFrame;
  /** Pages, pictures and PDFs; the site's assets come with writeSite. */
  readonly files: readonly WrittenFile[];
  /** HTML of each page. */
  readonly pages: ReadonlyMap<string, string>;
  /** References that led nowhere, each with the page that holds it. */
  readonly lost: readonly string[];
}

/** Reads and renders a machine folder as of a day. */
export const binderSite = keeper(makeSite);

async function makeSite(folder: string, today: string): Promise<BinderSite> {
  const { binder, folder: machine, textOf } = readMachine(folder, today, {});
  if (binder === undefined) throw new Error(`${folder} cannot be read`);
  const stamp = { width: 1600, height: 1200, smallWidth: 400, smallHeight: 300, size: 0, modified: 0, key: '' };
  const photos = namedPhotos(binder, machine.assets).map(({ file }) => ({ file, ...photoNames(file), ...stamp }));
  const frame = frameFor(binder, new Map(photos.map((photo) => [photo.file, photo])));
  const lost: string[] = [];
  const pages = binder.pages.map((spec) => renderOne(spec, noting(frame, spec.file, lost)));
  const picture = await standInPicture();
  const pictures = photos.flatMap(({ large, small }) => [large, small]).map((file) => ({ file, content: picture }));
  // A PDF has the picture of its first side beside it.
  const firstSide = '<svg xmlns="http://www.w3.org/2000/svg" width="84" height="119"/>';
  const prints = binder.sheets.flatMap(({ id }) => [
    { file: `print/${id}.pdf`, content: '%PDF-1.7\n' },
    { file: `print/${id}.svg`, content: firstSide },
  ]);
  const phones = phonePages(binder, textOf).flatMap(({ file, page }) => {
    const made = page();
    return made === undefined ? [] : [{ file, content: renderPhonePage(made) }];
  });
  const index = searchFileText(searchEntries(binder.book, binder.pages), binder.book.content.words);
  const scripts = pageScripts(binder.pages).map(({ file, text }) => ({ file, content: text() }));
  return {
    specs: binder.pages,
    frame,
    files: [...pages, ...pictures, ...prints, ...phones, ...scripts, { file: searchIndexFile, content: index }],
    pages: new Map(pages.map(({ file, content }) => [file, content])),
    lost,
  };
}

function noting(frame: SiteFrame, page: string, lost: string[]): SiteFrame {
  const targetOf = (reference: string) => {
    const target = frame.targetOf(reference);
    if (target === undefined) lost.push(`${page}: ${reference}`);
    return target;
  };
  return { ...frame, targetOf };
}
