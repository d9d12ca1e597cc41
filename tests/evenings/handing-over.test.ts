// Evenings 10, 12 and 19 as the buyer meets them: a part from a machine that is nobody's business, a clock that is not the first, a machine in tubs.
import { expect, test } from 'vitest';
import { copyOf, noChoices, textOf } from '../handover/copy-of.ts';
import { evening, machineFile } from './evening.ts';
import { wagtailBook } from './wagtail-book.ts';

function job(lines: string, body = ''): string {
  return `---\ndate: 2026-05-01\nkind: repair\nstate: done\nhands: [owner]\n${lines}\n---\n${body}`;
}

test('10: the buyer reads that the carburettor came from another machine and was paid for there, and not which', () => {
  const lines =
    'parts: [{part: carburettor, class: used, moved from: Larkmoor Heron 90, price: 40.00 GBP, state: fitted}]';
  const folder = {
    'machine.yaml': machineFile(),
    'jobs/2026-05-01-in.md': job(`title: Carburettor in\n${lines}`, 'From the Heron, the red one.\n'),
  };
  const copy = copyOf(folder, [], { ...noChoices, otherMachines: ['Larkmoor Heron 90'] });
  expect(textOf(copy)).not.toContain('Heron 90');
  const text = copy.files.find(({ file }) => file.startsWith('jobs/'))?.text ?? '';
  const made = evening('2026-05-20', { '2026-05-01-in': text.split('---')[1] ?? '' });
  expect(made.sheet('history')).toMatch(/carburettor[^\n]*moved from another machine/u);
  expect(made.page('costs.html')).toContain('Together: 0.00 GBP');
  expect(made.page('costs.html')).toContain('came from another machine, its price is counted there');
});

test('12: the statement to be signed is ticked by the records at “not actual”, with both clocks and a box for the day', () => {
  const machine = machineFile({
    clock:
      '[{id: old, unit: mi, digits: 5, from: {date: 1974-05-01, reads: 0 mi}, to: {date: 2026-03-14, reads: 8106 mi}, state: dead}, {id: used, unit: mi, digits: 5, from: {date: 2026-03-14, reads: 23418 mi}}]',
  });
  const jobs = { '2026-03-14-clock': 'odometer: 23418 mi', '2026-05-10-ride': 'odometer: 23500 mi' };
  const made = evening('2026-05-20', jobs, { maker: wagtailBook(), machine });
  for (const id of ['odometer-statement', 'handover-all']) {
    const sheet = made.sheet(id);
    expect(sheet).toMatch(/no\. 1 \| mi, 5 \| [^\n]*0 mi \| 14 March 2026, 8106 mi \| dead/u);
    expect(sheet).toMatch(/no\. 2 \| mi, 5 \| 14 March 2026, 23 418 mi \| fitted now/u);
    expect(sheet).toMatch(/\bnot actual \|[^\n]*this one/u);
    expect(sheet).not.toMatch(/\] actual \|[^\n]*this one/u);
    expect(sheet).toContain('8188 mi of the machine');
    expect(sheet).toMatch(/Hands over[\s\S]*Takes over/u);
  }
});

const inPieces = {
  '2025-10-04-strip': `title: Engine apart
kind: strip
work:
  - {removed: crankcase half left, bag: tub 1}
  - {removed: crankcase half right, bag: tub 1}
  - {removed: cylinder head, bag: tub 2}
  - {removed: gearbox cluster, bag: tub 3, note: in oil paper}
  - {removed: kickstart cover screws, bag: 17, count: 6}
  - {removed: front mudguard, where: on the shelf}
readings:
  - {item: big end play, found: 0.35 mm}
parts:
  - {part: crank seal left, state: here, from: bearing shop}
  - {part: ring set, state: wanted}`,
  '2025-11-02-chrome': `title: To the chrome shop
work:
  - {sent out: front mudguard, to: chrome shop, promised: 2026-02-01, price: 60.00 GBP}
  - {lost: kickstart cover screws, bag: 17}`,
};

test('19: sold as a project, tub by tub, with what is away, what is missing, and no promise', () => {
  const made = evening('2026-05-20', inPieces);
  const sheet = made.sheet('parts-and-tubs');
  const at = (words: string): number => sheet.indexOf(words);
  for (const words of ['tub 1', 'crankcase half left', 'tub 2', 'cylinder head', 'tub 3', 'gearbox cluster'])
    expect(at(words), words).toBeGreaterThanOrEqual(0);
  expect(at('tub 1')).toBeLessThan(at('crankcase half left'));
  expect(at('crankcase half right')).toBeLessThan(at('tub 2'));
  expect(at('gearbox cluster')).toBeGreaterThan(at('tub 3'));
  const [lying = '', rest = ''] = sheet.split('With somebody else');
  expect(lying).not.toContain('front mudguard');
  expect(lying).not.toContain('kickstart cover screws');
  expect(rest).toMatch(/front mudguard \| to chrome shop; promised for 1 February 2026; 60\.00 GBP/u);
  expect(rest).toMatch(/crank seal left \|[^\n]*here, not fitted \| bearing shop/u);
  expect(rest).toMatch(/lost: (?:6 × )?kickstart cover screws/u);
  expect(rest).toContain('wanted: ring set');
  expect(sheet).toContain('no promise');
  expect(sheet).toMatch(/big end play[^\n]*0\.35 mm/iu);
  expect(sheet).toMatch(/Hands over[\s\S]*Takes over/u);
});

test('19: where prices stay with the owner, the buyer still reads who has the mudguard and until when', () => {
  const folder = {
    'machine.yaml': machineFile(),
    'jobs/2025-11-02-chrome.md': job(inPieces['2025-11-02-chrome']).replace('2026-05-01', '2025-11-02'),
  };
  const copy = copyOf(folder, [], { ...noChoices, withoutPrices: true });
  const text = copy.files.find(({ file }) => file.startsWith('jobs/'))?.text ?? '';
  const made = evening('2026-05-20', { '2025-11-02-chrome': text.split('---')[1] ?? '' });
  expect(made.sheet('parts-and-tubs')).toMatch(/front mudguard \| to chrome shop; promised for 1 February 2026 \|/u);
});
