// The handover lists what is due now or soon, counts what can wait, and leads to the sheet that has the whole list.
import { describe, expect, test } from 'vitest';
import { blockText } from '../goldens/sheet-text.ts';
import { binderOf } from './binder.ts';

const machines = ['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'] as const;

describe.each(machines)('what is due, at the handover of %s', (machine) => {
  const { book, sheets } = binderOf(machine, '2026-11-14');
  const sheet = (id: string): string =>
    (sheets.find((one) => one.id === id)?.blocks ?? []).map((block) => blockText(block)).join('\n');
  const waits = book.due.filter(({ state }) => state === 'not due' || state === 'done once');
  const presses = book.due.filter((one) => !waits.includes(one));
  const lineOf = (text: string, item: string, action: string): boolean =>
    text.split('\n').some((line) => line.includes(item) && line.includes(`: ${action}`) && line.includes(' | '));

  test('what presses stands there, and what can wait is counted', () => {
    expect(presses.length).toBeGreaterThan(0);
    expect(waits.length).toBeGreaterThan(0);
    const text = sheet('handover');
    for (const { service } of presses) expect(lineOf(text, service.item, service.action), service.id).toBe(true);
    expect(text).toMatch(new RegExp(`${String(waits.length)}\\sitems? not due yet`, 'u'));
    expect(text).not.toMatch(/^== .*Not due/mu);
  });

  test('the sheet it leads to has every line', () => {
    const text = sheet('service-due');
    for (const { service } of book.due) expect(lineOf(text, service.item, service.action), service.id).toBe(true);
    expect(text).not.toContain('not due yet');
  });
});
