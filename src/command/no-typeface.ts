// What is said of characters that none of our typefaces has: which they are, and what stands in their place.

/** A line for a person: the character, its code point as it is printed, and where. */
export function noTypeface(sheet: string, characters: readonly string[]): string {
  const named = characters.map((character) => `“${shown(character)}” (${codePoint(character)})`);
  return `${sheet}: no typeface has ${named.join(', ')}; the code point is printed in its place`;
}

function codePoint(character: string): string {
  return 'U+' + (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
}

/** A character that is no sign by itself is named by its code point alone. */
function shown(character: string): string {
  return /[\p{C}\p{Z}]/u.test(character) ? '' : /\p{M}/u.test(character) ? '◌' + character : character;
}
