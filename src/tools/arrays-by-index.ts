// Loops over arrays and arrays taken apart, by index instead of by iterator, in the compiled program: what runs for a second or two is hardly
// ever optimised, and every step of an iterator then makes an object. The types say where an array surely is; everything else stays as written.
import { join } from 'node:path';
import type { Plugin } from 'esbuild';
import { isArrayBindingPattern, isBindingElement, isForOfStatement } from 'typescript/unstable/ast/is';
import type { ArrayBindingPattern, ForOfStatement, Node, SourceFile } from 'typescript/unstable/ast';
import { API, TypeFlags, type Checker, type Type } from 'typescript/unstable/sync';

/** Text that stands for `[from, to)` of a file. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The files below `folder` of a project (its `tsconfig.json`), rewritten; those with nothing to rewrite are not among them. */
export function arraysByIndex(project: string, folder: string): ReadonlyMap<string, string> {
  const api = new API({ cwd: project });
  try {
    const [opened] = api.updateSnapshot({ openProjects: [join(project, 'tsconfig.json')] }).getProjects();
    if (opened === undefined) throw new Error('There is no project to compile.');
    const { program, checker } = opened;
    const isArray = arrayTypes(checker);
    const names = program.getSourceFileNames().filter((name) => name.startsWith(`${folder}/`));
    const rewritten = names.flatMap((name): readonly (readonly [string, string])[] => {
      const file = program.getSourceFile(name);
      const edits = file === undefined ? [] : editsOf(file, checker, isArray);
      return file === undefined || edits.length === 0 ? [] : [[name, withEdits(file.text, edits)]];
    });
    return new Map(rewritten);
  } finally {
    api.close();
  }
}

/** For the compiled program: rewritten files in the place of those written. It comes after all that put other code there. */
export function arraysByIndexPlugin(rewritten: ReadonlyMap<string, string>): Plugin {
  return {
    name: 'arrays-by-index',
    setup(building) {
      building.onLoad({ filter: /\.ts$/ }, ({ path }) => {
        const contents = rewritten.get(path);
        return contents === undefined ? undefined : { contents, loader: 'ts' };
      });
    },
  };
}

function arrayTypes(checker: Checker): (type: Type | undefined) => boolean {
  const known = new Map<Type, boolean>();
  return (type) => {
    if (type === undefined || (type.flags & (TypeFlags.Any | TypeFlags.Never)) !== 0) return false;
    const before = known.get(type);
    if (before !== undefined) return before;
    const is = checker.isArrayLikeType(type);
    known.set(type, is);
    return is;
  };
}

function editsOf(file: SourceFile, checker: Checker, isArray: (type: Type | undefined) => boolean): readonly Edit[] {
  const loops: ForOfStatement[] = [];
  const patterns: ArrayBindingPattern[] = [];
  const walk = (node: Node): undefined => {
    if (isForOfStatement(node) && node.awaitModifier === undefined) loops.push(node);
    if (isArrayBindingPattern(node) && node.elements.every((one) => !isRest(one))) patterns.push(node);
    node.forEachChild(walk);
  };
  walk(file);
  const ofLoops = checker.getTypeAtLocation(loops.map(({ expression }) => expression));
  const ofPatterns = checker.getTypeAtLocation(patterns);
  const taken = patterns.filter((_, index) => isArray(ofPatterns[index])).flatMap((one) => patternEdits(one, file));
  const counted = loops
    .filter((_, index) => isArray(ofLoops[index]))
    .flatMap((one, index) => loopEdits(one, index, file, taken));
  return [...taken, ...counted];
}

function isRest(element: Node): boolean {
  return isBindingElement(element) && element.dotDotDotToken !== undefined;
}

/** `[, a, b = 0]` as `{1: a, 2: b = 0}`: the same values, asked for by their places. */
function patternEdits(pattern: ArrayBindingPattern, file: SourceFile): readonly Edit[] {
  const from = pattern.getStart(file);
  const inside = pattern.elements.map((element, place): Edit => {
    if (!isBindingElement(element) || element.name === undefined) {
      const comma = file.text.indexOf(',', element.pos);
      return { from: comma, to: comma + 1, text: '' };
    }
    const begin = element.name.getStart(file);
    return { from: begin, to: begin, text: `${String(place)}: ` };
  });
  return [{ from, to: from + 1, text: '{' }, ...inside, { from: pattern.end - 1, to: pattern.end, text: '}' }];
}

/** `for (const a of list) …` as a count over `list`, whose length is asked each time, as an iterator does. */
function loopEdits(loop: ForOfStatement, index: number, file: SourceFile, taken: readonly Edit[]): readonly Edit[] {
  const { initializer, expression, statement } = loop;
  const begin = initializer.getStart(file);
  const declared = /^(?:const|let)\s/u.test(file.text.slice(begin));
  if (!declared) return [];
  const [at, list] = [`$at${String(index)}`, `$list${String(index)}`];
  const variable = withEdits(file.text, taken, begin, initializer.end);
  return [
    { from: begin, to: expression.getStart(file), text: `let ${at} = 0, ${list} = ` },
    {
      from: statement.pos - 1,
      to: statement.pos,
      text: `; ${at} < ${list}.length; ${at} += 1) { ${variable} = ${list}[${at}];`,
    },
    { from: statement.end, to: statement.end, text: ' }' },
  ];
}

/** A part of a text with the edits in it; one that lies inside another has been done there. */
function withEdits(text: string, edits: readonly Edit[], from = 0, to = text.length): string {
  const inside = edits
    .filter((edit) => edit.from >= from && edit.to <= to)
    .toSorted((a, b) => a.from - b.from || a.to - b.to);
  let [made, done] = ['', from];
  for (const edit of inside) {
    if (edit.from < done) continue;
    made += text.slice(done, edit.from) + edit.text;
    done = edit.to;
  }
  return made + text.slice(done, to);
}
