// The sheets of one job on a telephone: keeps what is typed, and gives it as a text to save, share or copy. Asks nothing of any network.
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { answersText, type Answered } from './phone-answers.ts';
import { openKeeper } from './phone-keeper.ts';
import { remarkOn } from './phone-remark.ts';

const form = document.querySelector<HTMLFormElement>('#answers');
if (form !== null) begin(form);

function begin(form: HTMLFormElement): void {
  const carried = carriedOf(form);
  const inputs = [...form.querySelectorAll<HTMLInputElement>('input[data-asks]')];
  const keeper = openKeeper(`splitpin ${carried['job'] ?? ''} ${carried['asked'] ?? ''}`);
  const known = keeper.read();
  for (const input of inputs) {
    const value = known[input.name];
    if (value === undefined) continue;
    if (input.type === 'checkbox') input.checked = value === 'yes';
    else input.value = value;
    remark(input);
  }
  const text = (): string => answersText(carried, inputs.map(answered).filter(isAnswered));
  const show = (): void => {
    const count = inputs.map(answered).filter(isAnswered).length;
    say(
      'count',
      count === 0
        ? 'Nothing is written yet.'
        : count === 1
          ? '1 answer is written.'
          : `${String(count)} answers are written.`,
    );
    const area = document.querySelector<HTMLTextAreaElement>('#text');
    if (area !== null) area.value = text();
  };
  const keep = (): void => {
    const values = Object.fromEntries(inputs.map((input) => [input.name, valueOf(input)]));
    tellKept(keeper.write(values));
    show();
  };
  form.addEventListener('submit', (event) => event.preventDefault());
  form.addEventListener('input', (event) => {
    if (event.target instanceof HTMLInputElement) remark(event.target);
    keep();
  });
  form.addEventListener('click', (event) => {
    const button = event.target instanceof Element ? event.target.closest('button') : null;
    if (button === null) return;
    press(button, { form, inputs, text, keep, name: carried['job'] ?? 'answers', forget: keeper.forget });
  });
  tellKept(keeper.keeps);
  if (typeof navigator.share === 'function') document.querySelector('#share')?.removeAttribute('hidden');
  show();
}

interface Hands {
  readonly form: HTMLFormElement;
  readonly inputs: readonly HTMLInputElement[];
  readonly text: () => string;
  readonly keep: () => void;
  readonly name: string;
  readonly forget: () => void;
}

function press(button: HTMLButtonElement, hands: Hands): void {
  const { unknown: blank } = button.dataset;
  if (blank !== undefined) {
    const input = hands.inputs.find(({ id }) => id === blank);
    if (input === undefined) return;
    input.value = input.value === '?' ? '' : '?';
    remark(input);
    hands.keep();
    return;
  }
  if (button.id === 'save') save(hands.text(), `${hands.name}-answers.txt`);
  if (button.id === 'share') navigator.share({ title: hands.name, text: hands.text() }).catch(() => undefined);
  if (button.id === 'copy') copy(hands.text());
  if (button.id === 'empty' && window.confirm('Empty all fields of this page?')) empty(hands);
}

function empty({ inputs, forget, keep }: Hands): void {
  forget();
  for (const input of inputs) {
    if (input.type === 'checkbox') input.checked = input.dataset['given'] === 'yes';
    else input.value = input.dataset['given'] ?? '';
    remark(input);
  }
  keep();
}

function save(text: string, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/plain;charset=utf-8' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  say('done', `Saved as ${name}, where this browser keeps its downloads.`);
}

function copy(text: string): void {
  const area = document.querySelector<HTMLTextAreaElement>('#text');
  const byHand = (): void => {
    area?.closest('details')?.setAttribute('open', '');
    area?.focus();
    area?.select();
    say('done', 'The text is marked below: copy it from there.');
  };
  if (typeof navigator.clipboard?.writeText !== 'function') {
    byHand();
    return;
  }
  navigator.clipboard.writeText(text).then(() => say('done', 'The text is copied.'), byHand);
}

function valueOf(input: HTMLInputElement): string {
  if (input.type === 'checkbox') return input.checked ? 'yes' : '';
  return input.value.trim();
}

function answered(input: HTMLInputElement): Answered {
  const { asks = '', given = '' } = input.dataset;
  return { blank: input.name, asks, value: valueOf(input), given };
}

/** What the record says already is no answer, and neither is an empty field. */
function isAnswered({ value, given }: Answered): boolean {
  return value !== '' && value !== given;
}

function remark(input: HTMLInputElement): void {
  const place = document.querySelector(`#${input.id}-remark`);
  if (place === null) return;
  const { unit = '', limit = '', last = '' } = input.dataset;
  place.textContent = remarkOn(valueOf(input), { unit, limit, last });
}

function tellKept(keeps: boolean): void {
  say(
    'kept',
    keeps
      ? 'What you write is kept in this browser, on this telephone, until you empty it.'
      : 'This browser does not keep what is written here: it is gone when the page is closed. Save or copy the answers before that.',
  );
}

function say(id: string, text: string): void {
  const place = document.getElementById(id);
  if (place !== null && place.textContent !== text) place.textContent = text;
}

function carriedOf(form: HTMLFormElement): Readonly<Record<string, string>> {
  const value: unknown = JSON.parse(form.dataset['carried'] ?? '{}');
  if (typeof value !== 'object' || value === null) return {};
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, String(one)]));
}
