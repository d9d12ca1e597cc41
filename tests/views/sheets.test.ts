// The sheets of two machines that have little in common: what each must say, and what it must not.
import { describe, expect, test } from 'vitest';
import type { Block, Sheet } from '../../src/sheet/sheet.ts';
import { blockText, sheetText } from '../goldens/sheet-text.ts';
import { binderOf, contentWith } from './binder.ts';

const today = '2026-11-21';
const pipit = binderOf('demo-bike', today);
const tern = binderOf('tests/fixtures/tern-350', today);

function sheet(binder: { readonly sheets: readonly Sheet[] }, id: string): Sheet {
  const found = binder.sheets.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no sheet ${id}`);
  return found;
}

function tableRows(blocks: readonly Block[]): readonly string[] {
  return blocks.flatMap((block) => (block.type === 'table' ? blockText(block).split('\n') : []));
}

describe('every sheet', () => {
  test.each([pipit, tern])('is made without a problem', ({ problems, sheets }) => {
    expect(problems.filter((one) => one.severity === 'problem')).toEqual([]);
    expect(sheets.length).toBeGreaterThan(12);
    expect(new Set(sheets.map((one) => one.id)).size).toBe(sheets.length);
  });
  test.each([...pipit.sheets, ...tern.sheets])('$id prints no slip of the program', (one) => {
    const text = sheetText(one);
    expect(text).not.toMatch(/\bundefined\b|\bNaN\b|\bInfinity\b|\[object /);
    // Boxes are drawn, never typed; a leading zero always stands before a decimal point.
    expect(text.replaceAll(/_____ |\[____\]|_____$/gm, '')).not.toMatch(/_{5,}(?! ?\||$)/m);
    expect(text).not.toMatch(/(?<![\d\p{L}])\.\d+\u00a0/u);
  });
  test.each([...pipit.sheets, ...tern.sheets])('$id has each anchor and each blank once', (one) => {
    const anchors = one.blocks.flatMap((block) => (block.type === 'heading' ? [block.id] : []));
    expect(anchors.filter((id, index) => anchors.indexOf(id) !== index)).toEqual([]);
    const blanks = one.blocks.flatMap((block) => (block.type === 'blanks' ? block.items.map((item) => item.id) : []));
    expect(blanks.filter((id, index) => blanks.indexOf(id) !== index)).toEqual([]);
  });
  test('columns and cells agree in every table', () => {
    for (const one of [...pipit.sheets, ...tern.sheets]) {
      for (const block of one.blocks) {
        if (block.type !== 'table') continue;
        const counts = block.rows.flatMap((row) => (row.kind === 'cells' ? [row.cells.length] : []));
        expect(
          counts.filter((cells) => cells !== block.columns.length),
          `${one.id}: ${block.columns.map((c) => c.head).join(', ')}`,
        ).toEqual([]);
      }
    }
  });
  test('our words never promise', () => {
    for (const id of ['before-first-start', 'hold-points', 'torque-table', 'service-due', 'state-left-in'])
      expect(sheetText(sheet(tern, id)).toLowerCase(), id).not.toMatch(/\b(is|are|now) (safe|legal|roadworthy)\b/);
  });
});

describe('the torque table', () => {
  const rows = tableRows(sheet(pipit, 'torque-table').blocks);
  const row = (name: string): string => rows.find((one) => one.startsWith(name)) ?? '';
  test('gives the manual’s own value first and as written, then the other two units', () => {
    expect(row('Cylinder head nuts')).toMatch(/\| 2\.2\u00a0kgf·m \| 21\.6\u00a0N·m; 15\.9\u00a0lbf·ft \| dry; /);
    expect(row('Cylinder head nuts')).toContain('1.1, then 2.2\u00a0kgf·m; crosswise');
  });
  test('leaves a blank where no book gives a value and the owner has marked nothing', () => {
    expect(row('Footrest bolts')).toMatch(/\[____\] N·m/);
    expect(row('Footrest bolts')).toContain('not known');
  });
  test('gives a computed band only for what is marked, and leads to its working', () => {
    for (const { fastener, basis } of [...pipit.book.torque, ...tern.book.torque])
      if (basis === 'computed') expect(fastener.duty, fastener.id).toBeDefined();
    expect(row('Clutch cover screws')).toMatch(/to \d+\.\d\u00a0N·m <working:torque-clutch-cover-screw>/);
  });
  test('puts pound-feet first where the book does', () => {
    const english = tableRows(sheet(tern, 'torque-table').blocks).filter((one) =>
      /\d\u00a0lbf·ft \| [\d.]+( to [\d.]+)?\u00a0N·m; /.test(one),
    );
    expect(english.length).toBeGreaterThan(3);
  });
  test('lists repaired holes after it', () => {
    expect(rows.join('\n')).toContain('wire thread insert');
  });
});

describe('before the first start', () => {
  test('oil for a small supply of petrol, from the ratio of the settings', () => {
    const text = sheetText(sheet(pipit, 'before-first-start'));
    expect(text).toMatch(/250\u00a0ml \| 10\.0\u00a0ml <working:oil-250-ml>/);
    expect(text).toContain('--- back ---');
  });
  test('no oil in the petrol of a four-stroke', () => {
    expect(sheetText(sheet(tern, 'before-first-start'))).not.toContain('Oil in the petrol');
  });
  test('how it is stopped depends on what makes the spark', () => {
    const battery = sheetText(sheet(pipit, 'before-first-start'));
    const magneto = sheetText(sheet(tern, 'before-first-start'));
    expect(battery).toContain('it opens the feed to the coil');
    expect(battery).not.toMatch(/it (earths|grounds) the ignition/);
    expect(magneto).toContain('it grounds the ignition');
    expect(magneto).not.toContain('it opens the feed to the coil');
    expect(magneto).not.toContain('Battery charged');
  });
  test('the card on the back speaks of spark, fuel, compression and air', () => {
    const text = sheetText(sheet(tern, 'before-first-start'));
    const back = text.slice(text.indexOf('--- back ---'));
    for (const group of ['Spark', 'Fuel', 'Compression', 'Air']) expect(back).toContain(`== ${group}`);
    expect(back).not.toContain('condenser, then battery');
  });
});

describe('a planned job', () => {
  const plan = pipit.book.plans[0]?.job.id ?? '';
  test('its teardown has two ticks a part, bags that go on counting, and cautions at the step', () => {
    const blocks = sheet(pipit, `teardown-${plan}`).blocks;
    const rows = tableRows(blocks);
    const head = rows.findIndex((one) => one.includes('| cylinder head: '));
    expect(rows[head]).toMatch(/^\[ \] \| \[ \] \| \d+ \| cylinder head: /);
    expect(rows[head - 1]).toMatch(/^== CAUTION: /);
    const bag = pipit.book.plans[0]?.bagFrom ?? 0;
    expect(rows.some((one) => one.includes(` | ${String(bag)} | `))).toBe(true);
  });
  test('its assembly is read downwards with its torques', () => {
    const rows = tableRows(sheet(pipit, `assembly-${plan}`).blocks);
    const base = rows.findIndex((one) => one.includes('Cylinder base nuts'));
    const head = rows.findIndex((one) => one.includes('Cylinder head nuts'));
    expect(base).toBeGreaterThan(0);
    expect(head).toBeGreaterThan(base);
    expect(rows[head]).toContain('2.2\u00a0kgf·m');
  });
  test('its blanks have permanent ids, limit and last reading', () => {
    const blanks = sheet(pipit, `measuring-${plan}`).blocks.flatMap((block) =>
      block.type === 'blanks' ? block.items : [],
    );
    const bore = blanks.find((one) => one.id === `${plan}/bore/right top fore-aft`);
    expect(bore?.limit).toBe('50.60\u00a0mm\u00a0max');
    expect(bore?.last).toMatch(/^50\.51\u00a0mm, 12\u00a0March\u00a02025/);
  });
});

describe('readings over time', () => {
  const measured = pipit.pages
    .filter((page) => page.file === 'measurements.html' || page.file.startsWith('measurements/'))
    .flatMap((page) => page.make().blocks);
  test('have a plot with the limit and like with like', () => {
    const plot = measured.find((block) => block.type === 'plot' && block.title === 'Compression pressure');
    expect(plot?.type === 'plot' && plot.limits.length > 0 && plot.series.every((one) => one.points.length > 0)).toBe(
      true,
    );
    expect(plot?.type === 'plot' ? plot.series.map((one) => one.name) : []).toContain('right; cold, dry');
  });
  test('strike what was corrected and say by what', () => {
    const struck = measured.flatMap((block) =>
      block.type === 'table' ? block.rows.filter((row) => JSON.stringify(row).includes('"kind":"struck"')) : [],
    );
    const corrected = pipit.book.series.flatMap((series) =>
      series.points.filter((point) => point.corrected !== undefined),
    );
    expect(corrected.length).toBeGreaterThan(0);
    // Readings taken and corrected together stand in one row, its values struck: each is there, and the row says by what.
    const texts = struck.map((row) => JSON.stringify(row));
    const rowOf = (point: (typeof corrected)[number]): string | undefined =>
      texts.find(
        (text) => text.includes(`job:${point.job.id}`) && text.includes(`job:${point.corrected?.by.id ?? ''}`),
      );
    for (const point of corrected) {
      const number = point.value.kind === 'read' ? point.value.written.text.split(' ')[0] : undefined;
      expect(rowOf(point)).toContain(number ?? 'none');
      expect(rowOf(point)).toContain(point.corrected?.why ?? 'none');
    }
    expect(struck.length).toBe(new Set(corrected.map((point) => point.job.id)).size);
  });
});

describe('what could not be read', () => {
  const broken = binderOf('demo-bike', today, (files) =>
    files.map((file) =>
      file.file.endsWith('2025-10-11-autumn-ride.md') ? { ...file, text: '---\ntitle: [\n---\n' } : file,
    ),
  );
  test('is named at the head of every sheet', () => {
    expect(broken.book.records.unread.length).toBe(1);
    for (const one of broken.sheets) expect(one.leftOut.join(' '), one.id).toContain('2025-10-11-autumn-ride.md');
    expect(pipit.sheets.every((one) => one.leftOut.length === 0)).toBe(true);
  });
  test('holds every hold point, whatever the other records prove', () => {
    const text = sheetText(sheet(broken, 'hold-points'));
    expect(text).not.toContain('Clear on the records');
    expect(text.match(/Held, because [^\n]*2025-10-11-autumn-ride\.md could not be read/g)?.length).toBe(
      broken.book.holds.length,
    );
    expect(sheetText(sheet(pipit, 'hold-points'))).toContain('Clear on the records');
  });
  test('is named on the pages of the sheets as well', () => {
    const page = broken.pages.find((one) => one.file === 'sheets/torque-table.html')?.make();
    expect(page?.blocks.slice(0, 1).map(blockText).join('')).toContain('2025-10-11-autumn-ride.md');
  });
});

describe('a sheet file that is wrong', () => {
  const text = (views: string): string =>
    `---\nsheet: torque-table\ncode: TQ\ntitle: Torque table\nper: machine\non: [paper, screen]\nsection: Torque\nviews: ${views}\n---\n`;
  const problems = (views: string): readonly string[] =>
    binderOf(
      'demo-bike',
      today,
      undefined,
      contentWith([{ file: 'content/sheets/torque-table.md', text: text(views) }]),
    )
      .problems.filter((one) => one.severity === 'problem')
      .map((one) => `${one.at.file} ${one.at.path.join('/')} ${one.message} ${one.hint ?? ''}`);
  test('a view that does not exist is named with the nearest', () => {
    expect(problems('[torque-tabel]').join('\n')).toMatch(
      /content\/sheets\/torque-table\.md views.*torque-tabel.*torque-table/,
    );
  });
  test('so are a caution and a hold point', () => {
    expect(problems('[{caution: petrel}, torque-table]').join('\n')).toMatch(/petrel.*petrol/);
    expect(problems('[{hold-point: before-live-kik}, torque-table]').join('\n')).toMatch(
      /before-live-kik.*before-live-kick/,
    );
  });
  test('and a view of one record on a sheet of the machine', () => {
    expect(problems('[job-story]').join('\n')).toContain('per: job');
  });
});
