// One job as one file for a telephone: style and script stand inside and are allowed by their hash, everything else is forbidden.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Grade } from '../sheet/sheet.ts';
import { renderTemplate } from './engine.ts';
import { ownFolder } from './own-folder.ts';
import { script } from './scripts/phone.ts';
import { withVisibleSigns } from './visible-signs.ts';

export interface PhonePage {
  readonly title: string;
  readonly machine: string;
  /** Machine, frame, date of the records, in one line. */
  readonly about: string;
  readonly language: string;
  /** What goes home with the answers, as JSON. */
  readonly carried: string;
  readonly parts: readonly PhonePart[];
}
/** One sheet of the job. */
export interface PhonePart {
  readonly title: string;
  readonly lots: readonly PhoneLot[];
}
/** What is asked of one thing. */
export interface PhoneLot {
  readonly step: string;
  readonly asks: string;
  /** Standard, limit and last reading. */
  readonly about: string;
  readonly caution?: { readonly grade: Grade; readonly text: string } | undefined;
  readonly fields: readonly PhoneField[];
}
/** Texts that are not there are empty. */
export interface PhoneField {
  /** Id of the blank. */
  readonly id: string;
  /** Id in the page. */
  readonly place: string;
  readonly kind: 'value' | 'tick' | 'text';
  /** What is asked, whole. */
  readonly asks: string;
  /** What is asked beside the words of its lot. */
  readonly label: string;
  readonly unit: string;
  readonly limit: string;
  readonly last: string;
  readonly given: string;
}

/** The whole HTML. Pure: the same page gives the same text. */
export function renderPhonePage(page: PhonePage): string {
  const style = readFileSync(ownFolder('templates/phone.css'), 'utf8');
  const policy = [
    "default-src 'none'",
    `style-src '${hashFor(style)}'`,
    `script-src '${hashFor(script)}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  const parts = page.parts.map((part) => ({ ...part, lots: part.lots.map(forTemplate) }));
  // Style and script, which are allowed by their hashes, have no such signs.
  return withVisibleSigns(renderTemplate('phone.njk', { page: { ...page, parts }, style, script, policy }));
}

/** A text allowed by what it is, and not by where it comes from (Content Security Policy, level 2). */
function hashFor(text: string): string {
  return 'sha256-' + createHash('sha256').update(text).digest('base64');
}

/** A lot of one field needs no frame round it: its words are the field's own. */
function forTemplate(lot: PhoneLot): PhoneLot & { readonly alone: boolean } {
  return { caution: undefined, ...lot, alone: lot.fields.length === 1 };
}
