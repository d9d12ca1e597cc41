// Code that V8 compiled before: a script that is loaded with it need not be compiled again at every start. The compiled program only.
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname } from 'node:path';
import { Script } from 'node:vm';

/** A script that has run, and what it gives. */
export interface Loaded {
  readonly script: Script;
  readonly given: unknown;
}

/** Where code for a script is kept: for this very release of Node on this kind of computer. Others do without. */
export function keptCodeOf(file: string): string {
  return `${file}.${process.version}-${process.platform}-${process.arch}.kept`;
}

/** What a CommonJS script gives. Kept code that is not for it, or was made under other flags of V8, is passed over by V8 itself. */
export function loadScript(file: string, kept?: Uint8Array): Loaded {
  const source = `(function (exports, require, module, __filename, __dirname) {${readFileSync(file, 'utf8')}\n})`;
  // The name goes into the kept code, which goes to other computers: so it is no path.
  const filename = basename(file);
  const script = new Script(source, kept === undefined ? { filename } : { filename, cachedData: kept });
  const module: { exports: unknown } = { exports: {} };
  script.runInThisContext()(module.exports, createRequire(file), module, file, dirname(file));
  return { script, given: module.exports };
}

/** The same, with the code that is kept for it if there is any; later releases of Node keep code of their own for what is required. */
export function loadKept(file: string): unknown {
  const kept = keptCodeOf(file);
  return existsSync(kept) ? loadScript(file, readFileSync(kept)).given : createRequire(file)(file);
}
