// A binder held in memory: pages and PDFs are made when somebody asks, and again only when what they show has changed.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { binderData, binderSchema, dueCalendar, searchEntries, stops, type Binder } from '../build.ts';
import { makePhotos, type MadePhoto } from '../photos/photo-work.ts';
import type { Problem } from '../problem/problem.ts';
import { siteAssets } from '../render/assets.ts';
import { renderPage } from '../render/page.ts';
import { renderPhonePage } from '../render/phone-page.ts';
import { pageScripts } from '../render/page-scripts.ts';
import { searchFileText, searchIndexFile } from '../render/search-file.ts';
import type { SiteFrame } from '../render/site-frame.ts';
import { namedPhotos } from './named-photos.ts';
import type { Options } from './program.ts';
import { phonePages } from './phone-file.ts';
import { readMachine, type ReadMachine } from './read-machine.ts';
import { frameFor } from './site-frame-for.ts';
import { writePrint, type PhotoPath } from './print-task.ts';
import { previewFile, printFile } from './write-prints.ts';

/** A file as it is sent. */
export interface Sent {
  readonly type: string;
  readonly body: string | Uint8Array;
}

export interface LiveBinder {
  /** What is wrong now; the binder shown is the last good one. */
  readonly problems: () => readonly Problem[];
  readonly reading: () => ReadMachine;
  /** Reads the folder again, or only the files that were written to, and computes; true when the binder is a new one. */
  readonly refresh: (touched: readonly string[] | undefined) => Promise<boolean>;
  /** A file below the site's folder, made now if need be; undefined when there is none of this name. */
  readonly file: (file: string) => Promise<Sent | undefined>;
  /** Does what a change would do a few times over, so that the first real change is answered as quickly as later ones. */
  readonly warmUp: () => Promise<void>;
  readonly close: () => void;
}

export interface LiveWork {
  readonly machine: string;
  readonly today: () => string;
  readonly options: Options;
  /** Address of the script that reloads a page. */
  readonly script: string;
}

/** The last good state. */
interface Good {
  readonly binder: Binder;
  readonly frame: SiteFrame;
  readonly photos: ReadonlyMap<string, MadePhoto>;
}

