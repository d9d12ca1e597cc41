// The program's own text: what its pages say whatever the records are. A private word that stands in it cannot be told apart there.
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder } from '../../disk.ts';
import { filesBelow } from './files-below.ts';

/** Code, content and templates in one text. */
export function ownWords(): string {
  const root = packageFolder();
  const folders = ['src', 'dist', 'content', 'templates', 'shared'].filter(
    (folder) => statSync(join(root, folder), { throwIfNoEntry: false })?.isDirectory() === true,
  );
  return folders
    .flatMap((folder) => filesBelow(join(root, folder)).map((file) => join(root, folder, file)))
    .filter((path) => /\.(?:ts|js|mjs|cjs|md|ya?ml|njk|csv|css)$/u.test(path))
    .map((path) => readFileSync(path, 'utf8'))
    .join('\n');
}
