// The text that the command line prints for a calculation.
import { describe, expect, test } from 'vitest';
import { calculations } from '../../src/calc/list.ts';
import { inputLines, listLines, readGiven, workText } from '../../src/calc/work-text.ts';

const plain = (lines: readonly string[]): string =>
  lines.join('\n').replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');

describe('a calculation as text', () => {
  test('results first, then the working', () => {
    const { lines, doubts } = workText('displacement', ['bore=50 mm', 'stroke = 44.5 mm', 'cylinders=2']);
    expect(doubts).toEqual([]);
    expect(plain(lines)).toContain('displacement: 174.8 cc');
    expect(plain(lines)).toContain('formula: V = π/4');
    expect(plain(lines)).toContain('b, bore = 50 mm');
  });

  test('a torque in three units, published values with their table', () => {
    const text = plain(workText('cover-torque', ['thread=M6', 'class=4.8', 'into=aluminium', 'threads=dry']).lines);
    expect(text).toContain('torque: 4.3 to 5.3 N·m · 0.44 to 0.54 kgf·m · 3.2 to 3.9 lbf·ft');
    expect(text).toMatch(/proof stress of the bolt = 310 MPa \(Strength of bolts/);
  });

  test('what is missing or strange is told, with the values that are wanted', () => {
    expect(workText('displacement', ['bore 50 mm']).doubts[0]?.message).toContain('name=value');
    const missing = workText('displacement', ['bore=50 mm']);
    expect(missing.doubts.map((doubt) => doubt.code)).toContain('calculation-value-missing');
    expect(plain(missing.lines)).toContain('stroke: stroke, mm');
    expect(workText('no-such', []).doubts[0]?.code).toBe('calculation-unknown');
  });

  test('names and values part at the first sign', () => {
    expect(readGiven(['a = b=c', 'x'])).toEqual({ given: { a: 'b=c' }, strange: ['x'] });
  });

  test('every calculation is listed and explains its values', () => {
    expect(listLines()).toHaveLength(calculations.length);
    for (const calculation of calculations)
      expect(inputLines(calculation).length).toBeGreaterThan(Object.keys(calculation.inputs).length);
  });
});
