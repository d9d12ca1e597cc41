// Where each value of plain YAML stands, told by the fast parser as it goes; undefined for any YAML that is not plain.
import { FAILSAFE_SCHEMA, YAMLException, load, type EventType, type State } from 'js-yaml';
import { markUnknown } from './bare-unknown.ts';
import type { Branch, Tree } from './tree.ts';
import { isList, isTree } from './tree.ts';
import { mayBeAnchor, mayBeOdd } from './yaml-tree.ts';

/** A value with the offsets between which it stands; an empty value has none of its own, so they are the same. */
export interface Placed {
  readonly start: number;
  readonly end: number;
  readonly items: readonly Placed[];
  readonly entries: ReadonlyMap<string, { readonly key: Placed; readonly value: Placed | undefined }>;
}

/** A value while it is being read. */
interface Open {
  readonly from: number;
  readonly inside: Closed[];
}
interface Closed extends Placed {
  readonly text: Tree;
  /** Followed by a colon. */
  readonly isKey: boolean;
}

const none: Pick<Placed, 'items' | 'entries'> = { items: [], entries: new Map() };

/** Reads `text`, which `yamlTree` took without complaint; undefined where only the slow parser can be trusted with places. */
export function quickPlaces(text: string): Placed | undefined {
  const marked = markUnknown(text);
  if (mayBeAnchor.test(text) || mayBeOdd.test(marked) || /^(?:---|\.\.\.|%)/mu.test(text)) return undefined;
  const open: Open[] = [];
  let top: Closed | undefined;
  let plain = true;
  const listener = (event: EventType, state: State): void => {
    if (event === 'open') {
      open.push({ from: state.position, inside: [] });
      return;
    }
    const closed = close(open.pop(), state, marked);
    if (closed === undefined) plain = false;
    else if (open.length === 0) top = closed;
    else open.at(-1)?.inside.push(closed);
  };
  try {
    load(marked, { schema: FAILSAFE_SCHEMA, listener: (event, state) => plain && listener(event, state) });
  } catch (error) {
    if (error instanceof YAMLException || error instanceof RangeError) return undefined;
    throw error;
  }
  return plain ? top : undefined;
}

/** The value just read; undefined when it was not read as a plain one is. */
function close(opened: Open | undefined, state: State, text: string): Closed | undefined {
  const result: unknown = state.result ?? null;
  if (opened === undefined || !isTree(result)) return undefined;
  const start = firstOf(text, opened.from);
  const isKey = text[pastBlanks(text, state.position)] === ':';
  const own = { text: result, isKey, start };
  if (result === null) return { ...own, ...none, start: opened.from, end: opened.from };
  if (typeof result === 'string') return { ...own, ...none, end: state.position };
  // What might have been the first key of a map, and was a whole value, was opened twice.
  const [first] = opened.inside;
  if (first?.text === result) return { ...first, isKey };
  const end = text[start] === '{' || text[start] === '[' ? state.position : (opened.inside.at(-1)?.end ?? start);
  if (isList(result)) {
    const { inside } = opened;
    return inside.length === result.length ? { ...own, ...none, end, items: inside } : undefined;
  }
  const entries = entriesOf(opened.inside, result);
  return entries === undefined ? undefined : { ...own, ...none, end, entries };
}

/** Keys and values come one after the other, and a key may have no value. */
function entriesOf(inside: readonly Closed[], branch: Branch): Placed['entries'] | undefined {
  const entries = new Map<string, { key: Placed; value: Placed | undefined }>();
  let key: Closed | undefined;
  for (const one of inside) {
    if (key !== undefined && !one.isKey) {
      entries.set(nameOf(key.text), { key, value: one });
      key = undefined;
      continue;
    }
    if (key !== undefined) entries.set(nameOf(key.text), { key, value: undefined });
    key = one;
  }
  if (key !== undefined) entries.set(nameOf(key.text), { key, value: undefined });
  const names = Object.keys(branch);
  return names.length === entries.size && names.every((name) => entries.has(name)) ? entries : undefined;
}

/** A key is a scalar, which is text here whatever it looks like; one that is left empty is called as the tree calls it. */
function nameOf(text: Tree): string {
  return typeof text === 'string' ? text : 'null';
}

function pastBlanks(text: string, from: number): number {
  let at = from;
  while (text[at] === ' ' || text[at] === '\t') at += 1;
  return at;
}

/** The first character of a value: past blanks, line ends and comments. */
function firstOf(text: string, from: number): number {
  const blank = /(?:[ \t\n]+|#[^\n]*)*/uy;
  blank.lastIndex = from;
  blank.exec(text);
  return blank.lastIndex;
}
