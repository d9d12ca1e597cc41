// The finished package looked through, file by file: texts, pages, PDFs with all that is in them, notes in pictures, names of files.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { manualBase, manualFile } from '../../compose/manual-pages.ts';
import { packageFolder } from '../../disk.ts';
import { lookFor } from '../../handover/look-through.ts';
import { binderFolder, formatsFolder } from '../../handover/package-layout.ts';
import type { PrivateValue } from '../../handover/private-value.ts';
import { ownWords } from './own-words.ts';
import { pdfWords } from './pdf-words.ts';
import { pictureNotes } from './picture-notes.ts';
import { placeInWords } from './place-in-words.ts';

export interface LookedThrough {
  /** Sentences, one for each thing that must not be there; the private value itself is not in them. */
  readonly found: readonly string[];
  /** Sentences on what cannot be told. */
  readonly notTold: readonly string[];
}

/** Pages, scripts and lists that are made of the program's own text, whatever machine it is. */
function isOurs(file: string): boolean {
  if (file.startsWith(`${formatsFolder}/`)) return true;
  const inside = file.startsWith(`${binderFolder}/`) ? file.slice(binderFolder.length + 1) : '';
  return (
    /^(?:assets|calculations|tables)\/|^(?:calculations|tables)\.html$|\.schema\.json$/u.test(inside) ||
    manualPages().has(manualBase(inside))
  );
}

let pages: ReadonlySet<string> | undefined;

function manualPages(): ReadonlySet<string> {
  pages ??= new Set(
    readdirSync(join(packageFolder(), 'content/pages')).map((file) => manualFile(file.replace(/\.md$/u, ''))),
  );
  return pages;
}

const pictures = /\.(?:jpe?g|png|webp|heic|heif)$/iu;
/** Typefaces are the program's own, byte for byte. */
const typefaces = /\.(?:woff2|ttf)$/iu;

/** Looks through every file. */
export async function lookThroughPackage(
  folder: string,
  files: readonly string[],
  hunted: readonly PrivateValue[],
  progress: (done: number) => void,
): Promise<LookedThrough> {
  const looker = lookFor(hunted, hunted.length === 0 ? '' : ownWords());
  const found: string[] = [];
  for (const [index, file] of files.entries()) {
    progress(index);
    found.push(
      ...looker.inName(file).map(({ value }) => `${file}: its name holds ${value.what} (${placeInWords(value.at)})`),
    );
    if (typefaces.test(file)) continue;
    const bytes = readFileSync(join(folder, file));
    if (pictures.test(file)) found.push(...pictureNotes(bytes).map((note) => `${file}: it carries ${note}`));
    const text = file.endsWith('.pdf')
      ? await pdfWords(bytes)
      : bytes.toString(pictures.test(file) ? 'latin1' : 'utf8');
    if (text === undefined) found.push(`${file}: it cannot be looked through as a whole`);
    else
      found.push(
        ...looker
          .inText(file, text, isOurs(file))
          .map(({ value }) => `${file}: it holds ${value.what} (${placeInWords(value.at)})`),
      );
  }
  const notTold = looker.notTold.map(
    ({ text, what }) =>
      `“${text}” (${what}) is also a word of this program’s own pages; the records were looked through for it, those pages cannot be.`,
  );
  return { found, notTold };
}
