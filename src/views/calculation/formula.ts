// A formula as it is read: one line for each part, its own signs set apart from words.
import type { Calculation } from '../../calc/calculation.ts';
import type { Inline, Paragraph } from '../../sheet/sheet.ts';

/** Signs of a calculation, the longest first, so that `V_c` is not taken for `V`. */
function signsOf(one: Calculation): readonly string[] {
  const outputs = Object.values(one.outputs).flatMap((output) => (output.kind === 'quantity' ? [output.symbol] : []));
  const signs = [...Object.values(one.inputs).map((input) => input.symbol), ...outputs];
  return [...new Set(signs)]
    .filter((sign) => /^[\p{L}][\p{L}\p{N}_,₀-₉]*$/u.test(sign))
    .toSorted((a, b) => b.length - a.length);
}

function piece(text: string, signs: readonly string[]): readonly Inline[] {
  const words = text.split(/([\p{L}][\p{L}\d_,₀-₉ₛ′]*)/u);
  return words
    .filter((word) => word !== '')
    .map((word): Inline => (signs.includes(word.replace(/,$/, '')) ? { kind: 'em', text: word } : word));
}

/** The formula as lines of one quote. */
export function formulaBlock(one: Calculation): Paragraph {
  const signs = signsOf(one);
  const parts = one.formula.split(/;\s+/).map((part) => part.trim());
  return { kind: 'quote', paragraphs: parts.map((part) => ({ kind: 'paragraph', text: piece(part, signs) })) };
}
