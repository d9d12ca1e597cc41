// The shortest way back: of what is off, loose, empty or away, the steps that bring it to where it can be pushed, or to where it runs.
// Last off goes on first, except where the hard order of work has it otherwise; oils go in when all is closed, and petrol last of all: common practice.
import type { OrderEdge } from '../../records/content-model.ts';
import { edgesBy } from '../../records/order-edges.ts';
import type { Book, HoldState, OpenLine, TorqueRow } from '../book.ts';
import type { Namer } from '../names.ts';
import { makeNamer } from '../names.ts';
import type { Implied } from '../shopping/implied.ts';
import { impliedByOpenLine } from '../shopping/implied.ts';
import { isRolling, mayStayOff } from './body-and-rolling-things.ts';

export type Goal = 'pushed' | 'running';

export interface BackStep {
  readonly line: OpenLine;
  /** What is tightened once it is on, with what is known of it. */
  readonly tighten: readonly TorqueRow[];
  /** What is always new, or filled in, when it goes back. */
  readonly needs: readonly Implied[];
  /** Why it comes before a step further down, where the hard order says so. */
  readonly because?: string;
}

export interface WayBack {
  readonly goal: Goal;
  readonly steps: readonly BackStep[];
  /** Off as well, and not needed for it. */
  readonly aside: readonly OpenLine[];
  /** The hold point that comes next, with its open checks. */
  readonly comesNext?: HoldState;
}

/** Points that stand between the last step and a running engine; nothing holds a machine from being pushed. */
const pointsOf: Readonly<Record<Goal, readonly string[]>> = {
  pushed: [],
  running: ['before-turning', 'before-live-kick'],
};

/** The part that a fastener holds counts for the fastener: a loose spindle nut belongs to its wheel. */
function namesOf(book: Book, { entry }: OpenLine): string {
  const fastener = book.fasteners.get(entry.thing);
  return fastener === undefined ? entry.thing : `${fastener.name} ${fastener.of ?? ''}`;
}

function neededFor(book: Book, line: OpenLine, goal: Goal): boolean {
  const name = namesOf(book, line);
  return goal === 'pushed' ? isRolling(name) : !mayStayOff(name);
}

/** Steps of the hard order that putting a line back is, by the things and fasteners it names. */
function stepsOf(book: Book, lines: readonly OpenLine[], key: Namer): ReadonlyMap<OpenLine, ReadonlySet<string>> {
  const byWord = new Map<string, string[]>();
  for (const step of (book.content.orders ?? []).flatMap((order) => order.steps))
    for (const word of step.by) byWord.set(key(word), [...(byWord.get(key(word)) ?? []), step.id]);
  return new Map(
    lines.map((line) => {
      const words = [line.entry.thing, ...line.entry.fasteners.map(({ id }) => id)];
      return [line, new Set(words.flatMap((word) => byWord.get(key(word)) ?? []))];
    }),
  );
}

/** All steps after some steps, each with the reason of the edge it was first reached by. */
function reached(
  own: ReadonlySet<string>,
  from: ReadonlyMap<string, readonly OrderEdge[]>,
): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const look = [...own];
  for (let here = look.pop(); here !== undefined; here = look.pop()) {
    for (const { after, why } of from.get(here) ?? []) {
      if (found.has(after)) continue;
      found.set(after, why);
      look.push(after);
    }
  }
  return found;
}

interface Sorted {
  readonly line: OpenLine;
  readonly because?: string;
}

/** A plug may be loose and a cover off below what is filled: everything is closed first, and petrol comes when the rest is done. */
function fillsLast(lines: readonly OpenLine[]): OpenLine[] {
  const rank = ({ state, entry }: OpenLine): number => {
    if (state !== 'empty') return 0;
    return /\b(?:fuel|petrol|gasoline|tank)\b/iu.test(entry.thing) ? 2 : 1;
  };
  return lines.toSorted((a, b) => rank(a) - rank(b));
}

/** Last off first on, held back by the hard order; with the reason where it decided. */
function inOrderBack(book: Book, lines: readonly OpenLine[], key: Namer): readonly Sorted[] {
  const steps = stepsOf(book, lines, key);
  const from = edgesBy(
    'before',
    (book.content.orders ?? []).flatMap((order) => order.edges),
  );
  const after = new Map(lines.map((line) => [line, reached(steps.get(line) ?? new Set(), from)]));
  const whyBefore = (a: OpenLine, b: OpenLine): string | undefined =>
    a === b ? undefined : [...(steps.get(b) ?? [])].map((id) => after.get(a)?.get(id)).find((why) => why !== undefined);
  const left = fillsLast(lines.toReversed());
  const out: Sorted[] = [];
  while (left.length > 0) {
    const free = left.findIndex((line) => !left.some((other) => whyBefore(other, line) !== undefined));
    const [line] = left.splice(Math.max(0, free), 1);
    if (line === undefined) break;
    const because = left.map((other) => whyBefore(line, other)).find((why) => why !== undefined);
    out.push(because === undefined ? { line } : { line, because });
  }
  return out;
}

/** What is tightened when a line goes back: the fasteners it names, those that hold it, or the fastener itself; not what is open by itself. */
function tightenedWith(book: Book, { entry, state }: OpenLine, key: Namer): readonly TorqueRow[] {
  if (state !== 'off' && state !== 'loose' && state !== 'sent out') return [];
  const named = new Set(entry.fasteners.map(({ id }) => key(id)));
  const thing = key(entry.thing);
  const byItself = new Set(book.off.open.map((line) => key(line.entry.thing)));
  return book.torque.filter(({ fastener: { id, of } }) => {
    const own = key(id);
    if (own === thing || named.has(own)) return true;
    return of !== undefined && key(of) === thing && !byItself.has(own);
  });
}

/** The steps to a goal, from what is off now. */
export function wayBack(book: Book, goal: Goal): WayBack {
  const key = makeNamer(book.records.maker);
  const needed = book.off.open.filter((line) => neededFor(book, line, goal));
  const steps = inOrderBack(book, needed, key).map((one): BackStep => {
    const needs = impliedByOpenLine(book, one.line);
    return { ...one, tighten: tightenedWith(book, one.line, key), needs };
  });
  const points = pointsOf[goal].flatMap((id) => book.holds.find(({ point }) => point.id === id) ?? []);
  const next = points.find(({ clear, released }) => !clear && released === undefined) ?? points.at(-1);
  const aside = book.off.open.filter((line) => !needed.includes(line));
  return { goal, steps, aside, ...(next === undefined ? {} : { comesNext: next }) };
}
