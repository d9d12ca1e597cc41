// Things on a page by what a person sees of them, as expressions for Firefox.

const quoted = (words: string): string => JSON.stringify(words);

/** All that a selector gives and that is seen. */
export function seenOf(selector: string): string {
  return `[...document.querySelectorAll(${quoted(selector)})].filter((one) => one.checkVisibility())`;
}

/** The words of each of them. */
export function wordsOf(selector: string): string {
  return `${seenOf(selector)}.map((one) => one.innerText.trim().replaceAll(/\\s+/gu, ' '))`;
}

/** The first of a selector with just these words. */
export function named(selector: string, words: string): string {
  return `${seenOf(selector)}.find((one) => one.innerText.trim() === ${quoted(words)})`;
}

/** The field that a label with these words belongs to. */
export function field(label: string): string {
  return `${seenOf('label')}.find((one) => one.innerText.trim().startsWith(${quoted(label)}))?.control`;
}

/** An answer in a list to choose from. */
export function choice(label: string, value: string): string {
  return `[...(${field(label)}?.options ?? [])].find((one) => one.value === ${quoted(value)})`;
}

export function byId(id: string): string {
  return `document.getElementById(${quoted(id)})`;
}
