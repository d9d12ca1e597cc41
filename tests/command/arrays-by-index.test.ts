// The compiled program counts over arrays where its source says `of`: both must do the same, whatever stands in the loop.
import { transform } from 'esbuild';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { arraysByIndex } from '../../src/tools/arrays-by-index.ts';

const project = realpathSync(mkdtempSync(join(tmpdir(), 'arrays-by-index-')));
afterAll(() => rmSync(project, { recursive: true, force: true }));

/** Each pushes what it sees to `out`; ½ … – stand before them, so that places are counted in the same letters. */
const pieces: Readonly<Record<string, string>> = {
  'a list, with a jump out and on': `for (const a of numbers) { if (a === 2) continue; if (a > 3) break; out.push(a); }`,
  'a list that grows under way': `const grows = [1, 2]; for (const a of grows) { if (grows.length < 6) grows.push(a * 2); out.push(a); }`,
  'one statement below another': `for (const a of numbers) for (const b of words) if (a > 2) out.push(a + b); else out.push(b);`,
  'what is kept of each step': `const kept: (() => number)[] = []; for (const a of numbers) kept.push(() => a); for (const one of kept) out.push(one());`,
  'a variable that is changed': `for (let a of numbers) { a += 1; out.push(a); }`,
  'a list made where the loop begins': `for (const a of [...numbers, ...numbers].map((one) => one * 2)) { out.push(a); }`,
  'a set, a map and a text': `for (const a of new Set(numbers)) out.push(a); for (const [k, v] of new Map([['x', 1]])) out.push(k, v); for (const c of 'añ½') out.push(c);`,
  'what is made piece by piece': `function* steps(): Generator<number> { yield 1; yield 2; } for (const a of steps()) out.push(a); const [first] = steps(); out.push(first);`,
  'pairs, places left out, and what stands for nothing': `for (const [, b = 9, c] of pairs) out.push(b, c); const [x, [y = 4, z] = []] = nested; out.push(x, y, z);`,
  'the rest of a list': `const [head, ...rest] = numbers; out.push(head, rest.length);`,
  'what a function is given': `const sum = ([a, b]: readonly [number, number], ...[c]: readonly number[]): number => a + b + (c ?? 0); out.push(sum([1, 2], 3));`,
  'a label': `outer: for (const a of numbers) { for (const b of numbers) { if (b > a) continue outer; out.push(a * b); } }`,
  'either of two lists': `const either: readonly number[] | readonly string[] = numbers.length > 2 ? words : numbers; for (const a of either) out.push(a);`,
  'what may be any thing': `const some: Iterable<number> = numbers; for (const a of some) out.push(a); const loose: any = numbers; for (const a of loose) out.push(a);`,
};

const before = `// ½ … – °
const out: unknown[] = [];
const numbers: readonly number[] = [1, 2, 3, 4];
const words = ['a', 'b…'];
const pairs: readonly (readonly [number, number | undefined, string])[] = [[1, undefined, 'p'], [2, 3, 'q']];
const nested: readonly [string, (readonly [number | undefined, string])?] = ['n', [undefined, 'm']];
`;

const sources = Object.values(pieces).map((piece) => `${before}${piece}\nexport { out };\n`);
mkdirSync(join(project, 'src'));
sources.forEach((source, index) => writeFileSync(join(project, 'src', `piece-${String(index)}.ts`), source));
writeFileSync(
  join(project, 'tsconfig.json'),
  '{"compilerOptions":{"target":"ES2022","module":"nodenext","strict":true,"types":[],"noEmit":true},"include":["src"]}',
);
const rewritten = arraysByIndex(project, join(project, 'src'));

async function run(source: string): Promise<unknown> {
  const { code } = await transform(source, { loader: 'ts', format: 'esm' });
  const module: unknown = await import(`data:text/javascript,${encodeURIComponent(code)}`);
  return typeof module === 'object' && module !== null && 'out' in module ? module.out : undefined;
}

describe('arrays by index', () => {
  it.each(Object.keys(pieces).map((name, index) => [name, index] as const))(
    'does the same with %s',
    async (_, index) => {
      const source = sources[index] ?? '';
      const made = await run(source);
      expect(Array.isArray(made) && made.length > 0).toBe(true);
      expect(await run(rewritten.get(join(project, 'src', `piece-${String(index)}.ts`)) ?? source)).toEqual(made);
    },
  );

  it('counts where there surely is an array, and leaves all else', () => {
    const of = (name: string): string =>
      rewritten.get(join(project, 'src', `piece-${String(Object.keys(pieces).indexOf(name))}.ts`)) ?? 'as it was';
    expect(of('one statement below another')).not.toContain(' of ');
    expect(of('a set, a map and a text').match(/ of /g)).toHaveLength(3);
    expect(of('what is made piece by piece')).toBe('as it was');
    expect(of('what may be any thing')).toBe('as it was');
    expect(of('the rest of a list')).toBe('as it was');
    expect(of('pairs, places left out, and what stands for nothing')).toContain('{ 1: b = 9, 2: c}');
  });
});
