// Things of a machine that are looked for by name: numbers, fasteners, what is off, bags, parts, holds, services, settings, instruments, causes.
import type { Book, OpenLine } from '../book/book.ts';
import { machineFaults } from '../book/faults/machine-faults.ts';
import type { PartEntry } from '../records/model.ts';
import { sentence } from '../views/wording/blocks.ts';
import { grouped } from '../views/wording/grouped.ts';
import { torqueAsWritten } from '../views/wording/torque.ts';
import { spanText } from '../views/wording/day.ts';
import type { ViewContext } from '../views/view.ts';
import type { SearchEntry } from './search-entries.ts';

/** All of them, in the order of the binder. */
export function thingEntries(context: ViewContext): readonly SearchEntry[] {
  return [
    ...numbers(context),
    ...open(context),
    ...bags(context),
    ...fasteners(context),
    ...parts(context),
    ...holds(context),
    ...services(context),
    ...settings(context),
    ...faults(context),
  ];
}

/** `frame number LP175-00123`; what is not known cannot be found. */
function numbers({ book, say }: ViewContext): readonly SearchEntry[] {
  const { numbers: all } = book.records.machine;
  return all
    .filter(({ stamped }) => stamped !== '?' && stamped !== '')
    .map(({ name, stamped, knownBy }) => ({
      kind: say('number of the machine'),
      title: `${sentence(say(name))} ${stamped}`,
      file: 'index.html#what-it-is',
      words: () => `${say('frame number')} ${knownBy}`,
    }));
}

function open({ book, say }: ViewContext): readonly SearchEntry[] {
  return book.off.open.map((line) => ({
    kind: say(line.state),
    title: line.entry.thing,
    file: 'off.html#still-open',
    words: () => lineWords(line),
  }));
}

function lineWords({ entry, job }: OpenLine): string {
  const { verb, thing, bag, fasteners: with_, where, wayRound, note } = entry;
  const texts = [
    `${verb} ${thing}`,
    ...with_.map(({ id }) => id),
    bag === undefined ? undefined : `bag ${bag}`,
    where,
    wayRound,
    note,
    spanText(job.date),
    job.title,
  ];
  return texts.filter((text) => text !== undefined && text !== '').join('; ');
}

/** A bag is found by its number and by whatever was ever in it. */
function bags({ book, say }: ViewContext): readonly SearchEntry[] {
  const inside = grouped([...book.off.open, ...book.off.closed], ({ entry }) => entry.bag ?? '');
  return book.off.bags.map(({ bag, emptied }) => ({
    kind: emptied ? say('bag, empty again') : say('bag'),
    title: `${say('Bag')} ${bag}`,
    file: 'off.html#bags',
    words: () => (inside.get(bag) ?? []).map(lineWords).join('; '),
  }));
}

function fasteners({ book, say }: ViewContext): readonly SearchEntry[] {
  const { units } = book.records.machine;
  return book.torque.map(({ fastener, value, basis }) => ({
    kind: say('fastener'),
    title: sentence(fastener.name),
    file: `torque.html#torque-${fastener.id}`,
    words: () =>
      [
        fastener.thread,
        fastener.class,
        fastener.of,
        value === undefined || basis !== 'maker' ? undefined : torqueAsWritten(value, units),
        say('torque'),
      ]
        .filter((text) => text !== undefined && text !== '')
        .join('; '),
  }));
}

/** One entry for a part of one number, at the record that names it last. */
function parts({ book, say }: ViewContext): readonly SearchEntry[] {
  const last = new Map<string, { readonly part: PartEntry; readonly job: string }>();
  for (const job of book.records.jobs) {
    for (const part of job.parts) last.set(partKey(part), { part, job: job.id });
  }
  return [...last.values()].map(({ part, job }) => ({
    kind: say('part'),
    title: sentence(part.part),
    file: `jobs/${job}.html`,
    words: () =>
      [
        part.number,
        part.bookNumber,
        part.supersedes,
        part.size,
        part.from,
        part.state,
        part.bring,
        part.insteadOf,
        part.originalKept,
        ...(part.alternatives ?? []),
      ]
        .filter((text) => text !== undefined && text !== '')
        .join('; '),
  }));
}

function partKey({ part, number, bookNumber, size }: PartEntry): string {
  return [part, number, bookNumber, size].join('\n');
}

function holds({ book, say }: ViewContext): readonly SearchEntry[] {
  return book.holds.flatMap(({ point, clear, checks }) => {
    const file = `hold-points.html#${point.id}`;
    const all = checks.filter(({ state }) => state !== 'not for this machine');
    return [
      {
        kind: clear ? say('hold point, clear on the records') : say('hold point, held'),
        title: say(point.title),
        file,
        words: () => '',
      },
      ...all.map(({ check, state }) => ({
        kind: `${say('check')}, ${say(state)}`,
        title: sentence(say(check.text)),
        file,
        words: () => `${say(check.why)} ${check.id}`,
      })),
    ];
  });
}

function services({ book, say }: ViewContext): readonly SearchEntry[] {
  return book.due.map(({ service, state, why }) => ({
    kind: `${say('service')}, ${say(state)}`,
    title: sentence(service.item),
    file: 'service.html',
    words: () => `${service.action}; ${why}`,
  }));
}

function settings({ book, say }: ViewContext): readonly SearchEntry[] {
  return [...book.settings.values()].map(({ name, value, condition, of }) => ({
    kind: say('setting'),
    title: sentence(name),
    file: 'settings.html',
    words: () => [valueWords(value), ...condition, of ?? ''].filter((text) => text !== '').join('; '),
  }));
}

type SettingValue =
  Book['settings'] extends ReadonlyMap<string, infer Setting extends { readonly value: unknown }>
    ? Setting['value']
    : never;

function valueWords(value: SettingValue): string {
  if (value.kind === 'read') return value.written.text;
  return value.kind === 'words' ? value.text : '';
}

function faults({ book, say }: ViewContext): readonly SearchEntry[] {
  const { causes, tests } = machineFaults(book.content, book.records.machine.features);
  const file = 'next-test.html';
  return [
    ...causes.map(({ cause, group, cure }) => ({
      kind: say('cause of a fault'),
      title: sentence(say(cause)),
      file,
      words: () => `${say(group)}; ${say(cure)}`,
    })),
    ...tests.map(({ test, how, notice }) => ({
      kind: notice ? say('sign of a fault') : say('test'),
      title: sentence(say(test)),
      file,
      words: () => say(how ?? ''),
    })),
  ];
}
