// Elements made by a script of the site: text is only ever text.
/// <reference lib="dom" />

/** An element with text. */
export function part<Name extends keyof HTMLElementTagNameMap>(
  tag: Name,
  text = '',
  className = '',
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(tag);
  element.textContent = text;
  if (className !== '') element.className = className;
  return element;
}

/** A list of texts. */
export function listOf(texts: readonly string[], className = ''): HTMLUListElement {
  const list = part('ul', '', className);
  list.append(...texts.map((text) => part('li', text)));
  return list;
}

/** A button that does one thing. */
export function button(words: string, press: () => void): HTMLButtonElement {
  const made = part('button', words);
  made.type = 'button';
  made.addEventListener('click', press);
  return made;
}
