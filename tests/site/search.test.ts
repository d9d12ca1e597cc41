// Finding things: by number, size, frame, bag and bench words, begun, misspelt, in both dialects; and how large the file of the search may be.
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { readContent, searchEntries } from '../../src/build.ts';
import { finder, type Find } from '../../src/bench/search-index.ts';
import { readSearchData } from '../../src/bench/search-data.ts';
import { inBothDialects, wordsIn, wordsOfQuery } from '../../src/bench/search-words.ts';
import { makeBook } from '../../src/book/make.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { composePages } from '../../src/compose/pages.ts';
import { charactersFor } from '../../src/compose/search-entries.ts';
import { readContentFolder } from '../../src/disk.ts';
import { searchFileText } from '../../src/render/search-file.ts';
import { bookRecords } from '../bench/book-machine.ts';
import { day } from '../book/records.ts';

/** What the file puts into the window, read as a browser does. */
function inWindow(text: string): Find {
  const window: { splitpinSearch?: unknown } = {};
  runInNewContext(text, { window });
  const data = readSearchData(window.splitpinSearch);
  if (data === undefined) throw new Error('the file of the search cannot be read');
  return finder(data);
}

function textOf(folder: string): string {
  const { binder } = readMachine(folder, '2026-11-14', {});
  if (binder === undefined) throw new Error(`${folder} cannot be read`);
  return searchFileText(searchEntries(binder.book, binder.pages), binder.book.content.words);
}

const demo = textOf('demo-bike');
const find = inWindow(demo);
const titles = (query: string): readonly string[] => find(query).map(({ title }) => title);
const first = (query: string): string => titles(query)[0] ?? '';

describe('words', () => {
  it('keep numbers in one piece as well, and sizes however they are written', () => {
    expect(wordsIn('No. 48-123.5A')).toEqual(['no', '48', '123.5', 'a', '481235a']);
    expect(wordsOfQuery('M6×1,0')).toEqual(wordsOfQuery('m6 x 1.0'));
    expect(wordsOfQuery('25×40×7')).toEqual(['25', '40', '7']);
    expect(wordsOfQuery('Vergaserdüse Ø')).toEqual(['vergaserduse', 'ø']);
  });

  it('are turned into the other dialect, in either direction, also where two words are one thing', () => {
    const pairs = [
      ['tyre', 'tire'],
      ['split pin', 'cotter pin'],
    ] as const;
    expect(inBothDialects('front tire', pairs)).toEqual(['front tire', 'front tyre']);
    expect(inBothDialects('Split-pin', pairs)).toEqual(['split pin', 'cotter pin']);
  });
});

describe('the demo', () => {
  it('gives the frame by its number, with its signs and without', () => {
    const { binder } = readMachine('demo-bike', '2026-11-14', {});
    const frame = binder?.book.records.machine.numbers.find(({ name }) => name === 'frame')?.stamped ?? '';
    expect(frame).not.toBe('');
    expect(first(frame)).toBe(`Frame ${frame}`);
    expect(first(frame.replaceAll(/[^\p{L}\p{N}]/gu, ''))).toBe(`Frame ${frame}`);
  });

  it('gives two words that were written as one, and still nothing for what is no word', () => {
    expect(first('sparkplug')).toMatch(/spark(?:ing)? plug/iu);
    expect(first('headgasket')).toMatch(/head gasket/iu);
    expect(titles('zzzqqqxx')).toEqual([]);
  });

  it('gives every part by its number', () => {
    const { binder } = readMachine('demo-bike', '2026-11-14', {});
    const parts =
      binder?.book.records.jobs.flatMap((job) => job.parts).filter(({ number }) => number !== undefined) ?? [];
    expect(parts.length).toBeGreaterThan(3);
    for (const { part, number = '' } of parts) {
      expect(
        titles(number)
          .slice(0, 8)
          .map((title) => title.toLowerCase()),
        number,
      ).toContain(part.toLowerCase());
    }
  });

  it('gives fasteners by their thread', () => {
    expect(titles('M16x1')).toContain('Gearbox sprocket nut');
    expect(titles('M16×1,0')).toContain('Gearbox sprocket nut');
  });

  it('forgives a letter in four and a beginning, and takes both dialects', () => {
    expect(titles('gearbx oil')).toContain('Gearbox oil');
    expect(titles('condensor').join()).toMatch(/condenser/iu);
    expect(titles('sparkng plug').join()).toMatch(/plug/iu);
    expect(titles('crankc pres')).toContain('Crankcase pressure test');
    const [british, american] = [titles('rear wheel spindle'), titles('rear wheel axle')];
    expect(british).toContain('Rear wheel spindle nut');
    expect(american).toContain('Rear wheel spindle nut');
    expect(inWindow(textOf('tests/fixtures/tern-350'))('front wheel spindle').map(({ title }) => title)).toContain(
      'Front axle nut',
    );
  });

  it('gives calculations, workings, sheets, hold points and the manual', () => {
    expect(titles('oil in fuel')).toContain('Oil in the fuel, and topping up');
    expect(titles('shim')).toContain('Shim to fit');
    expect(titles('before the road')).toContain('Before the road');
    expect(titles('number-ambiguous')).toContain('number-ambiguous');
    expect(find('torque table').map(({ kind }) => kind)).toContain('sheet');
  });

  it('finds nothing for what is nowhere, and does not break on signs', () => {
    expect(find('zzzzqqqq')).toEqual([]);
    expect(find('"><script>')).toEqual(find('script'));
    expect(find('((( \\ [a-')).toEqual(find('a'));
  });
});

describe('the file', () => {
  it('is the same each time, and holds no end of a script and no sign that turns the writing', () => {
    expect(textOf('demo-bike')).toBe(demo);
    const entry = { kind: '</script>', title: '<!-- \u202e', file: 'a.html', words: () => '\u2028</script>' };
    const text = searchFileText([entry], []);
    expect(text).not.toMatch(/[<\u2028\u202e]/u);
    expect(inWindow(text)('script')).toEqual([
      { kind: '</script>', title: '<!-- U+202E', file: 'a.html', words: '\u2028</script>' },
    ]);
  });

  it('stays below 300 bytes a record of 5,000, and keeps whole stories of a few', () => {
    const book = makeBook(bookRecords(5000), readContent(readContentFolder()).value, day('2026-11-14'));
    const bytes = Buffer.byteLength(searchFileText(searchEntries(book, composePages(book, [])), book.content.words));
    expect(bytes / 5000).toBeLessThan(300);
    expect(charactersFor(5000)).toBe(180);
    expect(charactersFor(100)).toBe(2000);
    expect(charactersFor(0)).toBe(2000);
  });
});

it('no two entries of the manual have one title: a file that two pages speak of says on which', () => {
  const { binder } = readMachine('demo-bike', '2026-11-14', {});
  const manual =
    binder === undefined ? [] : searchEntries(binder.book, binder.pages).filter(({ kind }) => kind === 'manual');
  const all = manual.map(({ title }) => title);
  expect(all).toContain('adopted.yaml: Every key');
  expect(all).toContain('adopted.yaml: The formats, by example');
  expect(all.filter((title, index) => all.indexOf(title) !== index)).toEqual([]);
});
