// Where `upgrade` keeps what it replaces, and how it puts the schemas of editors beside the records.
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { writeWhole } from './write-whole.ts';

/** Hidden from the reader of records, as everything is whose name begins with a point; a second one of a day gets a number. */
export function freeBackup(machine: string, day: string): string {
  for (let number = 1; ; number += 1) {
    const name = `.before-upgrade/${day}${number === 1 ? '' : `-${String(number)}`}`;
    if (!existsSync(join(machine, name))) return name;
  }
}

/** Writes the schemas, each whole, over those of an earlier program. */
export function putSchemas(machine: string, schemas: Readonly<Record<string, string>>): void {
  for (const [file, text] of Object.entries(schemas)) {
    const path = join(machine, file);
    mkdirSync(dirname(path), { recursive: true });
    const was = existsSync(path) ? readFileSync(path, 'utf8') : undefined;
    if (was !== text) writeWhole(path, text, was);
  }
}
