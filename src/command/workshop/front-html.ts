// The front page as HTML: the frame of a site whose contents are the machines.
import type { FrontLines } from '../../build.ts';
import { hashOf } from '../../cache/hash.ts';
import { renderPage } from '../../render/page.ts';
import { siteFrame } from '../../render/site-frame.ts';
import type { Page } from '../../sheet/sheet.ts';

interface FrontFacts {
  /** What the workshop’s folder is called. */
  readonly name: string;
  readonly machines: readonly FrontLines[];
  /** A machine's name as it stands in the page, and its folder as the disk spells it. */
  readonly folderOf: ReadonlyMap<string, string>;
}

/** So many letters of the fingerprint are printed. */
const printed = 7;

/** Renders the page. Where nothing could be read, the frame says so by having no record. */
export function renderFront(page: Page, { name: workshop, machines, folderOf }: FrontFacts): string {
  const newest = machines
    .filter((one) => one.recordsUpTo !== '')
    .toSorted((a, b) => (a.recordsDate < b.recordsDate ? 1 : -1))[0];
  const frame = siteFrame([page], {
    machine: workshop,
    frame: '',
    language: machines[0]?.spelling === 'us' ? 'en-US' : 'en-GB',
    recordsDate: newest?.recordsUpTo ?? '',
    recordsVersion: hashOf(machines.map(({ recordsVersion }) => recordsVersion).join('\n')).slice(0, printed),
    contents: machines.map(({ folder, name }) => ({
      title: name,
      file: `${folderOf.get(folder) ?? folder}/index.html`,
      section: folder,
    })),
  });
  const targetOf = (reference: string): string | undefined => {
    const [, folder = '', file = ''] = /^machine:([^/]+)\/(.+)$/u.exec(reference) ?? [];
    return file === '' ? frame.targetOf(reference) : `${folderOf.get(folder) ?? folder}/${file}`;
  };
  return renderPage(page, { ...frame, targetOf });
}
