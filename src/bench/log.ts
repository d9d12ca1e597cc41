// A long log narrowed as a person types or chooses: by words, kind of work and system, over all its years. Works on what the search knows.
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { part } from './elements.ts';
import { readSearchData, type Entry } from './search-data.ts';

/** So many are listed; who wants the others narrows further. */
const most = 200;

/** A record: its first words are its date, its kind and its systems (compose/job-words.ts). */
interface Line {
  readonly title: string;
  readonly file: string;
  readonly date: string;
  readonly kind: string;
  readonly systems: readonly string[];
  readonly text: string;
}

const bench = document.querySelector<HTMLElement>('#bench');
const data = readSearchData(window.splitpinSearch);
if (bench !== null && data !== undefined) {
  // A thing that a record names leads to that record as well; records are a kind of their own.
  const record = data.kinds.indexOf('record');
  begin(
    bench,
    data.entries
      .filter(([kind]) => kind === record)
      .map(lineOf)
      .toReversed(),
  );
}

function lineOf([, title, file, words]: Entry): Line {
  const [date = '', kind = '', systems = ''] = words.split('; ');
  return { title, file, date, kind, systems: systems.split(' / '), text: `${title} ${words}`.toLowerCase() };
}

function begin(bench: HTMLElement, all: readonly Line[]): void {
  const words = part('input');
  words.type = 'search';
  words.autocomplete = 'off';
  const kinds = choices(all.map(({ kind }) => kind));
  const systems = choices(all.flatMap((line) => line.systems));
  const count = part('p', '', 'count');
  count.setAttribute('role', 'status');
  const list = part('ol', '', 'found log-lines');
  const show = (): void => {
    const asked = words.value.toLowerCase().split(/\s+/u).filter(Boolean);
    if (asked.length === 0 && kinds.value === '' && systems.value === '') {
      count.textContent = '';
      list.replaceChildren();
      return;
    }
    const found = all.filter(
      ({ text, kind, systems: of }) =>
        (kinds.value === '' || kind === kinds.value) &&
        (systems.value === '' || of.includes(systems.value)) &&
        asked.every((word) => text.includes(word)),
    );
    const more = found.length > most ? `; the newest ${String(most)} are listed` : '';
    count.textContent = `${String(found.length)} of ${String(all.length)} records${more}`;
    list.replaceChildren(...found.slice(0, most).map(itemOf));
  };
  for (const field of [words, kinds, systems]) field.addEventListener('input', show);
  bench.append(labelled('Words', words), labelled('Kind of work', kinds), labelled('System', systems), count, list);
  bench.hidden = false;
  document.querySelector('#page h1')?.after(bench);
}

function choices(names: readonly string[]): HTMLSelectElement {
  const select = part('select');
  const any = part('option', 'any');
  any.value = '';
  select.append(any, ...[...new Set(names)].sort().map((name) => part('option', name)));
  return select;
}

function labelled(words: string, field: HTMLElement): HTMLElement {
  const label = part('label', words);
  label.append(field);
  return label;
}

function itemOf({ title, file, date, kind }: Line): HTMLElement {
  const item = part('li', `${date} `);
  const link = part('a', title);
  link.href = file;
  item.append(link, `, ${kind}`);
  return item;
}
