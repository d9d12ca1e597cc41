// The words by which a record is found, what tells it from others first: parts and numbers, things, readings, findings; then its story.
import type { Job } from '../records/model.ts';
import { spanText } from '../views/wording/day.ts';

const spaces = /\s{2,}|[^\S ]/gu;

/** One text of at most `most` characters, cut between words: date, kind and systems first, which the log is narrowed by. */
export function jobWords(job: Job, most: number, systems: readonly string[]): string {
  const texts = [
    spanText(job.date),
    job.kind,
    systems.join(' / '),
    ...job.parts.flatMap(({ part, number, bookNumber, size, from }) => [part, number, bookNumber, size, from]),
    ...[...job.work, ...(job.toDo ?? [])].flatMap(({ verb, thing, bag }) => [
      `${verb} ${thing}`,
      bag === undefined ? undefined : `bag ${bag}`,
    ]),
    ...job.readings.map(({ item }) => item),
    ...job.findings.map(({ saw }) => saw),
    ...job.repairs.map(({ of, now }) => `${of} ${now}`),
    ...job.stateLeft,
    job.waitingFor,
    job.purpose,
    ...job.photos.map(({ caption }) => caption),
    job.ride?.whatHappened,
    ...job.hands,
    // Of a long story only what may be kept is looked through.
    job.body.slice(0, most).replaceAll(/[#*_`>[\]()]+/gu, ' '),
  ];
  const said = new Set(texts.filter((text) => text !== undefined && text !== ''));
  return cut([...said].join('; ').replaceAll(spaces, ' ').trim(), most);
}

function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  const end = text.lastIndexOf(' ', most);
  return text.slice(0, end > 0 ? end : most);
}
