// Any value in every unit of its kind, as it is typed.
/// <reference lib="dom" />
import { otherUnits } from '../calc/other-units.ts';
import { readAnyQuantity } from '../quantity/read-quantity.ts';
import { part } from './elements.ts';

type Say = (words: string) => string;

/** A field and the table under it. */
export function unitField(say: Say): HTMLElement {
  const form = part('form', '', 'working');
  form.noValidate = true;
  form.addEventListener('submit', (event) => event.preventDefault());
  const label = part('label');
  const field = part('input');
  field.type = 'text';
  field.id = 'any-value';
  field.maxLength = 100;
  field.autocomplete = 'off';
  field.spellcheck = false;
  label.htmlFor = field.id;
  label.append(
    part('span', `${say('Value with its unit')} `, 'asks'),
    part('span', '2.2 kgf·m, 14 thou, 0,35 mm', 'about'),
  );
  label.append(field);
  const answer = part('div', '', 'answer');
  answer.setAttribute('role', 'status');
  field.addEventListener('input', () => answer.replaceChildren(...answerTo(field.value, say)));
  form.append(label, answer);
  return form;
}

function answerTo(text: string, say: Say): readonly HTMLElement[] {
  if (text.trim() === '') return [];
  const read = readAnyQuantity(text);
  if (!read.ok) return [part('p', say([read.why.message, read.why.hint ?? ''].filter(Boolean).join(': ')), 'doubts')];
  const table = part('table', '', 'read');
  const head = table.createTHead().insertRow();
  for (const words of ['The same', 'If it was meant as', 'It would be']) {
    const cell = part('th', say(words));
    cell.scope = 'col';
    head.append(cell);
  }
  const body = table.createTBody();
  for (const { same, instead, would } of otherUnits(read.value)) {
    const row = body.insertRow();
    for (const words of would === '' ? [same, '', ''] : [same, instead, would]) row.insertCell().textContent = words;
  }
  return [table];
}
