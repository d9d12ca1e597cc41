// Made by src/tools/browser-scripts.ts from src/bench/log.ts; not edited by hand.
/* oxlint-disable */
'use strict';
(() => {
  // src/bench/elements.ts
  function part(tag, text = '', className = '') {
    const element = document.createElement(tag);
    element.textContent = text;
    if (className !== '') element.className = className;
    return element;
  }

  // src/bench/search-data.ts
  function readSearchData(value) {
    return isSearchData(value) ? value : void 0;
  }
  function isSearchData(value) {
    return (
      typeof value === 'object' &&
      value !== null &&
      'kinds' in value &&
      Array.isArray(value.kinds) &&
      'entries' in value &&
      Array.isArray(value.entries) &&
      'words' in value &&
      Array.isArray(value.words)
    );
  }

  // src/bench/log.ts
  var most = 200;
  var bench = document.querySelector('#bench');
  var data = readSearchData(window.splitpinSearch);
  if (bench !== null && data !== void 0) {
    const record = data.kinds.indexOf('record');
    begin(
      bench,
      data.entries
        .filter(([kind]) => kind === record)
        .map(lineOf)
        .toReversed(),
    );
  }
  function lineOf([, title, file, words]) {
    const [date = '', kind = '', systems = ''] = words.split('; ');
    return { title, file, date, kind, systems: systems.split(' / '), text: `${title} ${words}`.toLowerCase() };
  }
  function begin(bench2, all) {
    const words = part('input');
    words.type = 'search';
    words.autocomplete = 'off';
    const kinds = choices(all.map(({ kind }) => kind));
    const systems = choices(all.flatMap((line) => line.systems));
    const count = part('p', '', 'count');
    count.setAttribute('role', 'status');
    const list = part('ol', '', 'found log-lines');
    const show = () => {
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
    bench2.append(labelled('Words', words), labelled('Kind of work', kinds), labelled('System', systems), count, list);
    bench2.hidden = false;
    document.querySelector('#page h1')?.after(bench2);
  }
  function choices(names) {
    const select = part('select');
    const any = part('option', 'any');
    any.value = '';
    select.append(any, ...[...new Set(names)].sort().map((name) => part('option', name)));
    return select;
  }
  function labelled(words, field) {
    const label = part('label', words);
    label.append(field);
    return label;
  }
  function itemOf({ title, file, date, kind }) {
    const item = part('li', `${date} `);
    const link = part('a', title);
    link.href = file;
    item.append(link, `, ${kind}`);
    return item;
  }
})();
