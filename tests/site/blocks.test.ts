// Every type of block is drawn, and each shows what it was given.
import { describe, expect, it } from 'vitest';
import { renderPage } from '../../src/render/page.ts';
import type { Block, BlockType } from '../../src/sheet/sheet.ts';
import { sampleBlocks, samplePage } from './sample-pages.ts';
import { sampleFrame } from './sample-site.ts';

const draw = (...blocks: readonly Block[]) => renderPage(samplePage(blocks), sampleFrame);

/** A piece of HTML that shows that the block was drawn; a new type of block does not compile until it has one. */
const shows: { readonly [Type in BlockType]: readonly string[] } = {
  heading: ['<h2 id="taking-apart">Top end, taking apart</h2>'],
  prose: [
    '<strong>water</strong>',
    '<a href="2024-05-04-bought.html">the day it came home</a>',
    '<a class="figure" href="../workings.html#compression">6.8\u00a0bar</a> <span class="mark">w</span>',
    '<s>8.6\u00a0bar</s>',
    '<blockquote><p>It ran when it was parked.</p>',
    '<pre tabindex="0"><code>L  0.35\nR  0.40</code></pre>',
    '<th scope="col">Ring gap</th>',
  ],
  facts: ['<dl class="facts across-2">', '<dt>Engine number</dt><dd>PT1E-04452</dd>', 'read from the headstock'],
  table: [
    '<caption>Fasteners of the top end</caption>',
    '<tr id="head-nut"><td>Head nut, four</td>',
    '<td class="centre" data-head="Off"><span class="tick done" role="img" aria-label="ticked">',
    '<span class="unit">N·m</span>',
    '<strong>CAUTION</strong> Slacken crosswise',
    '<s>18</s>',
  ],
  checklist: ['<li data-blank="fuel-off">', '<strong>WARNING</strong> Petrol vapour', 'proved 2026-05-01', '0.5–0.6'],
  blanks: [
    '<td data-head="Limit">48.10</td>',
    '<span class="write">48.11</span>',
    'past the limit',
    'cold, bore gauge',
  ],
  caution: ['<p class="caution grade-note" role="note"><strong>NOTE</strong> Left and right'],
  drawing: ['width="100mm"', 'A strip of ten degrees.</desc>', 'stroke-dasharray', '>T</text>', 'exactly 100 mm'],
  plot: ['<svg class="broad"', '<svg class="slim"', 'rising towards the limit.</desc>', 'class="triangle"'],
  photo: [
    'src="../photos/crown.jpg" alt="A piston seen from above" width="8" height="6"',
    'href="../photos/crown.jpg"',
  ],
  cards: ['<ul class="cards tall">', '<p class="title">Bag 7</p>', 'Square code: PT-7', '<strong>Shim 0.3</strong>'],
  grid: [
    '<tr><td>0 min</td><td>fires, white smoke</td></tr>\n<tr><td></td><td></td></tr>\n<tr><td></td><td></td></tr>',
  ],
  signature: ['<dt>Checked by</dt><dd><span class="line"></span></dd>', 'A. Owner'],
  break: ['<hr class="break back">'],
  code: ['Square code: PT1-04417/2026-11-top-end', 'Machine and job'],
};

it.each(Object.values(sampleBlocks))('draws a block of type $type', (block) => {
  const html = draw(block);
  for (const piece of shows[block.type]) expect(html).toContain(piece);
});

describe('a box to write in', () => {
  const item = { id: 'bore', item: 'Bore', unit: 'mm' } as const;
  const html = (written: { readonly found?: string }): string =>
    draw({ type: 'blanks', items: [{ ...item, ...written }], empty: '' });
  it('has its unit behind it as long as it is empty; what is written says its own, once', () => {
    expect(html({}).split('<span class="unit">mm</span>')).toHaveLength(3);
    const written = html({ found: '2.758\u00a0in' });
    expect(written).toContain('<span class="write">2.758\u00a0in</span></span></td>');
    expect(written.split('<span class="unit">mm</span>')).toHaveLength(2);
  });
});

describe('what is empty or missing', () => {
  it('prints its sentence in place of an empty table', () => {
    const html = draw({ ...sampleBlocks.table, rows: [] });
    expect(html).toContain('<p class="empty">No fasteners are listed.</p>');
    expect(html).not.toContain('<table');
  });

  it('keeps the place and the words of a photo that is not there', () => {
    const html = renderPage(samplePage([sampleBlocks.photo]), { ...sampleFrame, photoOf: () => undefined });
    expect(html).toContain('Picture not here: photos/crown.jpg. A piston seen from above');
    expect(html).not.toContain('<img');
  });

  it('shows the text of a reference that leads nowhere, without a link', () => {
    const text = [{ kind: 'link', text: 'a job that is not there', to: 'job:nowhere' }] as const;
    const html = draw({ type: 'prose', paragraphs: [{ kind: 'paragraph', text }] });
    expect(html).toContain('<p>a job that is not there</p>');
  });

  it('never links outside the binder, but shows the address', () => {
    const text = [{ kind: 'link', text: 'a page', to: 'https://example.org/a' }] as const;
    const html = draw({ type: 'prose', paragraphs: [{ kind: 'paragraph', text }] });
    expect(html).toContain('<p>a page (https://example.org/a)</p>');
  });

  it('leaves out the columns of a measuring table that no row fills', () => {
    const html = draw({ type: 'blanks', items: [{ id: 'gap', item: 'Points gap', unit: 'mm' }], empty: '' });
    expect(html).toContain('<th scope="col">Found</th>');
    expect(html).not.toContain('Standard');
    expect(html).not.toContain('Verdict');
  });
});

it('skips no heading level, whatever level the blocks ask for', () => {
  const heading = (level: 1 | 2 | 3, id: string): Block => ({ type: 'heading', level, text: id, id });
  const words: Block = { type: 'prose', paragraphs: [{ kind: 'heading', level: 3, text: 'words' }] };
  const html = draw(
    heading(2, 'a'),
    words,
    heading(3, 'b'),
    heading(3, 'c'),
    words,
    heading(2, 'd'),
    heading(1, 'e'),
    heading(3, 'f'),
  );
  expect(html.match(/<h\d/g)).toEqual(['<h1', '<h2', '<h3', '<h3', '<h3', '<h4', '<h2', '<h2', '<h3']);
});

it('sets a first heading that repeats the title once, with its anchor', () => {
  const html = draw({ type: 'heading', level: 1, text: 'Top end', id: 'top' }, sampleBlocks.caution);
  expect(html).toContain('<h1 id="top">Top end</h1>');
  expect(html).not.toContain('<h2');
  expect(html).toContain('<strong>NOTE</strong>');
});
