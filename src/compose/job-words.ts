// The words by which a record is found, what tells it from others first: parts and numbers, things, readings, findings; then its story.
import type { Job } from '../records/model.ts';
import { spanText } from '../views/wording/day.ts';

const spaces = /\s{2,}|[^\S ]/gu;

/** One text of at most `most` characters, cut between words: date, kind and systems first, which the log is narrowed by. */
export function jobWords(job: Job, most: number, systems: readonly string[]): string {
  const said = new Set<string>();
  let room = most;
  // Of thousands of records a few words of each are kept: what comes after them is not looked up.
  const add = (...texts: readonly (string | undefined)[]): void => {
    for (const text of texts) {
      if (room <= 0 || text === undefined || text === '' || said.has(text)) continue;
      said.add(text);
      room -= text.replaceAll(spaces, ' ').length;
    }
  };
  add(spanText(job.date), job.kind, systems.join(' / '));
  for (const { part, number, bookNumber, size, from } of job.parts) add(part, number, bookNumber, size, from);
  for (const { verb, thing, bag } of [...job.work, ...(job.toDo ?? [])])
    add(`${verb} ${thing}`, bag === undefined ? undefined : `bag ${bag}`);
  for (const { item } of job.readings) add(item);
  for (const { saw } of job.findings) add(saw);
  for (const { of, now } of job.repairs) add(`${of} ${now}`);
  add(...job.stateLeft, job.waitingFor, job.purpose);
  for (const { caption } of job.photos) add(caption);
  add(job.ride?.whatHappened, ...job.hands);
  // Of a long story only what may be kept is looked through.
  if (room > 0) add(job.body.slice(0, most).replaceAll(/[#*_`>[\]()]+/gu, ' '));
  return cut([...said].join('; ').replaceAll(spaces, ' ').trim(), most);
}

function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  const end = text.lastIndexOf(' ', most);
  return text.slice(0, end > 0 ? end : most);
}
