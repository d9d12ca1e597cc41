// Words in the running texts of records that look like a person's: addresses, telephone numbers, e-mail, names with a title.
import { openTexts } from '../book/open-text.ts';
import { privateWords } from '../book/private-words.ts';
import type { Records } from '../records/model.ts';
import type { SourceFile } from '../source/files.ts';
import type { PrivateValue } from './private-value.ts';

/** Each word once, at its first place; comments of the files are looked through too, for they go with them. */
export function privateWordsIn(records: Records, files: readonly SourceFile[]): readonly PrivateValue[] {
  const open = openTexts(records, records.jobs);
  const comments = files.flatMap(({ file, text }) =>
    [...text.matchAll(/(?:^|\s)#\s?(.*)$/gmu)].map((match) => ({ text: match[1] ?? '', at: { file, path: [] } })),
  );
  const found = new Map<string, PrivateValue>();
  for (const { text, at } of [...open, ...comments]) {
    for (const word of privateWords(text)) {
      const value: PrivateValue = { what: word.gives, text: word.text, at };
      if (!found.has(word.text)) found.set(word.text, value);
    }
  }
  return [...found.values()];
}
