// What the square codes on paper say, and what they are taken for when a camera has seen one: tags and sheets, of this machine or another.
import type { Machine } from './machine-model.ts';

/** What a tag hangs on; every part is as it is written in the records. */
export interface Tagged {
  readonly bag?: string;
  readonly step?: string;
  readonly job?: string;
}

/** A tag: `https://binder.example/off.html#bag-3/step-4/2026-11-21-top-end-again`, or `LP175-04417 bag 3 step 4 2026-11-21-top-end-again`. */
export function tagCode(machine: Machine, { bag, step, job }: Tagged): string {
  const parts = [
    ...(bag === undefined ? [] : [['bag', bag] as const]),
    ...(step === undefined ? [] : [['step', step] as const]),
  ];
  const site = siteOf(machine);
  if (site === undefined) return [machineMark(machine), ...parts.flat(), job ?? ''].join(' ').trim();
  const words = [...parts.map((part) => part.join('-')), ...(job === undefined ? [] : [job])];
  return `${site}/off.html#${words.map((word) => encodeURIComponent(word)).join('/')}`;
}

/** A sheet: its page where the machine has an address, else machine, letters of the sheet and job. */
export function sheetCode(
  machine: Machine,
  sheet: { readonly id: string; readonly code: string },
  job?: string,
): string {
  const site = siteOf(machine);
  return site === undefined
    ? [machineMark(machine), sheet.code, job ?? ''].join(' ').trim()
    : `${site}/sheets/${sheet.id}.html`;
}

/** By what a code names a machine that has no address: its frame number, or its name while that is not known. */
export function machineMark({ numbers, name }: Machine): string {
  const frame = numbers.find((number) => number.name === 'frame')?.stamped ?? '?';
  return frame === '?' ? name : frame;
}

function siteOf({ site }: Machine): string | undefined {
  return site === undefined || site === '' ? undefined : site.replace(/\/$/u, '');
}

/**
 * What a code that was read stands for; undefined when it is none of this machine’s. `jobs` are the ids of its records: a code printed
 * before a record got another name leads to no job.
 */
export function codeMeans(text: string, machine: Machine, jobs: readonly string[]): Tagged | undefined {
  const site = siteOf(machine);
  if (site !== undefined && text.startsWith(`${site}/`)) return addressMeans(text.slice(site.length + 1), jobs);
  // Paper that was printed before the machine had an address, or before its frame number was read, is still its own.
  const mark = [machineMark(machine), machine.name].find((one) => text === one || text.startsWith(`${one} `));
  return mark === undefined ? undefined : wordsMean(text.slice(mark.length).trim().split(' '), jobs);
}

function addressMeans(path: string, jobs: readonly string[]): Tagged {
  const [page = '', fragment = ''] = path.split('#');
  const sheet = /^sheets\/(?<id>.+)\.html$/u.exec(page)?.groups?.['id'];
  const job = longestOf(jobs.filter((id) => sheet?.endsWith(`-${id}`) === true || page === `jobs/${id}.html`));
  const words = fragment.split('/').flatMap((word) =>
    plainOf(word)
      .replace(/^(?<name>bag|step)-/u, '$<name> ')
      .split(' '),
  );
  return { ...wordsMean(words, jobs), ...(job === undefined ? {} : { job }) };
}

function wordsMean(words: readonly string[], jobs: readonly string[]): Tagged {
  const after = (name: string): string | undefined => words[words.indexOf(name) + 1];
  const bag = words.includes('bag') ? after('bag') : undefined;
  const step = words.includes('step') ? after('step') : undefined;
  const job = jobs.find((id) => id === words.at(-1));
  return {
    ...(bag === undefined ? {} : { bag }),
    ...(step === undefined ? {} : { step }),
    ...(job === undefined ? {} : { job }),
  };
}

/** One id may end like another. */
function longestOf(ids: readonly string[]): string | undefined {
  return ids.toSorted((a, b) => b.length - a.length)[0];
}

function plainOf(word: string): string {
  try {
    return decodeURIComponent(word);
  } catch {
    return word;
  }
}
