// Puts the files of an example on a disk, beside the machine of the page of formats. The word before a file's name says how.
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Fenced } from './fenced.ts';
import { manualFiles } from './manual-folder.ts';

const pictures = ['photos/frame-number.jpg', 'photos/head-off.png'];

/** Makes the folder, gives it to `use`, and takes it away again. `photos/link.png` in it is a symbolic link. */
export function inFolder<T>(files: readonly Fenced[], use: (folder: string) => T): T {
  const around = mkdtempSync(join(tmpdir(), 'splitpin-manual-'));
  const folder = join(around, 'my-bike');
  try {
    for (const { file, text } of manualFiles().machine) if (!file.startsWith('jobs/')) put(folder, file, text);
    for (const file of pictures) put(folder, file, '');
    if (files.some(({ text }) => text.includes('photos/link.png')))
      symlinkSync('head-off.png', join(folder, 'photos/link.png'));
    for (const example of files) lay(folder, example);
    return use(folder);
  } finally {
    rmSync(around, { recursive: true, force: true });
  }
}

function lay(folder: string, { language, file, text }: Fenced): void {
  if (language === 'calculation' || language === 'closed' || language === 'answers') return;
  if (language === 'none') rmSync(join(folder, 'machine.yaml'));
  else if (language === 'link') symlinkSync(text.trim(), made(folder, file));
  else if (language === 'large') put(folder, file, 'x'.repeat(Number(text)));
  else if (language === 'long') put(folder, file, text.replace(/(\w) \((\d+) times\)/u, repeated));
  else if (language === 'latin1') put(folder, file, Buffer.from(text, 'latin1'));
  else if (language === 'picture') put(folder, file, Buffer.from(text, 'base64'));
  else if (language === 'merge') put(folder, file, text.replaceAll(/^ (?=[<=>]{7})/gmu, ''));
  else if (language === 'patch') patch(folder, file, text);
  else if (language === 'out') beside(dirname(folder), text);
  else put(folder, file, text);
}

/** `x (2001 times)` as so many letters. */
function repeated(_all: string, letter: string, times: string): string {
  return letter.repeat(Number(times));
}

/** What stands before the arrow in the file of the page of formats becomes what stands after it. */
function patch(folder: string, file: string, text: string): void {
  const [from = '', to = ''] = text.trimEnd().split('\n→\n');
  const whole = manualFiles().machine.find((one) => one.file === file)?.text ?? '';
  if (!whole.includes(from)) throw new Error(`the page of formats has no line ${from}`);
  put(folder, file, whole.replace(from, to));
}

/** A file that is there before the output folder is asked for. */
function beside(around: string, text: string): void {
  if (text.trim() !== '') put(around, text.trim(), 'mine');
}

function put(folder: string, file: string, text: string | Buffer): void {
  writeFileSync(made(folder, file), text);
}

function made(folder: string, file: string): string {
  const path = join(folder, file);
  mkdirSync(dirname(path), { recursive: true });
  return path;
}
