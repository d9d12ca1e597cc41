// Where the project keeps what it ships beside its code: found by walking up, since compiled code lies elsewhere than the sources.
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The absolute path of a folder or file of the project, such as `templates`. Throws when the installation lacks it. */
export function ownFolder(path: string): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  for (;;) {
    const candidate = join(folder, path);
    if (existsSync(candidate) && existsSync(join(folder, 'package.json'))) return candidate;
    const above = dirname(folder);
    if (above === folder) throw new Error(`The installation lacks ${path}.`);
    folder = above;
  }
}