/** Opens a machine for serving. Photos are made in a folder of the system's own that goes when the server stops. */
export async function openLiveBinder(work: LiveWork): Promise<LiveBinder> {
  const scratch = mkdtempSync(join(tmpdir(), 'splitpin-serve-'));
  const assets = new Map(siteAssets().map((asset) => [asset.file, asset.absolute]));
  let reading = readMachine(work.machine, work.today(), work.options);
  let problems: readonly Problem[] = [];
  let good: Good | undefined;
  let pages = new Map<string, { readonly inputs: string; readonly html: string }>();

  const settle = async (): Promise<boolean> => {
    const { binder } = reading;
    problems = reading.problems;
    if (binder === undefined || stops(problems).length > 0) return false;
    const made = await photosOf(binder, reading, good?.photos ?? new Map(), scratch);
    problems = [...problems, ...made.problems];
    if (made.problems.length > 0) return false;
    const photos = new Map(made.value.map((photo) => [photo.file, photo]));
    const frame = frameFor(binder, photos, work.script);
    if (good !== undefined && frameKey(good) !== frameKey({ binder, frame, photos })) pages = new Map();
    good = { binder, frame, photos };
    return true;
  };

  const page = (file: string): string | undefined => {
    const spec = good?.binder.site.named(file);
    if (good === undefined || spec === undefined) return undefined;
    const known = pages.get(file);
    if (known !== undefined && spec.inputs !== undefined && known.inputs === spec.inputs) return known.html;
    const html = renderPage(spec.make(), good.frame);
    if (spec.inputs !== undefined) pages.set(file, { inputs: spec.inputs, html });
    return html;
  };

  const phone = (file: string): string | undefined => {
    const found =
      good &&
      phonePages(good.binder, reading.textOf)
        .find((each) => each.file === file)
        ?.page();
    return found && renderPhonePage(found);
  };

  const print = async (file: string): Promise<Uint8Array | undefined> => {
    const sheet = good?.binder.sheets.find((each) => printFile(each) === file || previewFile(each) === file);
    if (good === undefined || sheet === undefined) return undefined;
    const { photos } = good;
    const path = join(scratch, 'sheet.pdf');
    const preview = join(scratch, 'sheet.svg');
    const photo: PhotoPath = (named) => {
      const made = photos.get(named);
      return made && { path: join(scratch, made.large), width: made.width, height: made.height };
    };
    await writePrint(sheet, path, photo, { preview });
    return readFileSync(file === previewFile(sheet) ? preview : path);
  };

  const photo = (file: string): Uint8Array | undefined => {
    const made = [...(good?.photos.values() ?? [])].some((each) => each.large === file || each.small === file);
    return made ? readFileSync(join(scratch, file)) : undefined;
  };

  await settle();
  return {
    problems: () => problems,
    reading: () => reading,
    refresh: async (touched) => {
      // A problem of the folder is only found again by looking at all of it.
      const few = problems.length === reading.binder?.book.queries.length ? touched : undefined;
      reading = readMachine(work.machine, work.today(), work.options, { reading, touched: few });
      return settle();
    },
    file: async (file) => {
      if (file.endsWith('.html')) return sent('text/html; charset=utf-8', page(file) ?? phone(file));
      if (file.endsWith('.pdf')) return sent('application/pdf', await print(file));
      if (file.startsWith('print/')) return sent('image/svg+xml', await print(file));
      if (/^(?:photos|documents)\//.test(file)) return sent('image/jpeg', photo(file));
      if (file.startsWith('data/')) return sent(dataType(file), good && dataFile(file, good.binder));
      if (file === searchIndexFile) return sent(typeOf(file), good && searchText(good.binder));
      const asset = assets.get(file);
      if (asset !== undefined) return sent(typeOf(file), readFileSync(asset));
      const script = good && pageScripts(good.binder.pages).find((each) => each.file === file);
      return script && sent(typeOf(file), script.text());
    },
    warmUp: async () => {
      for (let round = 0; round < 8 && good !== undefined; round += 1) {
        readMachine(work.machine, work.today(), work.options, { reading, touched: [] });
        for (const { make } of good.binder.pages.slice(0, 12)) renderPage(make(), good.frame);
        // Whoever asks for something meanwhile goes first.
        await new Promise((done) => setTimeout(done, 20));
      }
    },
    close: () => rmSync(scratch, { recursive: true, force: true }),
  };
}

async function photosOf(
  binder: Binder,
  reading: ReadMachine,
  known: ReadonlyMap<string, MadePhoto>,
  into: string,
): ReturnType<typeof makePhotos> {
  const assets = namedPhotos(binder, reading.folder.assets);
  // What was made stays where it is: there is nothing to take over.
  return makePhotos({ assets, into, known, takeOver: () => true, progress: () => undefined });
}

/** What every page shows besides its own content; when it changes, no page that was made before will do. */
function frameKey({ frame, photos }: Good): string {
  const { machine, frame: number, language, recordsDate, recordsVersion, contents } = frame;
  return JSON.stringify([machine, number, language, recordsDate, recordsVersion, contents, [...photos.values()]]);
}

function searchText({ book, pages }: Binder): string {
  return searchFileText(searchEntries(book, pages), book.content.words);
}

function dataType(file: string): string {
  return file.endsWith('.ics') ? 'text/calendar; charset=utf-8' : 'application/json';
}

function dataFile(file: string, binder: Binder): string | undefined {
  if (file === 'data/binder.json') return JSON.stringify(binderData(binder.book), null, 1) + '\n';
  if (file === 'data/due.ics') return dueCalendar(binder.book);
  return file === 'data/binder.schema.json' ? JSON.stringify(binderSchema, null, 1) + '\n' : undefined;
}

function sent(type: string, body: string | Uint8Array | undefined): Sent | undefined {
  return body === undefined ? undefined : { type, body };
}

const types: Readonly<Record<string, string>> = {
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  woff2: 'font/woff2',
  txt: 'text/plain; charset=utf-8',
};

function typeOf(file: string): string {
  return types[file.slice(file.lastIndexOf('.') + 1)] ?? 'application/octet-stream';
}
