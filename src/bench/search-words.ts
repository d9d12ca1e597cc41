// How texts become words that are looked for: small letters without accents, numbers of parts also in one piece, sizes however they are written.

/** Apart at everything that is neither letter nor digit; a point or comma between digits stays, as a point. */
const parts = /[\p{L}\p{N}]+(?:\.[\p{N}]+)*/gu;

/** Groups that may be one number: letters and digits joined by signs, without a space. */
const joinedNumber = /[\p{L}\p{N}]+(?:[-./][\p{L}\p{N}]+)+/gu;

function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/(\d)\s*[×x*]\s*(?=\d)/gu, '$1 x ')
    .replaceAll(/(\d),(?=\d)/gu, '$1.');
}

/** Words of what is to be found: `48-123.5A` can be found as its pieces and in one piece. */
export function wordsIn(text: string): readonly string[] {
  const small = plain(text);
  const joined = [...small.matchAll(joinedNumber)].map(([all]) => all.replaceAll(/[-./]/gu, ''));
  const hasDigit = joined.filter((word) => /\d/u.test(word));
  return [...wordsOfQuery(text), ...hasDigit];
}

/** Words of what is typed. The sign between the numbers of a size says nothing by itself. */
export function wordsOfQuery(text: string): readonly string[] {
  return [...plain(text).matchAll(parts)].map(([word]) => word).filter((word) => word !== 'x');
}

/** What is typed, in each dialect: as it stands, and with each pair of words changed the one way or the other. */
export function inBothDialects(text: string, pairs: readonly (readonly [string, string])[]): readonly string[] {
  const query = ` ${wordsOfQuery(text).join(' ')} `;
  const others = pairs.flatMap(([uk, us]) => [swapped(query, uk, us), swapped(query, us, uk)]);
  return [...new Set([query, ...others.filter((other) => other !== undefined)])].map((one) => one.trim());
}

function swapped(query: string, from: string, to: string): string | undefined {
  const wanted = ` ${from.toLowerCase()} `;
  return query.includes(wanted) ? query.replace(wanted, ` ${to.toLowerCase()} `) : undefined;
}
