// The manual pages, and the folder that the page of formats adds up to.
import { readFileSync } from 'node:fs';
import type { Asset, SourceFile } from '../../src/source/files.ts';
import { fenced, type Fenced } from './fenced.ts';

/** A page of content/pages. */
export function manualPage(name: string): string {
  return readFileSync(new URL(`../../content/pages/${name}`, import.meta.url), 'utf8');
}

/** Examples of the page of formats that are whole files. */
export function formatExamples(): readonly Fenced[] {
  return fenced(manualPage('formats.md')).filter((example) => example.language !== '');
}

/** Pictures that the examples name. */
export const manualAssets: readonly Asset[] = ['photos/frame-number.jpg', 'photos/head-off.png'].map((file) => ({
  file,
  absolute: `/nowhere/${file}`,
  size: 1,
  modified: 1,
}));

/** The examples as files, those of content apart. */
export function manualFiles(): { readonly machine: readonly SourceFile[]; readonly content: readonly SourceFile[] } {
  const files = formatExamples().map(({ file, text }) => ({ file, text }));
  return {
    machine: files.filter(({ file }) => !file.startsWith('content/')),
    content: files.filter(({ file }) => file.startsWith('content/')),
  };
}
