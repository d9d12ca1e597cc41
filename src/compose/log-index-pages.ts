// The log narrowed: the records of each system and of each kind of work, a line each, on pages that need no script.
import { jobsBySystem } from '../book/systems-of-job.ts';
import type { Job } from '../records/model.ts';
import type { Block, Text } from '../sheet/sheet.ts';
import { logLines } from '../views/log-lines.ts';
import type { ViewContext } from '../views/view.ts';
import { anchor, heading, lines, sentence } from '../views/wording/blocks.ts';
import { count, countOf } from '../views/wording/count.ts';
import { grouped } from '../views/wording/grouped.ts';
import { turning } from './turning.ts';
import type { PageSpec } from './pages.ts';

/** So many lines make a page. */
const perPage = 350;

/** One way to narrow: its name, its records, its first page. */
interface Narrowed {
  readonly name: string;
  readonly file: string;
  readonly jobs: readonly Job[];
}

export interface LogIndex {
  readonly systems: readonly Narrowed[];
  readonly kinds: readonly Narrowed[];
}

/** What the log can be narrowed by; `jobs` newest first. */
export function logIndex(context: ViewContext, jobs: readonly Job[]): LogIndex {
  const { book, say } = context;
  const kinds = [...grouped(jobs, ({ kind }) => kind)].toSorted(([, one], [, other]) => other.length - one.length);
  return {
    systems: jobsBySystem(book, jobs).map(([system, those]) => ({
      name: say(system.name),
      file: `log/of-${system.id}.html`,
      jobs: those,
    })),
    kinds: kinds.map(([kind, those]) => ({
      name: sentence(say(kind)),
      file: `log/${anchor('kind', kind)}.html`,
      jobs: those,
    })),
  };
}

/** Lists that lead to the narrowed pages of the log, each with how many records it has. */
export function narrowingLists({ say }: ViewContext, { systems, kinds }: LogIndex): readonly Block[] {
  const list = (all: readonly Narrowed[]): Block =>
    lines(
      all.map((one): Text => [
        { kind: 'link', text: one.name, to: `page:${one.file}` },
        `: ${countOf(one.jobs.length, say('record'), say('records'))}`,
      ]),
    );
  return [
    heading(2, say('Of one system'), 'of-one-system'),
    list(systems),
    heading(2, say('Of one kind of work'), 'of-one-kind'),
    list(kinds),
  ];
}

/** Pages of every system and every kind, a long one on several. */
export function logIndexPages(context: ViewContext, index: LogIndex): readonly PageSpec[] {
  return [
    ...index.systems.flatMap((one) => pagesOf(context, one, false)),
    ...index.kinds.flatMap((one) => pagesOf(context, one, true)),
  ];
}

function pagesOf(context: ViewContext, { name, file, jobs }: Narrowed, ofOneKind: boolean): readonly PageSpec[] {
  const section = context.say('Log');
  const title = `${section}: ${name}`;
  const pages = Array.from({ length: Math.ceil(jobs.length / perPage) }, (_, at) => ({
    file: at === 0 ? file : file.replace(/\.html$/, `-${String(at + 1)}.html`),
    title: at === 0 ? title : `${title}, ${count(at + 1)}`,
    section,
  }));
  const beside = turning(pages);
  return pages.map((page, at): PageSpec => {
    const those = jobs.slice(at * perPage, (at + 1) * perPage);
    return { ...page, make: () => ({ ...page, blocks: logLines(context, those, ofOneKind), ...beside(at) }) };
  });
}
