// The page of the next test: outcomes are tried and the causes and tests follow at once. Without a script the page is a plain table.
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { answer, wordsOf, type BenchAnswer } from './next-test-answer.ts';
import { readBenchData, type BenchData, type BenchTest } from './next-test-data.ts';
import { silent } from '../calc/faults/odds-table.ts';

const bench = document.querySelector<HTMLElement>('#bench');
const data = readBenchData(window.splitpinBench);
if (bench !== null && data !== undefined) begin(bench, data);

function begin(bench: HTMLElement, data: BenchData): void {
  const chosen = new Map<string, string>();
  for (const ref of data.seen) chosen.set(ref.split('=')[0] ?? '', ref.split('=')[1] ?? '');
  const result = part('div', '');
  result.setAttribute('role', 'status');
  const selects = new Map<string, HTMLSelectElement>();
  const choose = (test: string, outcome: string): void => {
    if (outcome === '') chosen.delete(test);
    else chosen.set(test, outcome);
    const select = selects.get(test);
    if (select !== undefined) select.value = outcome;
    show();
  };
  const show = (): void => {
    const seen = [...chosen].map(([test, outcome]) => `${test}=${outcome}`);
    result.replaceChildren(...answerParts(answer(data, seen), choose), chosenPart(data, chosen, choose));
  };
  const again = button('As the records say', () => {
    chosen.clear();
    for (const select of selects.values()) select.value = '';
    for (const ref of data.seen) choose(ref.split('=')[0] ?? '', ref.split('=')[1] ?? '');
    show();
  });
  const pick = (title: string, tests: readonly BenchTest[]): HTMLElement => {
    const details = part('details', '');
    details.append(part('summary', title), ...tests.map((test) => selectFor(test, chosen, choose, selects)));
    return details;
  };
  bench.append(
    part('h2', 'Try outcomes'),
    part(
      'p',
      'Choose what was seen, or press an outcome of a test below; nothing is kept and nothing leaves this page.',
    ),
    pick(
      'What is noticed',
      data.tests.filter((test) => test.notice),
    ),
    pick(
      'What was tried',
      data.tests.filter((test) => !test.notice),
    ),
    again,
    result,
  );
  bench.hidden = false;
  document.querySelector('#page h1')?.after(wayToBench());
  show();
}

function wayToBench(): HTMLElement {
  const link = document.createElement('a');
  link.href = '#bench';
  link.textContent = 'Try outcomes on this page';
  const line = part('p', '', 'to-print');
  line.append(link);
  return line;
}

function selectFor(
  test: BenchTest,
  chosen: ReadonlyMap<string, string>,
  choose: (test: string, outcome: string) => void,
  selects: Map<string, HTMLSelectElement>,
): HTMLElement {
  const label = part('label', test.name);
  const select = document.createElement('select');
  const options = [['', '—'], ...test.outcomes.map(({ id, words }) => [id, words]), [silent, 'Done, told nothing']];
  for (const [value = '', words = ''] of options) select.add(new Option(words, value));
  select.value = chosen.get(test.id) ?? '';
  select.addEventListener('change', () => choose(test.id, select.value));
  selects.set(test.id, select);
  label.append(select);
  return label;
}

/** What is chosen now, each with a way to take it back. */
function chosenPart(
  data: BenchData,
  chosen: ReadonlyMap<string, string>,
  choose: (test: string, outcome: string) => void,
): HTMLElement {
  const list = part('ul', '');
  for (const [id, saw] of chosen) {
    const item = part('li', `${wordsOf(data, `${id}=${saw}`)} `);
    item.append(button('take back', () => choose(id, '')));
    list.append(item);
  }
  const box = part('div', '');
  box.append(part('h3', chosen.size === 0 ? 'Nothing seen yet' : 'Seen'), list);
  return box;
}

function answerParts(found: BenchAnswer, choose: (test: string, outcome: string) => void): readonly HTMLElement[] {
  if (found.impossible.length > 0) return [part('h3', 'These cannot all be so; look again'), listOf(found.impossible)];
  return [
    ...found.stops.map((stop) => part('p', `WARNING: ${stop}`, 'stop')),
    part('h3', 'What leads, and why'),
    ...found.groups.flatMap(({ group, causes }) => [
      part('h4', group),
      listOf(
        causes.map(
          ({ name, word, why, cure }) => `${name} — ${word}${why === '' ? '' : `: ${why}`}. Usual cure: ${cure}`,
        ),
      ),
    ]),
    ...testsPart('Looks that cost nothing', found.looks, choose),
    ...testsPart('Next', found.next, choose),
    ...found.behind.map((point) =>
      part(
        'p',
        `Look first: ${point}. The engine is past it by what was seen, and the records do not prove it.`,
        'stop',
      ),
    ),
    ...(found.held.length === 0
      ? []
      : [part('h3', 'Held'), listOf(found.held.map(({ name, by }) => `${name}: waits for “${by}”`))]),
    ...(found.apart.length === 0
      ? []
      : [
          part('h3', 'Put off: not to be tried as it stands'),
          listOf(found.apart.map(({ name, off }) => `${name}: ${off}`)),
        ]),
    part('p', 'All strengths are judgement; the maker’s book goes first.'),
  ];
}

function testsPart(
  title: string,
  tests: readonly BenchTest[],
  choose: (test: string, outcome: string) => void,
): readonly HTMLElement[] {
  if (tests.length === 0) return [];
  const list = part('ol', '');
  for (const test of tests) {
    const item = part('li', '');
    const outcomes = part('p', '', 'outcomes');
    for (const { id, words } of test.outcomes) outcomes.append(button(words, () => choose(test.id, id)));
    outcomes.append(button('Done, told nothing', () => choose(test.id, silent)));
    item.append(
      part('strong', test.name),
      part('p', test.how),
      ...test.cautions.map((one) => part('p', one, 'grade')),
      outcomes,
    );
    list.append(item);
  }
  return [part('h3', title), list];
}

function part(tag: string, text: string, className = ''): HTMLElement {
  const element = document.createElement(tag);
  element.textContent = text;
  if (className !== '') element.className = className;
  return element;
}

function listOf(texts: readonly string[]): HTMLElement {
  const list = part('ul', '');
  list.append(...texts.map((text) => part('li', text)));
  return list;
}

function button(words: string, press: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.textContent = words;
  made.addEventListener('click', press);
  return made;
}
