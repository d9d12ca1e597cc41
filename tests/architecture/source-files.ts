// The files of src/ with what they import, for the tests of the architecture.
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

export interface SourceText {
  /** Path below the project, with forward slashes: `src/views/list.ts`. */
  readonly file: string;
  readonly text: string;
  readonly imports: readonly string[];
}

const statement =
  /^\s*(?:import|export)\b[^;]*?\bfrom\s*['"]([^'"]+)['"]|^\s*import\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]/gm;

/** What a text imports, as written: `./list.ts`, `node:fs`, `zod`. */
export function importsOf(text: string): readonly string[] {
  return [...text.matchAll(statement)].map((match) => match[1] ?? match[2] ?? match[3] ?? '');
}

/** All TypeScript files below a folder of the project. */
export function sourceFiles(folder: string): readonly SourceText[] {
  const names = readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' });
  const files = names
    .map((name) => posix.join(folder, name.replaceAll('\\', '/')))
    .filter((name) => name.endsWith('.ts'));
  return files.toSorted().map((file) => {
    const text = readFileSync(join(root, file), 'utf8');
    return { file, text, imports: importsOf(text) };
  });
}

/** Where a relative import leads, below the project; undefined for packages and `node:`. */
export function targetOf(file: string, specifier: string): string | undefined {
  return specifier.startsWith('.') ? posix.join(posix.dirname(file), specifier) : undefined;
}

/** Without comments and strings, so that words in them are not taken for code. */
export function codeOnly(text: string): string {
  return text
    .replaceAll(/\/\*[\s\S]*?\*\//g, '')
    .replaceAll(/(^|[^:'"`\\])\/\/[^\n]*/g, '$1')
    .replaceAll(/'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"/g, "''");
}
