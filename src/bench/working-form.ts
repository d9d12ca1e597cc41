// One calculation as a form: a field for each input, and under them what comes out, how, and what is still needed.
/// <reference lib="dom" />
import type { Calculation, Doubt, Worked } from '../calc/calculation.ts';
import type { Input } from '../calc/input.ts';
import { resultLines, workingLines } from '../calc/work-text.ts';
import { workedFrom, type Carried } from './carried-values.ts';
import { listOf, part } from './elements.ts';
import { unitBeside } from './typed-values.ts';

type Say = (words: string) => string;
type Widths = Readonly<Record<string, Carried['widths']>>;
type Field = HTMLInputElement | HTMLSelectElement;

/** Values of the machine and where they stand, by the names of the inputs; units by those in which it asks. */
export interface OfMachine {
  readonly values: Readonly<Record<string, string>>;
  readonly from: Readonly<Record<string, string>>;
  readonly asked: Readonly<Record<string, string>>;
}

export interface WorkingForm {
  readonly element: HTMLElement;
  /** Writes into fields; a field that was typed in by hand keeps what is in it, unless `over` is said. */
  readonly fill: (texts: Readonly<Record<string, string>>, over: boolean, widths?: Widths) => void;
  readonly worked: () => Worked;
}

/** Makes the form. `changed` is called whenever something else came out. */
export function workingForm(
  calculation: Calculation,
  ofMachine: OfMachine,
  say: Say,
  changed: () => void,
): WorkingForm {
  const fields = new Map<string, Field>();
  const sources = new Map<string, HTMLElement>();
  const byHand = new Set<string>();
  const carried = new Map<string, Carried>();
  const answer = part('div', '', 'answer');
  answer.setAttribute('role', 'status');
  const working = part('details');
  const typed = (): Record<string, string> =>
    Object.fromEntries([...fields].map(([name, field]) => [name, field.value]));
  let worked = workedFrom(calculation, {}, carried, ofMachine.asked);
  const show = (): void => {
    worked = workedFrom(calculation, typed(), carried, ofMachine.asked);
    for (const [name, field] of fields) {
      markWrong(field, worked.doubts, name);
      const { values, from } = ofMachine;
      const source = sources.get(name);
      const isTheirs = !byHand.has(name) && values[name] === field.value;
      if (source !== undefined) source.textContent = isTheirs ? (from[name] ?? '') : '';
    }
    answer.replaceChildren(...answerParts(calculation, worked, say));
    const hasResults = resultLines(calculation, worked).length > 0;
    working.hidden = !hasResults;
    if (hasResults)
      working.replaceChildren(
        part('summary', say('How')),
        listOf(workingLines(calculation, worked).map((line) => say(line))),
      );
    changed();
  };
  const element = part('form', '', 'working');
  element.noValidate = true;
  element.autocomplete = 'off';
  element.addEventListener('submit', (event) => event.preventDefault());
  for (const [name, input] of Object.entries(calculation.inputs)) {
    const { label, field } = fieldFor(`${calculation.id}-${name}`, name, input, ofMachine.asked, say);
    fields.set(name, field);
    field.addEventListener('input', () => {
      byHand.add(name);
      carried.delete(name);
      show();
    });
    const source = part('p', '', 'about');
    sources.set(name, source);
    element.append(label, source);
  }
  element.append(answer, working);
  show();
  return {
    element,
    worked: () => worked,
    fill: (texts, over, widths = {}) => {
      const wanted = Object.entries(texts).filter(([name]) => over || !byHand.has(name));
      const news = wanted.filter(([name, text]) => fields.get(name)?.value !== text);
      for (const [name, text] of news) {
        const field = fields.get(name);
        if (field !== undefined) field.value = text;
        carried.set(name, { text, widths: widths[name] ?? [] });
        if (over) byHand.delete(name);
      }
      if (news.length > 0) show();
    },
  };
}

function fieldFor(
  id: string,
  name: string,
  input: Input,
  asked: OfMachine['asked'],
  say: Say,
): { readonly label: HTMLLabelElement; readonly field: Field } {
  const label = part('label');
  const notes = [
    input.kind === 'words' ? '' : unitBeside(input, asked),
    input.kind === 'list' ? say('several, with ; between them') : '',
    input.optional === true ? say('may be left out') : '',
  ].filter((note) => note !== '');
  label.append(part('span', `${sentence(say(input.name))} `, 'asks'));
  if (notes.length > 0) label.append(part('span', notes.join(', '), 'about'));
  const field = input.kind === 'words' && input.among !== undefined ? selectOf(input.among, say) : textField(input);
  field.id = id.replaceAll(' ', '-');
  field.name = name;
  label.htmlFor = field.id;
  label.append(field);
  return { label, field };
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function textField(input: Input): HTMLInputElement {
  const field = part('input');
  field.type = 'text';
  field.maxLength = 300;
  field.setAttribute('autocapitalize', 'off');
  field.spellcheck = false;
  // A keyboard of digits only would lack `14 thou` and `1:25`.
  field.enterKeyHint = 'next';
  field.dataset['kind'] = input.kind;
  return field;
}

function selectOf(among: readonly string[], say: Say): HTMLSelectElement {
  const select = part('select');
  select.add(new Option('—', ''));
  for (const one of among) select.add(new Option(say(one), one));
  return select;
}

/** A value of its own is wanted; where one set of several is, the doubt itself says which. */
function isMissing({ code, input }: Doubt): boolean {
  return code === 'calculation-value-missing' && input !== undefined;
}

function markWrong(field: Field, doubts: readonly Doubt[], name: string): void {
  const wrong = doubts.some((doubt) => doubt.input === name && doubt.severity === 'problem' && !isMissing(doubt));
  if (wrong) field.setAttribute('aria-invalid', 'true');
  else field.removeAttribute('aria-invalid');
}

function answerParts(calculation: Calculation, worked: Worked, say: Say): readonly HTMLElement[] {
  const results = resultLines(calculation, worked);
  const missing = worked.doubts.filter(isMissing);
  const others = worked.doubts.filter((doubt) => !isMissing(doubt));
  if (results.length + worked.doubts.length === 0) return [part('p', say('Nothing to say with these values.'))];
  return [
    ...(results.length === 0
      ? []
      : [
          listOf(
            results.map((line) => sentence(say(line))),
            'results',
          ),
        ]),
    ...(others.length === 0
      ? []
      : [
          listOf(
            others.map(({ message, hint }) => say(hint === undefined ? message : `${message}: ${hint}`)),
            'doubts',
          ),
        ]),
    ...(missing.length === 0
      ? []
      : [
          part(
            'p',
            `${say('Still needed')}: ${missing.map(({ input }) => nameOf(calculation, input, say)).join('; ')}.`,
          ),
        ]),
  ];
}

function nameOf(calculation: Calculation, input: string | undefined, say: Say): string {
  return say(input === undefined ? '' : (calculation.inputs[input]?.name ?? input));
}
