// The numbers of steps are permanent: one that is put in later moves no other, and none has the number of another.
import { describe, expect, test } from 'vitest';
import { readContent } from '../../src/records/read-content.ts';
import { stepNumber } from '../../src/records/step-numbers.ts';
import { contentWith } from '../views/binder.ts';

/** The numbers of the steps of a procedure with these, and what is wrong with them. */
function numbered(steps: readonly string[]) {
  const lines = steps.map((step) => `  - {${step}}`).join('\n');
  const text = `---\nprocedure: mine\ntitle: Mine\nsteps:\n${lines}\n---\n`;
  const { value, problems } = readContent([{ file: 'content/procedures/mine.md', text }]);
  const all = value.procedures.get('mine')?.steps ?? [];
  return { numbers: all.map((step) => stepNumber(all, step)), problems };
}

describe('numbers of steps', () => {
  test('a step that carries its number moves no other', () => {
    const { numbers, problems } = numbered(['do: One', 'do: Between, number: 4', 'do: Two', 'do: Three']);
    expect([numbers, problems]).toEqual([[1, 4, 2, 3], []]);
  });
  test.each([
    ['of a step that counts', ['do: One', 'do: Between, number: 2', 'do: Two']],
    ['of a step that carries it as well', ['do: One', 'do: A, number: 2', 'do: B, number: 2']],
  ])('the number %s is taken', (_, steps) => {
    const { problems } = numbered(steps);
    expect(problems.map(({ code, at }) => [code, at.path.at(-1)])).toEqual([['id-twice', 'number']]);
  });
  test('in the content of the program the old steps have the numbers that they always had', () => {
    const { procedures } = readContent(contentWith()).value;
    const { steps = [], assembly = [] } = procedures.get('points-and-timing') ?? {};
    const numbers = new Map(
      [...steps, ...assembly].map((step) => [step.do, stepNumber(steps.includes(step) ? steps : assembly, step)]),
    );
    expect(numbers.get('Gap read at full lift, each set, as found')).toBe(2);
    expect(numbers.get('Timing read as found, each cylinder')).toBe(3);
    expect(numbers.get('One drop of oil on the felt, none on the faces')).toBe(3);
  });
});
