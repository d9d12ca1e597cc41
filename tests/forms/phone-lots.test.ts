// What stands together on the page of a job for a telephone: the ticks of a row and the line to write on beside them.
import { describe, expect, it } from 'vitest';
import { phonePages } from '../../src/command/phone-file.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import type { PhoneLot } from '../../src/render/phone-page.ts';
import { today } from './job-forms.ts';

const { binder, textOf } = readMachine('demo-bike', today, {});
const pages = binder === undefined ? [] : phonePages(binder, textOf);

function lotsOf(job: string, sheet: string): readonly PhoneLot[] {
  const page = pages.find(({ file }) => file.includes(job))?.page();
  return page?.parts.find(({ title }) => title.startsWith(sheet))?.lots ?? [];
}

function labels(lots: readonly PhoneLot[], asks: string): readonly string[] | undefined {
  return lots.find((lot) => lot.asks.startsWith(asks))?.fields.map(({ label }) => label);
}

describe('the page of a job on a telephone', () => {
  const teardown = lotsOf('top-end-again', 'Teardown');
  it('asks off, on and the condition of a part in one place', () => {
    expect(labels(teardown, 'cylinder head')).toEqual(['off', 'back on', 'Condition, photo no.']);
  });
  it('cuts no sentence into a question and its answer, and says done of what takes nothing off', () => {
    expect(labels(teardown, 'Pistons down; base nuts off')).toEqual(['done', 'Condition, photo no.']);
    const look = teardown.find(({ asks }) => asks.startsWith('Look before you wipe'));
    expect(look?.asks).toMatch(/tag in it$/u);
    expect(look?.fields.map(({ label }) => label)).toEqual(['done', 'Condition, photo no.']);
  });
  it('has found and left of a service below what is done', () => {
    const service = lotsOf('plugs-and-battery', 'Service');
    expect(labels(service, 'Plugs: renew')).toEqual(['done', 'Found', 'Left']);
    for (const { asks } of service) expect(asks).not.toMatch(/^Step /u);
  });
  it('tells the tick of a check from its value', () => {
    expect(labels(lotsOf('top-end-again', 'Assembly'), 'Compression read; cold')).toEqual(['done', 'value']);
  });
});
