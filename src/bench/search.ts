// The search of a binder: a field, and a list of what was found, each with what it is and where. Asks nothing of any network.
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { part } from './elements.ts';
import { readSearchData } from './search-data.ts';
import { finder, type Find, type Found } from './search-index.ts';
import { wordsOfQuery } from './search-words.ts';

/** So many are shown; who wants others writes another word. */
const most = 40;
/** So many characters of the words around what was found. */
const around = 90;

const bench = document.querySelector<HTMLElement>('#bench');
const data = readSearchData(window.splitpinSearch);
if (bench !== null && data !== undefined) begin(bench, () => finder(data));

function begin(bench: HTMLElement, make: () => Find): void {
  let find: Find | undefined;
  const field = part('input');
  field.type = 'search';
  field.id = 'look-for';
  field.autocomplete = 'off';
  field.spellcheck = false;
  const label = part('label', 'Words, part number, frame number or size');
  label.htmlFor = field.id;
  const count = part('p', '', 'count');
  count.setAttribute('role', 'status');
  const list = part('ol', '', 'found');
  const show = (): void => {
    keepInAddress(field.value);
    if (wordsOfQuery(field.value).length === 0) {
      count.textContent = '';
      list.replaceChildren();
      return;
    }
    find ??= make();
    const found = find(field.value);
    count.textContent = countText(found.length);
    list.replaceChildren(...found.slice(0, most).map((one) => itemOf(one, field.value)));
  };
  field.addEventListener('input', show);
  bench.append(label, field, count, list);
  bench.hidden = false;
  document.querySelector('#page h1')?.after(bench);
  field.value = fromAddress();
  if (field.value !== '') show();
}

function countText(count: number): string {
  if (count === 0) return 'Nothing is found. Try the beginning of a word, or fewer words.';
  if (count > most) return `${String(count)} found; the best ${String(most)} are shown.`;
  return count === 1 ? '1 found.' : `${String(count)} found.`;
}

function itemOf({ kind, title, file, words }: Found, query: string): HTMLElement {
  const item = part('li');
  const link = part('a', title);
  link.href = file;
  item.append(link, ' ', part('span', kind, 'about'));
  const shown = excerpt(words, query);
  if (shown !== '') item.append(part('p', shown, 'words'));
  return item;
}

/** How the words begin (the date of a record, the number of a part), and those around the first one that was looked for. */
function excerpt(words: string, query: string): string {
  const small = words.toLowerCase();
  const places = wordsOfQuery(query).map((word) => small.indexOf(word.slice(0, 5)));
  const first = Math.min(...places.filter((place) => place >= 0), words.length);
  const isNear = first === words.length || first < (around * 2) / 3;
  const start = isNear ? 0 : small.lastIndexOf(' ', first - around / 4) + 1;
  const end = start + around < words.length ? words.lastIndexOf(' ', start + around) : words.length;
  const cut = words.slice(start, end > start ? end : start + around);
  const head = isNear ? '' : `${words.slice(0, words.indexOf(';') + 1)} … `;
  return `${head}${cut}${end < words.length ? ' …' : ''}`;
}

/** What is looked for stands in the address after the sign `#`, so that going back comes back to it. */
function keepInAddress(text: string): void {
  try {
    history.replaceState(null, '', text === '' ? '#' : `#for=${encodeURIComponent(text)}`);
  } catch {
    // Some browsers keep the address of a file as it is; then going back begins anew.
  }
}

function fromAddress(): string {
  const given = /^#for=(.*)$/u.exec(location.hash)?.[1];
  if (given === undefined) return '';
  try {
    return decodeURIComponent(given);
  } catch {
    return '';
  }
}
