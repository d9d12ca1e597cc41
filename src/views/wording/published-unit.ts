// Units as the published tables write them, as a book sets them: `N*m`, `kg/m3` and `degC` are how a file is typed.

const greek: Readonly<Record<string, string>> = { mu: 'μ', gamma: 'γ' };

const small: Readonly<Record<string, string>> = { '5': '⁵', '9': '⁹' };

const raised: Readonly<Record<string, string>> = { '2': '²', '3': '³' };

/** A unit behind its number, with the space that belongs before it; nothing for a plain number, which the tables write as `1`, nor where they say what several numbers are. */
export function behindNumber(unit: string): string {
  if (unit === '' || unit === '1' || unit.includes(',')) return '';
  const set = asSet(unit);
  return set === '°' ? set : `\u00a0${set}`;
}

/** The same within any words of a table, such as `setting for 40 N*m` or `Vc 1570 cm3`. */
export function asSet(words: string): string {
  return words
    .replaceAll(/(?<=[\p{L}\d])\*(?=\p{L})/gu, '·')
    .replaceAll(
      /(?<![\p{L}\d])(m|cm|mm|in)([23])(?![\p{L}\d])/gu,
      (_, unit: string, power: string) => unit + (raised[power] ?? ''),
    )
    .replaceAll(/(?<!\p{L})deg([CF])(?!\p{L})/gu, '°$1')
    .replaceAll(/^deg$/gu, '°')
    .replaceAll(/(?<=\d) deg(?!\p{L})/gu, '°')
    .replaceAll(/(?<=\d) ([CF])(?![\p{L}\d])/gu, '\u00a0°$1')
    .replaceAll(/(?<=(?:^| ))-(?=\d)/gu, '−')
    .replaceAll(/(?<![\p{L}\d.])1e-([59])(?!\d)/gu, (_, power: string) => `10⁻${small[power] ?? ''}`)
    .replaceAll(/(?<=\d) x (?=\d)/gu, ' × ')
    .replaceAll(/(?<!\p{L})(mu|gamma)(?= \d)/gu, (word) => greek[word] ?? word);
}
