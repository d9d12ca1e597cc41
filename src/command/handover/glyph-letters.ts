// Letters of the glyphs of an embedded font, from the table that every tagged PDF has to carry for reading aids.

/** Letters of a run of glyph numbers, four hexadecimal digits each; one without a letter becomes the sign for that. */
export type GlyphLetters = (codes: string) => string;

/** Reads a ToUnicode table (ISO 32000-1, 9.10.3): single glyphs and ranges. */
export function glyphLetters(table: string): GlyphLetters {
  const letters = new Map<number, string>();
  for (const [, part = ''] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/gu)) {
    for (const [, code = '', text = ''] of part.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f\s]*)>/giu))
      letters.set(Number.parseInt(code, 16), lettersIn(text));
  }
  for (const [, part = ''] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/gu)) addRanges(part, letters);
  return (codes) =>
    (codes.match(/.{4}/gu) ?? []).map((code) => letters.get(Number.parseInt(code, 16)) ?? '\uFFFD').join('');
}

function addRanges(part: string, letters: Map<number, string>): void {
  const ranges = part.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f]+)>\s*(?:\[([^\]]*)\]|<([0-9a-f\s]*)>)/giu);
  for (const [, from = '', to = '', list, first] of ranges) {
    const start = Number.parseInt(from, 16);
    if (list !== undefined) {
      const each = list.match(/<[^>]*>/gu) ?? [];
      each.forEach((text, index) => letters.set(start + index, lettersIn(text.slice(1, -1))));
      continue;
    }
    const base = Number.parseInt(first ?? '0', 16);
    for (let code = start; code <= Number.parseInt(to, 16); code += 1)
      letters.set(code, String.fromCodePoint(base + code - start));
  }
}

/** UTF-16 in hexadecimal. */
function lettersIn(hex: string): string {
  const units = hex.replaceAll(/\s+/gu, '').match(/.{4}/gu) ?? [];
  return String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16)));
}
