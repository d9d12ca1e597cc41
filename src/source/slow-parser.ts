// Packages that a good folder never needs: `yaml` knows the place of every value but is nine times slower, gray-matter splits odd heads.
import { createRequire } from 'node:module';
import type grayMatter from 'gray-matter';
import type { Document, LineCounter } from 'yaml';
import { markUnknown } from './bare-unknown.ts';

type YamlPackage = typeof import('yaml');

const require = createRequire(import.meta.url);

/** Loads the package at the first call; a good folder never pays for it. */
export function yamlPackage(): YamlPackage {
  const loaded: YamlPackage = require('yaml');
  return loaded;
}

/** Loads gray-matter at the first head that is not plain. */
export function grayMatterPackage(): typeof grayMatter {
  const loaded: typeof grayMatter = require('gray-matter');
  return loaded;
}

/** A document with places; `lines` turns offsets into 1-based lines and columns of `text`. */
export function parseWithPlaces(text: string): { document: Document; lines: LineCounter } {
  const yaml = yamlPackage();
  const lines = new yaml.LineCounter();
  const document = yaml.parseDocument(markUnknown(text), {
    lineCounter: lines,
    version: '1.2',
    schema: 'failsafe',
    merge: false,
    uniqueKeys: true,
    strict: true,
    stringKeys: true,
    prettyErrors: false,
    logLevel: 'silent',
  });
  return { document, lines };
}
