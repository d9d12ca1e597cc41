// Records made at random and written down as a person writes them, with what must be read back from them.
import fc from 'fast-check';

/** Any words; what YAML would misread goes in quotes, as the page of formats says. */
export const words = fc
  .oneof(
    fc.constantFrom(
      'head off',
      'plug: sooty',
      "the owner's",
      'a "loose" nut',
      '#3',
      '{left}',
      '[x]',
      '- x',
      'yes',
      '12.50',
      'ölig',
      'ночь',
      '自転車',
      'no: 5, left',
      '!',
      '*',
      '& more',
      'a — b',
    ),
    fc.stringMatching(/^[\p{L}\p{N}][\p{L}\p{N} ,.:;'"()#-]{0,18}[\p{L}\p{N}]$/u),
  )
  .filter((text) => text.trim() === text && text.length > 0);

const decimalText = fc
  .tuple(fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 999 }))
  .map(([whole, places, part]) =>
    places === 0 ? String(whole) : `${String(whole)}.${String(part).padStart(3, '0').slice(0, places)}`,
  );

/** A length as a gauge gives it. */
export const lengthText = fc
  .tuple(decimalText, fc.constantFrom('mm', 'thou', 'in'))
  .map(([number, unit]) => `${number} ${unit}`);

const date = fc
  .date({ min: new Date('1950-01-01'), max: new Date('2049-12-31'), noInvalidDate: true })
  .map((day) => day.toISOString().slice(0, 10));
const idText = fc.stringMatching(/^[a-z][a-z0-9]{0,6}$/u);
const position = fc.constantFrom('left', 'right', 'left top', 'right bottom fore-aft');

const reading = fc.record({
  item: idText.map((id) => `own ${id}`),
  found: fc.option(
    fc.dictionary(position, fc.oneof(lengthText, fc.constantFrom('?', '6?.8 mm')), { minKeys: 1, maxKeys: 3 }),
    { nil: undefined },
  ),
  left: fc.option(lengthText, { nil: undefined }),
  note: fc.option(words, { nil: undefined }),
});
const work = fc.record({
  verb: fc.constantFrom('removed', 'refitted', 'opened', 'closed', 'disconnected', 'sent out', 'fitted temporarily'),
  thing: words,
  bag: fc.option(fc.integer({ min: 1, max: 99 }).map(String), { nil: undefined }),
  note: fc.option(words, { nil: undefined }),
});
const finding = fc.record({ saw: words, weight: fc.constantFrom('stops', 'limits', 'not done', 'note') });
const paid = fc.record({ pence: fc.integer({ min: 0, max: 5_000_000 }), for: words });

export const jobText = fc.record({
  title: words,
  date,
  kind: fc.constantFrom('buying', 'strip', 'ride', 'first start', 'running-in'),
  state: fc.constantFrom('planned', 'under way', 'waiting for barrels', 'done', 'put aside'),
  hands: fc.array(words, { maxLength: 3 }),
  readings: fc.array(reading, { maxLength: 4 }),
  work: fc.array(work, { maxLength: 4 }),
  findings: fc.array(finding, { maxLength: 3 }),
  money: fc.array(paid, { maxLength: 3 }),
  next: fc.option(words, { nil: undefined }),
  body: fc.array(words, { maxLength: 4 }).map((lines) => lines.map((line) => `${line}\n`).join('')),
});

export type WrittenJob = typeof jobText extends fc.Arbitrary<infer T> ? T : never;

/** Text in quotes always reads as itself. */
const quoted = (text: string): string => JSON.stringify(text);

function flow(pairs: readonly (readonly [string, string | undefined])[]): string {
  return `{${pairs.flatMap(([key, value]) => (value === undefined ? [] : [`${key}: ${value}`])).join(', ')}}`;
}
const maybe = (text: string | undefined): string | undefined => (text === undefined ? undefined : quoted(text));

/** The file of a job. `newline` is the line end of whoever saved it. */
export function asFile(job: WrittenJob, newline: '\n' | '\r\n' = '\n'): string {
  const readings = job.readings.map(({ item, found, left, note }) => {
    const values = found === undefined ? undefined : flow(Object.entries(found));
    return `  - ${flow([
      ['item', item],
      ['found', values],
      ['left', left],
      ['note', maybe(note)],
    ])}`;
  });
  const lines = [
    '---',
    `title: ${quoted(job.title)}`,
    `date: ${job.date}`,
    `kind: ${job.kind}`,
    `state: ${job.state}`,
    `hands: [${job.hands.map(quoted).join(', ')}]`,
    'readings:',
    ...readings,
    'work:',
    ...job.work.map(
      ({ verb, thing, bag, note }) =>
        `  - ${flow([
          [verb, quoted(thing)],
          ['bag', bag],
          ['note', maybe(note)],
        ])}`,
    ),
    'findings:',
    ...job.findings.map(
      ({ saw, weight }, i) =>
        `  - ${flow([
          ['id', `f${String(i)}`],
          ['saw', quoted(saw)],
          ['weight', weight],
        ])}`,
    ),
    'money:',
    ...job.money.map(({ pence, for: what }) => `  - {paid: ${(pence / 100).toFixed(2)} GBP, for: ${quoted(what)}}`),
    ...(job.next === undefined ? [] : [`next: ${quoted(job.next)}`]),
    '---',
    job.body,
  ];
  return lines.join('\n').replaceAll('\n', newline);
}
