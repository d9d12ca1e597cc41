// A sentence that tells what to write: the keys in it, `page:`, stand out as what is typed.
import type { Text } from '../../sheet/sheet.ts';

/** The text with what stands between backticks as typed words; a text without any stays as it is. */
export function writtenKeys(text: string): Text {
  const pieces = text.split('`');
  if (pieces.length < 3) return text;
  return pieces.flatMap((piece, index) =>
    piece === '' ? [] : [index % 2 === 1 && index < pieces.length - 1 ? { kind: 'code' as const, text: piece } : piece],
  );
}
