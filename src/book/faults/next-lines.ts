// The search for a fault as lines for the terminal: what is seen, the leading causes of each group, the next tests, what is held.
import { formatDecimal } from '../../quantity/decimal.ts';
import type { Book } from '../book.ts';
import { toldNothing, type Diagnosis, type NextTest } from './diagnosis.ts';
import { leading, reasons, seenWords, workingOf } from './next-words.ts';

const most = 5;
const mostLooks = 3;

/** What `splitpin next` says; with `working`, the numbers as well. */
export function nextLines(book: Book, found: Diagnosis, working: boolean): readonly string[] {
  const title = `${book.records.machine.name}, ${found.standing}. All weights are judgement.`;
  if (found.impossible.length > 0) return [title, '', ...impossibleLines(found)];
  return [
    title,
    '',
    'Known',
    ...knownLines(found),
    ...stopLines(found),
    '',
    ...found.groups.flatMap(({ group, causes }) => [
      upperFirst(group),
      ...leading(found, causes).flatMap((one) => [
        `  ${one.cause.cause} [${one.id}] — ${one.word}: ${reasons(found, one).join('; ')}`,
        ...(working ? [`      ${workingOf(found, one)}`] : []),
      ]),
      ...(leading(found, causes).length === 0 ? ['  nothing leads'] : []),
    ]),
    '',
    ...(found.looks.length === 0
      ? []
      : ['Free looks first', ...found.looks.slice(0, mostLooks).flatMap((one) => testLines(book, one, working)), '']),
    'Next',
    ...found.next.slice(0, most).flatMap((one) => testLines(book, one, working)),
    ...(found.next.length === 0 ? ['  no test that would tell more'] : []),
    ...(found.behind.length === 0 ? [] : ['', 'Look first', ...behindLines(found)]),
    ...(found.held.length === 0 ? [] : ['', 'Held', ...heldLines(found)]),
    ...(found.apart.length === 0 ? [] : ['', 'Put off: not to be tried as it stands', ...apartLines(found)]),
  ];
}

/** What was seen, a line each; what told nothing, in one. */
function knownLines({ seen }: Diagnosis): readonly string[] {
  if (seen.length === 0) return ['  nothing seen yet'];
  const silent = seen
    .filter((one) => toldNothing(one) && one.record === undefined)
    .map(({ test }) => test.short ?? test.test);
  return [
    ...seen
      .filter((one) => !toldNothing(one) || one.record !== undefined)
      .map((one) => `  ${seenWords(one)}${fromRecord(one)}`),
    ...(silent.length === 0 ? [] : [`  Looked at, told nothing: ${silent.join('; ')}`]),
  ];
}

function impossibleLines({ impossible }: Diagnosis): readonly string[] {
  return [
    'These cannot all be so; look again before anything is concluded:',
    ...impossible.map(([one, other]) => `  ${seenWords(one)} — and — ${seenWords(other)}`),
  ];
}

function stopLines({ seen }: Diagnosis): readonly string[] {
  return seen.flatMap((one) =>
    one.outcome?.stop === true ? [`  Stop: ${one.outcome.means ?? 'not to be run so'}.`] : [],
  );
}

function fromRecord({ record }: Diagnosis['seen'][number]): string {
  return record === undefined ? '' : ` (${record.job?.id ?? record.day}: ${record.words})`;
}

function testLines(book: Book, { test, worth }: NextTest, working: boolean): readonly string[] {
  const cautions = [test.caution, ...test.cautions].flatMap((id) => {
    const caution = id === undefined ? undefined : book.content.cautions.get(id);
    return caution === undefined ? [] : [`      ${caution.grade}: ${caution.line}`];
  });
  const minutes = `${formatDecimal(test.minutes, 0)} min`;
  return [
    `  ${test.test} [${test.id}], ${minutes}${working ? `, worth ${formatDecimal(worth, 3)}` : ''}`,
    ...(test.how === undefined ? [] : [`      ${test.how}`]),
    ...cautions,
    `      ${test.outcomes.map(({ saw }) => `${test.id}=${saw}`).join('  ')}`,
  ];
}

/** Held tests by what holds them, the ones worth most first. */
function heldLines({ held }: Diagnosis): readonly string[] {
  const points = [...new Set(held.map((one) => one.held[0] ?? ''))];
  return points.flatMap((point) => {
    const mine = held.filter((one) => one.held[0] === point);
    const because = mine[0]?.held.slice(1, 4) ?? [];
    return [
      `  ${point} is held, so these wait: ${mine.map(({ test }) => `${test.short ?? test.test} [${test.id}]`).join('; ')}`,
      ...because.map((reason) => `      held because: ${reason}`),
    ];
  });
}

/** By what is off, the ones worth most first. */
function apartLines({ apart }: Diagnosis): readonly string[] {
  return [...new Set(apart.map((one) => one.apart))].map((why) => {
    const mine = apart.filter((one) => one.apart === why);
    return `  ${why}: ${mine.map(({ test }) => `${test.short ?? test.test} [${test.id}]`).join('; ')}`;
  });
}

/** Points that the engine is past, and that nobody has proved: what was seen does not prove them. */
function behindLines({ behind }: Diagnosis): readonly string[] {
  return behind.flatMap(([point, ...reasons]) => [
    `  ${point ?? ''}: the engine is past it by what was seen, and the records do not prove it.`,
    ...reasons.slice(0, 3).map((reason) => `      open: ${reason}`),
  ]);
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
