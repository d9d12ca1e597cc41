// What can be done to the keys of a record: a key set in a map, an item added to a list or taken out of it. Done to the tree here; edit-record.ts does it to the text.
import { isBranch, isList, type Branch, type Tree } from '../source/tree.ts';

type Step = string | number;

/** `path` leads from the top of the front matter to the map that holds `key`; a list that is not there is begun. */
export type RecordEdit =
  | { readonly kind: 'set'; readonly path: readonly Step[]; readonly key: string; readonly value: Tree }
  | {
      readonly kind: 'add';
      readonly path: readonly Step[];
      readonly key: string;
      readonly item: Tree;
      readonly oneALine?: boolean;
    }
  | { readonly kind: 'remove'; readonly path: readonly Step[]; readonly key: string; readonly index: number };

/** The value at a path; undefined where nothing stands. */
export function treeAt(tree: Tree, path: readonly Step[]): Tree | undefined {
  let now: Tree | undefined = tree;
  for (const step of path) {
    if (isBranch(now)) now = Object.hasOwn(now, step) ? now[step] : undefined;
    else if (isList(now)) now = now[Number(step)];
    else return undefined;
  }
  return now;
}

/** The tree after the edit; undefined where the edit does not fit it. */
export function afterEdit(tree: Tree, edit: RecordEdit): Tree | undefined {
  const [step, ...rest] = edit.path;
  if (step === undefined) return isBranch(tree) ? changed(tree, edit) : undefined;
  const inside = treeAt(tree, [step]);
  const made = inside === undefined ? undefined : afterEdit(inside, { ...edit, path: rest });
  if (made === undefined) return undefined;
  if (isList(tree)) return tree.map((one, index) => (index === Number(step) ? made : one));
  return isBranch(tree) ? { ...tree, [step]: made } : undefined;
}

function changed(tree: Branch, edit: RecordEdit): Tree | undefined {
  const before = treeAt(tree, [edit.key]);
  if (edit.kind === 'set') return { ...tree, [edit.key]: edit.value };
  if (edit.kind === 'remove') return without(tree, edit.key, edit.index);
  if (before === undefined || before === null || before === 'none') return { ...tree, [edit.key]: [edit.item] };
  return isList(before) ? { ...tree, [edit.key]: [...before, edit.item] } : undefined;
}

function without(tree: Branch, key: string, index: number): Tree | undefined {
  const list = treeAt(tree, [key]);
  if (!isList(list) || index < 0 || index >= list.length) return undefined;
  return { ...tree, [key]: list.filter((_, at) => at !== index) };
}

/** Whether two trees say the same. */
export function sameTree(a: Tree, b: Tree): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
