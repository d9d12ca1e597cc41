// Lines whose verb is a key, `{removed: cylinder head, bag: 3}`: exactly one verb a line.
import { isBranch, type Branch, type Tree } from '../../source/tree.ts';
import { nearest } from '../nearest.ts';
import { refuse, type Desk, type Spot } from '../shapes/desk.ts';
import { readInside, type Shape, type Told } from '../shapes/shape.ts';

/** A line as read: its verb, what stands after the verb, and the other keys. */
export interface VerbLine<V extends string, T, R> {
  readonly verb: V;
  readonly object: T;
  readonly rest: R;
}

/** A line with one of `verbs` as a key; `object` is what stands after the verb, `rest` the keys beside it. */
export function verbLine<const V extends string, T, R>(
  verbs: readonly V[],
  object: Shape<T>,
  rest: Shape<R>,
): Shape<VerbLine<V, T, R>> {
  return {
    read: (tree, spot, desk) => {
      const verb = isBranch(tree) ? oneVerb(tree, verbs, spot, desk) : undefined;
      if (!isBranch(tree))
        return refuse(desk, spot, 'value-not-keys', 'Keys with values are expected here.', example(verbs));
      if (verb === undefined) return undefined;
      const after = readInside(object, tree[verb] ?? null, { up: spot, key: verb }, desk);
      const others = rest.read(without(tree, verb), spot, desk);
      if (after !== undefined && others !== undefined) return { verb, object: after, rest: others };
      if (after !== undefined || others === undefined || !isEmpty(tree[verb])) return undefined;
      return refuse(
        desk,
        { up: spot, key: verb },
        'value-missing',
        `Nothing is written after “${verb}”.`,
        example(verbs),
        'at key',
      );
    },
    told: told(verbs, object.told, rest.told),
  };
}

function oneVerb<V extends string>(
  tree: Branch,
  verbs: readonly V[],
  spot: Spot | undefined,
  desk: Desk,
): V | undefined {
  const [first, second] = verbs.filter((verb) => Object.hasOwn(tree, verb));
  if (second !== undefined) {
    const message = `This line says two things at once: “${first ?? ''}” and “${second}”.`;
    return refuse(desk, { up: spot, key: second }, 'verb-twice', message, 'Write one line for each.', 'at key');
  }
  if (first !== undefined) return first;
  const meant = Object.keys(tree).flatMap((key) => nearest(key, verbs).slice(0, 1));
  const hint = meant[0] === undefined ? `Begin it with one of: ${verbs.join(', ')}.` : `Did you mean “${meant[0]}”?`;
  return refuse(desk, spot, 'verb-missing', 'This line does not say what was done.', hint);
}

function isEmpty(tree: Tree | undefined): boolean {
  return tree === undefined || tree === null || tree === '' || tree === '?';
}

function without(tree: Branch, verb: string): Branch {
  const { [verb]: _verb, ...rest } = tree;
  return rest;
}

function example(verbs: readonly string[]): string {
  return `Write {${verbs[0] ?? ''}: …}.`;
}

function told(verbs: readonly string[], object: Told, rest: Told): Told {
  const said = verbs.map((key) => ({ key, needed: false, says: 'the verb: what was done', value: object }));
  return { kind: 'record', fields: [...said, ...(rest.kind === 'record' ? rest.fields : [])] };
}
