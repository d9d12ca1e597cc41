// The workings at the bench: forms over the calculations of this page, filled with what the machine says. Asks nothing of any network.
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { calculationById } from '../calc/list.ts';
import { typedFigure, widthOf } from '../calc/typed-figure.ts';
import { speaker, type Say } from '../sheet/dialect.ts';
import { button, part } from './elements.ts';
import { unitField } from './unit-field.ts';
import { readWorkingData, type Chosen, type WorkingData } from './working-data.ts';
import { workingForm, type WorkingForm } from './working-form.ts';

const bench = document.querySelector<HTMLElement>('#bench');
const data = bench === null ? undefined : readWorkingData(bench.dataset['table'] ?? '');
if (bench !== null && data !== undefined) begin(bench, data);

function begin(bench: HTMLElement, data: WorkingData): void {
  const say = speaker(data.words, data.words.length > 0 ? 'us' : 'uk');
  const forms = new Map<string, WorkingForm>();
  const pass = (): void => {
    for (const { from, output, to, input } of data.passed) {
      const figure = forms.get(from)?.worked().figures[output];
      if (figure === undefined) continue;
      forms.get(to)?.fill({ [input]: typedFigure(figure) }, false, { [input]: [widthOf(figure) ?? null] });
    }
  };
  const asItStands = (): void => {
    for (const { id, values, widths } of data.workings) {
      forms.get(id)?.fill({ ...blanks(id), ...values }, true, widths);
    }
    pass();
  };
  for (const { id, values, from } of data.workings) {
    const calculation = calculationById(id);
    if (calculation === undefined) continue;
    const form = workingForm(calculation, { values, from, asked: data.asked }, say, pass);
    forms.set(id, form);
    putForm(bench, id, form.element);
  }
  if (data.units) document.querySelector('#units')?.after(unitField(say));
  bench.prepend(...choiceParts(data, say, forms, asItStands));
  bench.classList.add('workings');
  bench.hidden = false;
  const lead = document.querySelector('#page > .caution:last-of-type, #page > .prose');
  lastLead(lead)?.after(bench);
  asItStands();
}

/** What belongs together at the top: the lead and the cautions under it. */
function lastLead(first: Element | null): Element | null {
  let last = first;
  while (last?.nextElementSibling?.classList.contains('caution') === true) last = last.nextElementSibling;
  return last;
}

/** Below the words of its calculation, in place of the values as the machine stands; on the page of a calculation, in the bench itself. */
function putForm(bench: HTMLElement, id: string, form: HTMLElement): void {
  const stands = document.getElementById(`${id}-stands`);
  if (stands === null) {
    bench.append(form);
    return;
  }
  let next = stands.nextElementSibling;
  while (next !== null && next.tagName !== 'H2' && next !== bench) {
    const gone = next;
    next = next.nextElementSibling;
    gone.remove();
  }
  stands.replaceWith(form);
}

function blanks(id: string): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.keys(calculationById(id)?.inputs ?? {}).map((name) => [name, '']));
}

function choiceParts(
  { choice }: WorkingData,
  say: Say,
  forms: ReadonlyMap<string, WorkingForm>,
  asItStands: () => void,
): readonly HTMLElement[] {
  const parts = part('p', '', 'to-print');
  parts.append(
    button(say('As the machine stands'), asItStands),
    ' ',
    button(say('Print'), () => window.print()),
  );
  if (choice === undefined || choice.among.length === 0) return [parts];
  const label = part('label', choice.label);
  const select = part('select');
  select.id = 'of-this-machine';
  label.htmlFor = select.id;
  select.add(new Option('—', ''));
  for (const [index, { name }] of choice.among.entries()) select.add(new Option(name, String(index)));
  const says = part('p', '', 'says');
  says.setAttribute('role', 'status');
  select.addEventListener('change', () => {
    asItStands();
    const chosen = choice.among[Number(select.value)];
    says.textContent = select.value === '' || chosen === undefined ? '' : chosen.says;
    if (select.value !== '' && chosen !== undefined) fillFrom(chosen, forms);
  });
  label.append(select);
  return [label, says, parts];
}

function fillFrom(chosen: Chosen, forms: ReadonlyMap<string, WorkingForm>): void {
  for (const [id, values] of Object.entries(chosen.values)) forms.get(id)?.fill(values, true);
}
