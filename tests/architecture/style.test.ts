// The habits that keep the code readable, counted: length, first line, casts, exclamation marks, names.
import { describe, expect, test } from 'vitest';
import { codeOnly, sourceFiles } from './source-files.ts';

const files = sourceFiles('src');
const made = new Set(['src/table/compiled.ts']);
const written = files.filter(({ file }) => !made.has(file) && !/templates?\.ts$/.test(file));

describe('style', () => {
  test('no file is over 300 lines', () => {
    expect(written.length).toBeGreaterThan(100);
    expect(written.filter(({ text }) => text.split('\n').length > 301).map(({ file }) => file)).toEqual([]);
  });
  test('the median file is under 100 lines', () => {
    const lengths = written.map(({ text }) => text.split('\n').length).toSorted((one, other) => one - other);
    expect(lengths[Math.floor(lengths.length / 2)]).toBeLessThan(100);
  });
  test('the first line says the idea', () => {
    const silent = files.filter(({ text }) => !/^(#!.*\n)?\/(\/|\*\*?) ?[\p{L}“"`].{10,}/u.test(text));
    expect(silent.map(({ file }) => `${file}: the first line is a comment that says the idea`)).toEqual([]);
  });
  test('no cast outside src/quantity but `as const`', () => {
    const cast = /[\w)\]}]\s+as\s+(?!const\b)[A-Za-z{[(]/;
    const casting = written.filter(({ file, text }) => {
      if (file.startsWith('src/quantity/')) return false;
      const code = codeOnly(text)
        .replaceAll(/`[^`]*`/g, '``')
        .replaceAll(/\b(import|export)\b[^;]*?from\s*''/g, '')
        .replaceAll(/\bexport\s+\*\s+as\s+\w+/g, '');
      return cast.test(code.replaceAll(/\bas const satisfies\b/g, 'as const'));
    });
    expect(casting.map(({ file }) => `${file}: shape the data instead of casting it`)).toEqual([]);
  });
  test('casts inside src/quantity stay few', () => {
    const casts = files
      .filter(({ file }) => file.startsWith('src/quantity/'))
      .flatMap(({ text }) => [...codeOnly(text).matchAll(/[\w)\]}]\s+as\s+(?!const\b)[A-Z]/g)]);
    expect(casts.length).toBeGreaterThan(0);
    expect(casts.length).toBeLessThanOrEqual(20);
  });
  test('no `any` and no exclamation mark that hushes the compiler', () => {
    const hushed = written.filter(({ text }) => {
      const code = codeOnly(text).replaceAll(/`[^`]*`/g, '``');
      return /:\s*any\b|<any>|\bas any\b/.test(code) || /[\w)\]]!(?=[.,;)\]\s[(])(?!\s*=)/.test(code);
    });
    expect(hushed.map(({ file }) => file)).toEqual([]);
  });
  test('names are kebab case and no file is a drawer for everything', () => {
    const names = files.map(({ file }) => file);
    expect(names.filter((name) => !/^[a-z0-9/-]+(\.d)?\.ts$/.test(name))).toEqual([]);
    expect(names.filter((name) => /(^|[/-])(utils?|helpers?|common|managers?|misc)([/.-]|$)/.test(name))).toEqual([]);
  });
  test('functions, not classes; names, not defaults', () => {
    const classes = written.filter(({ text }) => /^\s*(export\s+)?(abstract\s+)?class\s/m.test(codeOnly(text)));
    const defaults = written.filter(({ text }) => /^export default\b/m.test(text));
    expect([...classes, ...defaults].map(({ file }) => file)).toEqual([]);
  });
});
