// A record of an earlier form as this program writes it: one small edit a step, every other byte as it was.
import { formatVersion } from '../records/kinds/format.ts';
import { readDocument } from '../source/document.ts';
import type { SourceFile } from '../source/files.ts';
import { editRecord } from './edit-record.ts';

export type Upgrade =
  /** Nothing to do, or no record that carries a version. */
  | { readonly kind: 'as it is' }
  | { readonly kind: 'changed'; readonly text: string; readonly says: string }
  /** It cannot be done, and why. */
  | { readonly kind: 'cannot'; readonly why: string };

/** Records that carry the version of the format; a job record goes by that of its machine. */
const carries = /^(?:machine|instruments|workshop|wiring)\.yaml$|^maker\/.+\.ya?ml$/u;

/** What `upgrade` makes of one file. */
export function upgradeRecord(record: SourceFile): Upgrade {
  if (!carries.test(record.file)) return { kind: 'as it is' };
  const data = readDocument(record).value?.data;
  if (data === undefined) return { kind: 'cannot', why: 'it cannot be read: splitpin check says why' };
  if (!Object.hasOwn(data, 'splitpin')) return versionAdded(record);
  const written = data['splitpin'];
  const words = typeof written === 'string' ? written.trim() : '';
  if (words === String(formatVersion)) return { kind: 'as it is' };
  if (/^\d+$/u.test(words) && Number(words) > formatVersion)
    return {
      kind: 'cannot',
      why: `its format ${words} is newer than this program, which knows ${String(formatVersion)}`,
    };
  if (!/^(?:v|version )?1(?:\.0+)?$/iu.test(words) && words !== '' && words !== '?')
    return { kind: 'cannot', why: `“${words}” is no version of the format that there ever was` };
  const { value, problems } = editRecord(record, [
    { kind: 'set', path: [], key: 'splitpin', value: String(formatVersion) },
  ]);
  return problems.length > 0
    ? {
        kind: 'cannot',
        why: `the line “splitpin” cannot be changed by itself; write splitpin: ${String(formatVersion)}`,
      }
    : {
        kind: 'changed',
        text: value,
        says: `splitpin: ${words === '' ? 'nothing' : words} becomes splitpin: ${String(formatVersion)}`,
      };
}

/** The version goes before the first key, below a mark of the byte order and comments that stand there. */
function versionAdded(record: SourceFile): Upgrade {
  const line = `splitpin: ${String(formatVersion)}`;
  const end = /\r\n|\r|\n/u.exec(record.text)?.[0] ?? '\n';
  const head = /^\ufeff?(?:[ \t]*(?:#[^\r\n]*)?(?:\r\n|\r|\n)|---[ \t]*(?:\r\n|\r|\n))*/u.exec(record.text)?.[0] ?? '';
  const text = record.text.slice(0, head.length) + line + end + record.text.slice(head.length);
  return { kind: 'changed', text, says: `${line} is added before the first key` };
}

/** The comment by which an editor finds a schema, on a line of its own at the top; undefined when there is one already. */
export function withFirstComment(record: SourceFile, comment: string): string | undefined {
  if (/^\ufeff?(?:---[ \t]*[\r\n]+)?[ \t]*#[ \t]*yaml-language-server:/u.test(record.text)) return undefined;
  const end = /\r\n|\r|\n/u.exec(record.text)?.[0] ?? '\n';
  // In a job record the keys begin below the three hyphens.
  const head = /^\ufeff?(?:---[ \t]*(?:\r\n|\r|\n))?/u.exec(record.text)?.[0] ?? '';
  return record.text.slice(0, head.length) + comment + end + record.text.slice(head.length);
}
