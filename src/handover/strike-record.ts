// What of one record's keys stays with the owner: each value by its place, with what stands there instead.
import type { Place } from '../problem/problem.ts';
import { isAPersonsName } from '../book/private-words.ts';
import { readDocument } from '../source/document.ts';
import type { SourceFile } from '../source/files.ts';
import { isBranch, isList, type Branch, type Tree } from '../source/tree.ts';
import { leftOutMark, type PrivateValue } from './private-value.ts';
import { strikeMachine } from './strike-machine.ts';
import { strikePrices } from './strike-prices.ts';

/** A value at a place that gives way. `hunt`: it is looked for everywhere else as well. */
export interface Strike extends PrivateValue {
  /** What stands there instead, as YAML on one line. */
  readonly by: string;
  readonly hunt: boolean;
}

export interface StrikeWork {
  readonly withoutPrices: boolean;
  /** Pictures that do not go, whoever names them. */
  readonly closedPictures: ReadonlySet<string>;
  /** What stands in the place of a person's name, the same for the same name. */
  readonly handFor: (name: string) => string;
}

/** Everything in the front matter of a file that does not go. */
export function strikesIn(source: SourceFile, work: StrikeWork): readonly Strike[] {
  const tree = treeOf(source);
  if (tree === undefined) return [];
  const { file } = source;
  const isJob = file.startsWith('jobs/');
  return [
    ...markedValues(tree, file),
    ...(file === 'machine.yaml' ? strikeMachine(tree, file) : []),
    ...(file === 'adopted.yaml' ? formerList(tree, file) : []),
    ...(isJob ? [...hands(tree, file, work), ...pictures(tree, file, work), ...otherMachine(tree, file)] : []),
    ...(work.withoutPrices ? strikePrices(tree, file) : []),
  ];
}

/** The keys of a file; undefined where it has none that can be read. */
export function treeOf(source: SourceFile): Branch | undefined {
  if (source.file === 'story.md' && !source.text.replace(/^\uFEFF/u, '').startsWith('---')) return undefined;
  return readDocument(source).value?.data;
}

/** Which files stayed as they came: with private things left out they are others, and the next owner's program makes the list anew. */
function formerList(tree: Branch, file: string): readonly Strike[] {
  return ['records', 'photos'].flatMap((key): readonly Strike[] => {
    const at = { file, path: [key] };
    const what = `the list of ${key} that came from a former owner`;
    return isList(tree[key]) ? [{ what, text: '', at, by: 'none', hunt: false }] : [];
  });
}

/** Every `{value: …, private: yes}`, wherever it stands. */
function markedValues(tree: Tree, file: string, path: Place['path'] = []): readonly Strike[] {
  if (isList(tree)) return tree.flatMap((inner, index) => markedValues(inner, file, [...path, index]));
  if (!isBranch(tree)) return [];
  if ('value' in tree && tree['private'] === 'yes' && Object.keys(tree).length === 2)
    return [markedValue(tree['value'] ?? null, { file, path: [...path, 'value'] })];
  return Object.entries(tree).flatMap(([key, inner]) => markedValues(inner, file, [...path, key]));
}

function markedValue(value: Tree, at: Place): Strike {
  const text = typeof value === 'string' ? value : '';
  const by = isList(value) ? 'none' : at.path.at(-2) === 'title' ? leftOutMark : '"?"';
  return { what: 'a value marked private', text, at, by, hunt: isTelling(text) };
}

/** Words that tell a person or a place; a bare quantity stands in many places with other meanings. */
function isTelling(text: string): boolean {
  return /\p{L}{3}/u.test(text) ? text.length >= 4 : /(?:\p{N}[^\p{L}]*){5}/u.test(text) && !/[.,]\d/u.test(text);
}

const handKeys = new Set(['by', 'checked by']);

function hands(tree: Branch, file: string, work: StrikeWork): readonly Strike[] {
  const found: Strike[] = [];
  const visit = (inner: Tree, path: Place['path']): void => {
    const [last, before] = [path.at(-1), path.at(-2)];
    if (typeof inner === 'string') {
      const isHand = handKeys.has(String(last)) || before === 'hands';
      if (!isHand || !isAPersonsName(inner)) return;
      const instead = work.handFor(inner);
      found.push({ what: 'a name', text: inner, at: { file, path }, by: instead, instead, hunt: true });
    } else if (isList(inner)) inner.forEach((one, index) => visit(one, [...path, index]));
    else if (isBranch(inner)) for (const [key, one] of Object.entries(inner)) visit(one, [...path, key]);
  };
  visit(tree, []);
  return found;
}

function pictures(tree: Branch, file: string, work: StrikeWork): readonly Strike[] {
  const list = tree['photos'];
  if (!isList(list)) return [];
  return list.flatMap((one, index): readonly Strike[] => {
    if (!isBranch(one) || typeof one['file'] !== 'string' || !work.closedPictures.has(one['file'])) return [];
    const at = (key: string): Place => ({ file, path: ['photos', index, key] });
    const text = one['file'];
    const said = typeof one['caption'] === 'string' ? one['caption'] : '';
    return [
      { what: 'a picture that stays', text, at: at('file'), by: '"?"', hunt: false },
      ...(said === '' ? [] : [{ what: 'its caption', text: said, at: at('caption'), by: '"?"', hunt: false }]),
    ];
  });
}

/** Pictures that a record keeps private, or that lie among the papers and are not said to go. */
export function closedPicturesOf(tree: Branch): readonly string[] {
  const list = tree['photos'];
  if (!isList(list)) return [];
  return list.flatMap((one) => {
    if (!isBranch(one) || typeof one['file'] !== 'string') return [];
    const paper = /^(?:\.\/)*documents\//u.test(one['file']) && one['private'] !== 'no';
    return paper || one['private'] === 'yes' ? [one['file']] : [];
  });
}

const moves = ['moved from', 'moved to'] as const;

function otherMachine(tree: Branch, file: string): readonly Strike[] {
  const list = tree['parts'];
  if (!isList(list)) return [];
  return list.flatMap((one, index) =>
    moves.flatMap((key): readonly Strike[] => {
      const text = isBranch(one) ? one[key] : undefined;
      if (typeof text !== 'string') return [];
      const at = { file, path: ['parts', index, key] };
      const by = 'another machine';
      return [{ what: 'another machine', text, at, by, instead: by, hunt: true }];
    }),
  );
}
