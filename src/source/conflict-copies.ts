// Copies of a file that something else left beside it: file sharing after two people wrote at once, an editor, a merge. Told by their names.

/** What of a name shows a copy: `conflict`, two versions of one file; `left over`, a former state that an editor or a merge kept. */
export type CopyKind = 'conflict' | 'left over';

export interface NamedCopy {
  readonly kind: CopyKind;
  /** The file that it is a copy of, as its name says. */
  readonly of: string;
}

interface Rule {
  readonly kind: CopyKind;
  readonly pattern: RegExp;
  /** Only where the file it would be a copy of stands beside it: the name alone is an ordinary one. */
  readonly besideOnly?: true;
}

/** Each matches what was put into the name; the rest is the name of the file itself. */
const rules: readonly Rule[] = [
  { kind: 'conflict', pattern: / ?[([{][^()[\]{}]*\bconflict(?:ed|ing|s)?\b[^()[\]{}]*[)\]}]/iu },
  { kind: 'conflict', pattern: /[._-](?:sync[._-])?conflict(?:ed)?[._-]\d{6,}[\w-]*/iu },
  { kind: 'left over', pattern: /~\d*$|\.(?:orig|rej|bak|old|tmp|swp|theirs|mine|r\d+)$/iu },
  { kind: 'left over', pattern: /[._](?:BASE|LOCAL|REMOTE|BACKUP)[._]\d+(?=\.)/u },
  { kind: 'conflict', pattern: / ?\(\d{1,3}\)(?=\.[^.]+$)/u, besideOnly: true },
  { kind: 'conflict', pattern: /(?: -)? copy(?: \d{1,3})?(?=\.[^.]+$)/iu, besideOnly: true },
  { kind: 'conflict', pattern: /^copy (?:\(\d{1,3}\) )?of /iu, besideOnly: true },
];

/** What a file’s name says of it, among the names in the same folder; undefined where it is no copy. */
export function namedCopy(name: string, isThere: (name: string) => boolean): NamedCopy | undefined {
  for (const { kind, pattern, besideOnly } of rules) {
    if (!pattern.test(name)) continue;
    const of = name.replace(pattern, '');
    if (of === '' || of === name || (besideOnly === true && !isThere(of))) continue;
    return { kind, of };
  }
  return undefined;
}
