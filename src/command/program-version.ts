// Which program this is: its version, and a fingerprint that changes with any line of code, content or template.
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { hashOf } from '../cache/hash.ts';
import { packageFolder } from '../disk.ts';

/** Set by tools/bundle.ts in the compiled program. */
declare const SPLITPIN_PROGRAM: string | undefined;

export function programVersion(): string {
  const text = readFileSync(join(packageFolder(), 'package.json'), 'utf8');
  return /"version": "([^"]+)"/.exec(text)?.[1] ?? '';
}

/** Fingerprint of the compiled program; of the sources' sizes and times while developing. */
export function programHash(): string {
  if (typeof SPLITPIN_PROGRAM === 'string') return SPLITPIN_PROGRAM;
  const parts = ['src', 'content', 'templates', 'shared'].flatMap((folder) => stamps(join(packageFolder(), folder)));
  return hashOf(parts.join('\n'));
}

function stamps(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((each) => {
    const path = join(folder, each.name);
    if (each.isDirectory()) return stamps(path);
    const stat = statSync(path);
    return [path + ' ' + String(stat.size) + ' ' + String(stat.mtimeMs)];
  });
}
