// What of machine.yaml stays with the owner: numbers that open a lock or are marked, the address, what was to be spent, the private words.
import type { Place } from '../problem/problem.ts';
import { isBranch, isList, type Branch, type Tree } from '../source/tree.ts';
import type { Strike } from './strike-record.ts';

/** Values of machine.yaml that do not go, with what stands there instead. */
export function strikeMachine(tree: Branch, file: string): readonly Strike[] {
  // An amount is written in records as well, where the limit was a thing to be checked; a share means other things elsewhere.
  const own = ['spending limit', 'allowance', 'hour rate'].flatMap((key) =>
    valueAt(tree[key], { file, path: [key] }, 'what the owner would spend', key !== 'allowance'),
  );
  const { place } = { place: tree['place'] };
  const site = isBranch(place)
    ? valueAt(place['site'], { file, path: ['place', 'site'] }, 'the address of the site', true)
    : [];
  return [...numbers(tree['numbers'], file), ...site, ...own, ...words(tree['private words'], file)];
}

function valueAt(value: Tree | undefined, at: Place, what: string, hunt: boolean): readonly Strike[] {
  if (typeof value !== 'string' || value === '' || value === '?') return [];
  return [{ what, text: value, at, by: '"?"', hunt }];
}

function numbers(tree: Tree | undefined, file: string): readonly Strike[] {
  if (!isBranch(tree)) return [];
  return Object.entries(tree).flatMap(([name, value]): readonly Strike[] => {
    const what = `the ${name} number`;
    const path = ['numbers', name];
    if (typeof value === 'string')
      return name === 'key' && value !== '?'
        ? [{ what, text: value, at: { file, path }, by: '{stamped: "?", private: yes}', hunt: true }]
        : [];
    if (!isBranch(value) || (value['private'] !== 'yes' && name !== 'key')) return [];
    return [
      ...valueAt(value['stamped'], { file, path: [...path, 'stamped'] }, what, true),
      ...valueAt(value['photo'], { file, path: [...path, 'photo'] }, `a picture of ${what}`, false),
    ];
  });
}

function words(tree: Tree | undefined, file: string): readonly Strike[] {
  if (!isList(tree)) return [];
  const each = tree.flatMap((word): readonly Strike[] =>
    typeof word === 'string'
      ? [{ what: 'a private word', text: word, at: { file, path: ['private words'] }, by: 'none', hunt: true }]
      : [],
  );
  return each;
}
