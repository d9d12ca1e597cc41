// Pages of published tables: words in place of the names that the code has, and under each table the sources that its rows name by number.
import { describe, expect, test } from 'vitest';
import type { Block } from '../../src/sheet/sheet.ts';
import { plainText } from '../../src/render/text-html.ts';
import { table, tableIds } from '../../src/table/table.ts';
import { inputsAsSet } from '../../src/views/wording/published-inputs.ts';
import { asSet, behindNumber } from '../../src/views/wording/published-unit.ts';
import { blockText } from '../goldens/sheet-text.ts';
import { binderOf } from './binder.ts';

const tern = binderOf('tests/fixtures/tern-350', '2026-11-14');

function blocksOf(id: string): readonly Block[] {
  const spec = tern.pages.find(({ file }) => file === `tables/${id}.html`);
  if (spec === undefined) throw new Error(`no page of ${id}`);
  return spec.make().blocks;
}

/** What stands under one head of the table. */
function under(id: string, head: string): readonly string[] {
  return blocksOf(id).flatMap((block) => {
    if (block.type !== 'table') return [];
    const at = block.columns.findIndex((one) => one.head === head);
    return block.rows.flatMap((one) => (one.kind === 'cells' ? [plainText(one.cells[at]?.text ?? '')] : []));
  });
}

function sourcesUnder(id: string): number {
  return blocksOf(id)
    .flatMap((block) => (block.type === 'prose' ? block.paragraphs : []))
    .reduce((sum, one) => sum + (one.kind === 'list' && one.ordered ? one.items.length : 0), 0);
}

const withSources = tableIds.filter((id) => table(id).about.sources !== undefined);

describe('published tables', () => {
  test('some tables keep their sources apart from their rows', () => {
    expect(withSources.length).toBeGreaterThan(10);
  });

  test.each(withSources)('%s names its sources by numbers that stand in the list below', (id) => {
    const { about, rows } = table(id);
    const listed = sourcesUnder(id);
    expect(listed).toBe(Object.keys(about.sources ?? {}).length);
    const named = under(id, 'Source');
    expect(named).toHaveLength(rows.length);
    for (const numbers of named) {
      for (const number of numbers.split(', ')) {
        expect(number).toMatch(/^\d+$/u);
        expect(Number(number)).toBeLessThanOrEqual(listed);
      }
    }
  });

  test('a row that says what it is goes without the name that the code has for it, its unit behind the number', () => {
    expect(under('values-engine', 'Quantity')).toContain('piston displacement 3 × 4 in');
    expect(under('values-engine', 'Value')).toContain('28.26\u00a0in³');
    const heads = blocksOf('values-engine').flatMap((block) =>
      block.type === 'table' ? block.columns.map(({ head }) => head) : [],
    );
    expect(heads).toEqual(['Quantity', 'Value', 'Worked from', 'Obtained', 'Allowed', 'Source']);
  });

  test('no input is left as a file writes it', () => {
    for (const id of withSources) expect(under(id, 'Worked from').join(' ')).not.toMatch(/[_=]/u);
  });
});

test('an example and the rows of a table say the words of the machine’s spelling', () => {
  const page = tern.pages.find(({ file }) => file === 'calculations/chain-centre.html');
  const text = (page?.make().blocks ?? []).map((block) => blockText(block)).join('\n');
  expect(text).toContain('center distance: 531.185 mm');
  expect(text).toContain('center distance with 110 links | 531.185');
  const remarks = blocksOf('values-torque-tools').map((block) => blockText(block));
  expect(remarks.join('\n')).toContain('from the drive center to the middle of the grip');
  expect(under('values-chain', 'Quantity')).toContain('center distance with 110 links');
});

describe('words of a published row', () => {
  test.each([
    ['bore_mm=68; mu_t=0.12', 'bore 68\u00a0mm; μ of the thread 0.12'],
    ['v_m_min=600; N=4000', 'v 600\u00a0m/min; N 4000'],
    ['F_over_As_psi=72250; t1_C=20; deg=45', 'F/As 72250\u00a0psi; t1 20\u00a0°C; 45°'],
    ['find=applied; collar_mean_dia=1.25 d', 'find applied; collar mean dia 1.25 d'],
    ['', ''],
  ])('%s', (typed, said) => {
    expect(inputsAsSet(typed)).toBe(said);
  });

  test('signs that a keyboard has not', () => {
    expect(asSet('torque, M4, mu 0.3')).toBe('torque, M4, μ 0.3');
    expect(asSet('pressure at -10 C, links, 15/42, C 580')).toBe('pressure at −10\u00a0°C, links, 15/42, C 580');
    expect(asSet('reading 1.240 at 30 F corrected to 80 F')).toBe(
      'reading 1.240 at 30\u00a0°F corrected to 80\u00a0°F',
    );
    expect(asSet('1e-9 relative')).toBe('10⁻⁹ relative');
    expect(behindNumber('week, year')).toBe('');
    expect(asSet('stroke 50, 5 deg')).toBe('stroke 50, 5°');
    expect(asSet('bore 68 x 75 mm; X 3 degrees')).toBe('bore 68 × 75 mm; X 3 degrees');
  });
});
