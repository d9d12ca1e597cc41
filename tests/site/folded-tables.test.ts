// Which tables are set line under line on a narrow screen, and what their cells carry for it; facts as lists.
import { describe, expect, it } from 'vitest';
import { renderPage } from '../../src/render/page.ts';
import type { Block, Row } from '../../src/sheet/sheet.ts';
import { column, factOfLines, row } from '../../src/views/wording/blocks.ts';
import { samplePage } from './sample-pages.ts';
import { sampleFrame } from './sample-site.ts';

const draw = (...blocks: readonly Block[]): string => renderPage(samplePage(blocks), sampleFrame);

function table(heads: readonly string[], rows: readonly Row[]): string {
  return draw({ type: 'table', columns: heads.map((head) => column(head, 1)), rows, empty: '', use: 'read' });
}

describe('a table on a narrow screen', () => {
  it('is folded from four columns on', () => {
    expect(table(['a', 'b', 'c', 'd'], [row('1', '2', '3', '4')])).toContain('class="read stacks"');
    expect(table(['a', 'b', 'c'], [row('1', '2', '3')])).toContain('class="read few"');
  });
  it('is folded with three where words would stand in a narrow column', () => {
    const words = 'right cylinder 21 per cent below its baseline of 2025';
    expect(table(['a', 'b', 'c'], [row('limits', words, 'open')])).toContain('class="read few stacks"');
    const number = [column('Item', 1), column('Found', 1, 'right'), column('Left', 1, 'right')];
    const lever = row('Oil pump lever', 'behind by four millimetres', '');
    expect(draw({ type: 'table', columns: number, rows: [lever], empty: '', use: 'read' })).toContain(
      'class="read few stacks"',
    );
  });
  it('is read as sentences where it begins with them', () => {
    const told = 'The hill with the chapel: done while a hold point was held, and two more after it, open as well';
    expect(table(['a', 'b', 'c'], [row(told, 'b', 'c')])).toContain('class="read few stacks told"');
  });
  it('moves sideways, and says so, where heads in all its cells would weigh more than the table', () => {
    const many = Array.from({ length: 260 }, () => row('1', '2', '3', '4'));
    expect(table(['a', 'b', 'c', 'd'], many)).toContain('class="read sideways"');
  });
  it('has no head in cells that are known without one', () => {
    const html = table(['Part', 'b', 'c', 'd'], [row('bolt', '2', '3', '4')]);
    expect(html).toContain('<td>bolt</td><td data-head="b">2</td>');
    const ticks = [column('Done', 1, 'centre'), column('What', 1), column('Why', 1), column('Record', 1)];
    const ticked = draw({
      type: 'table',
      columns: ticks,
      rows: [row({ box: 'tick' }, 'panel', 'cracked', '')],
      empty: '',
      use: 'work',
    });
    expect(ticked).toContain('<td class="centre" data-head="Done">');
    expect(ticked).toContain('<td>panel</td><td data-head="Why">cracked</td>');
  });
});

describe('a fact of several things', () => {
  it('is a list on a screen, and one line where there is one', () => {
    const several = draw({ type: 'facts', facts: factOfLines('Held', ['the first kick', 'the road']) });
    expect(several).toContain('<dd><ul>\n<li>the first kick</li>\n<li>the road</li>\n</ul></dd>');
    expect(draw({ type: 'facts', facts: factOfLines('Held', ['the road']) })).toContain('<dd>the road</dd>');
    expect(factOfLines('Held', [])).toEqual([]);
    expect(factOfLines('Held', ['one', 'two'])[0]?.value).toBe('one; two');
  });
});
