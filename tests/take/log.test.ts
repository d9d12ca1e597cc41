// An old log becomes records: shown first, nothing guessed, nothing twice, and what is broken is named with its line.
import { readFileSync, readdirSync, writeFileSync, cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { describe, expect, test } from 'vitest';
import { entryPrint, printsIn, recordsOf } from '../../src/command/take/log/records.ts';
import { readRecords } from '../../src/records/read.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { stops } from '../../src/build.ts';
import { small, smallMachine } from '../command/small-machine.ts';
import { take } from '../forms/take-here.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

function log(machine: string, content: string | Uint8Array, name = 'log.csv'): string {
  const path = join(dirname(machine), name);
  writeFileSync(path, content);
  return path;
}
const jobsOf = (machine: string): readonly string[] => readdirSync(join(machine, 'jobs')).toSorted();
const job = (machine: string, name: string): string => readFileSync(join(machine, 'jobs', name), 'utf8');

const markdown = (text: string): readonly object[] => {
  const tokens = new MarkdownIt({ html: true }).parse(text, {});
  return tokens.flatMap((token) => [{ type: token.type }, ...(token.children ?? []).map(({ type }) => ({ type }))]);
};

const plain = `Date,Miles,Work,Cost
2024-04-20,1010,"Oil changed, 650 ml",12.50
2024-04-27,1025,New plug,3.20
`;

describe('a log in columns', () => {
  test('is shown as it will be read, written when agreed, and never taken twice', async () => {
    const machine = smallMachine();
    const before = jobsOf(machine);
    const path = log(machine, plain);
    const refused = await take(machine, [path], {}, ['no']);
    expect(refused.said).toContain('date      column 1 “Date”: year-month-day');
    expect(refused.said).toContain('odometer  column 2 “Miles”: mi where no unit is written');
    expect(refused.said).toContain('cost      column 4 “Cost”: GBP where no currency is written');
    expect(refused.said).toContain('jobs/2024-04-20-oil-changed-650-ml.md   1010 mi, 12.50 GBP');
    expect(jobsOf(machine)).toEqual(before);
    expect((await take(machine, [path])).said).toContain('--yes');
    expect((await take(machine, [path], { show: true })).code).toBe(0);
    expect(jobsOf(machine)).toEqual(before);

    expect((await take(machine, [path], {}, ['yes'])).said).toContain('2 records written');
    expect(job(machine, '2024-04-20-oil-changed-650-ml.md')).toBe(`---
title: "Oil changed, 650 ml"
date: 2024-04-20
kind: service
state: done
odometer: 1010 mi
money:
  - {paid: 12.50 GBP, for: "Oil changed, 650 ml"}
---
Oil changed, 650 ml

Taken from log.csv, line 2, print ${/print ([0-9a-z]{7})/u.exec(job(machine, '2024-04-20-oil-changed-650-ml.md'))?.[1] ?? 'none'}.
`);
    const after = jobsOf(machine);
    expect(after.length).toBe(before.length + 2);

    const more = log(
      machine,
      plain.replaceAll(',', ';').replace('"Oil changed; 650 ml"', '"Oil changed, 650 ml"') +
        '2024-05-01;1030;Tyres;40\n',
      'again.csv',
    );
    const again = await take(machine, [more], { yes: true });
    expect(again.said).toContain('2 rows are in the records already and are not taken again.');
    expect(jobsOf(machine)).toEqual([...after, '2024-05-01-tyres.md'].toSorted());
  });

  test('each common separator and encoding is read, and said', async () => {
    const rows = [
      ['Date', 'Text'],
      ['2024-04-20', 'Café, naïve – “quoted”'],
    ];
    const utf16 = (text: string): Buffer => Buffer.from(text, 'utf16le');
    for (const [separator, name] of [
      [';', 'semicolons'],
      ['\t', 'tabs'],
      ['|', 'pipes'],
    ] as const) {
      const text = rows.map((row) => row.join(separator)).join('\r\n');
      const machine = smallMachine();
      const { said } = await take(machine, [log(machine, text)], { yes: true });
      expect(said).toContain(`UTF-8, its columns are parted by ${name}`);
      expect(job(machine, '2024-04-20-cafe-naive-quoted.md')).toContain('Café, naïve – “quoted”');
    }
    const text = rows.map((row) => row.join('\t')).join('\r\n');
    const others: readonly (readonly [Uint8Array, string])[] = [
      [Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), Buffer.from(text)]), 'UTF-8'],
      [Buffer.concat([Buffer.from([0xff, 0xfe]), utf16(text)]), 'UTF-16'],
      [Buffer.concat([Buffer.from([0xfe, 0xff]), utf16(text).swap16()]), 'UTF-16'],
      [utf16(text), 'UTF-16'],
    ];
    for (const [bytes, name] of others) {
      const machine = smallMachine();
      expect((await take(machine, [log(machine, bytes)], { yes: true })).said).toContain(`is ${name}`);
      expect(job(machine, '2024-04-20-cafe-naive-quoted.md')).toContain('Café, naïve');
    }
    const western = Buffer.from('Date;Text\n2024-04-20;Caf\xe9 \x80 12\n', 'latin1');
    const machine = smallMachine();
    expect((await take(machine, [log(machine, western)], { yes: true })).said).toContain('is Windows-1252');
    expect(job(machine, '2024-04-20-cafe-12.md')).toContain('Café € 12');
  });

  test('a date that can be two is asked, and read from its neighbours where they decide', async () => {
    const machine = smallMachine();
    const both = log(machine, 'Date,Text\n03/04/2024,one\n05/06/2024,two\n');
    const asked = await take(machine, [both], { yes: true });
    expect(asked.code).toBe(2);
    expect(asked.said).toContain('--how dates=day-month-year');
    const said = await take(machine, [both], { show: true, how: ['dates=month-day-year'] });
    expect(said.said).toContain('jobs/2024-03-04-one.md');
    const decided = log(machine, 'Date,Text\n03/04/2024,one\n23/04/2024,two\n');
    expect((await take(machine, [decided], { show: true })).said).toContain('jobs/2024-04-03-one.md');
    const words = log(machine, 'Date,Text\n3 April 2024,one\n"May 4, 2024",two\n');
    const worded = (await take(machine, [words], { show: true })).said;
    expect(worded).toContain('jobs/2024-04-03-one.md');
    expect(worded).toContain('jobs/2024-05-04-two.md');
    const three = log(machine, 'Date,Text\n03/04/05,one\n');
    const short = (await take(machine, [three], { show: true })).said;
    for (const order of ['day-month-year', 'month-day-year', 'year-month-day']) expect(short).toContain(order);
    // The machine is of 1970: a year 71 can only be 1971, and a year 05 only 2005.
    const old = log(machine, 'Date,Text\n13/04/71,one\n');
    expect((await take(machine, [old], { show: true })).said).toContain('jobs/1971-04-13-one.md');
  });

  test('a comma that can be thousands or decimals is asked', async () => {
    const machine = smallMachine();
    const either = log(machine, 'Date;Miles;Text\n2024-04-20;"1,010";one\n');
    const asked = await take(machine, [either], { yes: true });
    expect([asked.code, asked.said]).toEqual([2, expect.stringContaining('--how decimal=point')]);
    expect((await take(machine, [either], { show: true, how: ['decimal=point'] })).said).toContain('1010 mi');
    const shown = log(machine, 'Date;Miles;Text;Cost\n2024-04-20;"1.010";one;12,50\n');
    expect((await take(machine, [shown], { show: true })).said).toContain('1010 mi, 12.50 GBP');
    const mixed = log(machine, 'Date;Text;Cost\n2024-04-20;one;12,50\n2024-04-21;two;13.5\n');
    expect((await take(machine, [mixed], { show: true })).code).toBe(2);
  });

  test('broken quotes are named with the line where they begin', async () => {
    const machine = smallMachine();
    const before = jobsOf(machine);
    const cases: readonly (readonly [string, string])[] = [
      [
        'Date,Text\n2024-04-20,fine\n2024-04-21,"never closed\n2024-04-22,x\n',
        'log.csv:3: a quote is opened and never closed',
      ],
      ['Date,Text\n2024-04-20,x"y\n', 'log.csv:2: a quote stands in the middle of a cell'],
      ['Date,Text\n2024-04-20,"x" y\n', 'log.csv:2: something follows a closing quote'],
    ];
    for (const [text, said] of cases) {
      const took = await take(machine, [log(machine, text)], { yes: true });
      expect([took.code, took.said]).toEqual([1, expect.stringContaining(said)]);
    }
    expect(jobsOf(machine)).toEqual(before);
  });

  test('cells that begin like formulas, and marks of Markdown, stay words', async () => {
    const machine = smallMachine();
    const path = log(
      machine,
      'Date,Text,Cost,Who\n2024-04-20,=HYPERLINK(1),=1+2,@me\n2024-04-21,"# no heading\n![x](../../secret.png) <b>\n---\nfurther",+cmd,-x\n',
    );
    const took = await take(machine, [path], { yes: true });
    expect(took.said).toContain('log.csv:2: kept as words, for it cannot be read as a figure: cost: =1+2');
    const first = job(machine, '2024-04-20-hyperlink-1.md');
    expect(first).toContain('title: "=HYPERLINK(1)"');
    expect(first).not.toContain('money:');
    const second = job(machine, '2024-04-21-no-heading.md');
    expect(second).toContain('\\# no heading\n\\!\\[x\\](../../secret.png) \\<b\\>\n\\---');
    expect(second).toContain('- Who: -x');
    expect(stops(readMachine(machine, '2024-06-01', {}).problems)).toEqual([]);
  });

  test('rows without a day, and a column that is not clear, stop it until the person has said', async () => {
    const machine = smallMachine();
    const path = log(machine, 'Date,Text\n2024-04-20,one\nsoon,two\n2024-02-31,three\n');
    const stopped = await take(machine, [path], { yes: true });
    expect(stopped.code).toBe(2);
    expect(stopped.said).toContain('log.csv:3: “soon” is no date');
    expect(stopped.said).toContain('log.csv:4: “2024-02-31” is no date');
    expect((await take(machine, [path], { yes: true, how: ['undated=leave-out'] })).said).toContain('1 record written');
    const bare = log(machine, '2024-04-20;1010;one\n', 'bare.csv');
    const asked = await take(machine, [bare], { yes: true });
    expect([asked.code, asked.said]).toEqual([2, expect.stringContaining('--how columns=')]);
    expect((await take(machine, [bare], { show: true, how: ['columns=date=1,odometer=2,text=3'] })).said).toContain(
      '1010 mi',
    );
    expect((await take(machine, [bare], { how: ['columns=date=9'] })).said).toContain('“date=9” is not a column');
  });

  test('one record a day, with money that came back and the other columns in words', async () => {
    const machine = smallMachine();
    const path = log(machine, 'Date,Miles,Work,Cost,Who\n2024-04-20,1010,Oil,12.50,me\n2024-04-20,1012,Chain,-5,her\n');
    await take(machine, [path], { yes: true, how: ['per=day', 'kind=repair'] });
    const text = job(machine, '2024-04-20-oil.md');
    expect(text).toContain('kind: repair');
    expect(text).toContain('odometer: 1012 mi');
    expect(text).toContain('  - {paid: 12.50 GBP, for: Oil}\n  - {refund: 5 GBP, for: Chain}');
    expect(text).toContain('- odometer: 1010 mi\n- Who: me');
    expect(text).toContain('- Who: her');
    expect((await take(machine, [path], { yes: true })).said).toContain('Nothing is new');
  });

  test('what the records would refuse is told and not written; the clock can be kept in words', async () => {
    const machine = smallMachine();
    const before = jobsOf(machine);
    const path = log(machine, 'Date,km,Text\n2024-04-20,1010,one\n');
    const refused = await take(machine, [path], { yes: true });
    expect([refused.code, refused.said]).toEqual([1, expect.stringContaining('odometer-other-unit')]);
    expect(refused.said).toContain('--how unit="in words"');
    expect(jobsOf(machine)).toEqual(before);
    expect((await take(machine, [path], { yes: true, how: ['unit=in words'] })).code).toBe(0);
    expect(job(machine, '2024-04-20-one.md')).toContain('- odometer: 1010');
  });

  test('what is no log is refused in words', async () => {
    const machine = smallMachine();
    for (const [bytes, said] of [
      [Buffer.from([1, 0, 2, 0, 0, 0, 7, 9]), 'is not a text'],
      [Buffer.from(''), 'Which sign parts the columns?'],
      [Buffer.alloc(10_000_001, 'a,b\n'), 'larger than a log'],
    ] as const) {
      const took = await take(machine, [log(machine, bytes)], { yes: true });
      expect(took.code).not.toBe(0);
      expect(took.said).toContain(said);
    }
    expect((await take(machine, [join(machine, 'none.csv')])).code).toBe(2);
  });

  test.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])('goes into %s', async (name) => {
    const machine = join(mkdtempSync(join(tmpdir(), 'splitpin-log-')), 'bike');
    cpSync(join(root, name), machine, { recursive: true });
    const wrong = stops(readMachine(machine, '2026-11-25', {}).problems).length;
    const took = await take(machine, [log(machine, 'Date;Text;Cost\n2019-04-20;Bought a lamp;3,50\n')], { yes: true });
    expect([took.code, took.said]).toEqual([0, expect.stringContaining('1 record written')]);
    expect(stops(readMachine(machine, '2026-11-25', {}).problems).length).toBe(wrong);
  });
});

test('whatever words a row holds, its record is read and says them, and nothing of them is markup', () => {
  const any = fc
    .string({ maxLength: 60, unit: 'binary' })
    .map((text) => text.normalize('NFC').replaceAll(/[\p{Cs}\p{Co}\p{Cn}\uFFFD]/gu, ''));
  const signs = fc.constantFrom(
    '#',
    '-',
    '=',
    '*',
    '_',
    '`',
    '~',
    '>',
    '|',
    '!',
    '[',
    ']',
    '(',
    ')',
    '<',
    '>',
    '&',
    '\\',
    '+',
    '1.',
    '2)',
    ':',
    ' ',
    '    ',
    '\n',
    '\n\n',
    'a',
    'http://b.example',
    '\t',
    '"',
    "'",
    '?',
    '---',
    ']: x',
  );
  const words = fc.oneof(
    any,
    fc.array(signs, { maxLength: 14 }).map((parts) => parts.join('')),
  );
  const files = Object.entries(small).map(([file, text]) => ({ file, text }));
  fc.assert(
    fc.property(words, words, (text, beside) => {
      const entry = { line: 2, day: '2024-04-20', text, cost: '12.50 GBP', beside: [beside], cells: [text, beside] };
      const [record] = recordsOf([entry], { per: 'row', kind: 'service', from: 'log.csv', taken: new Set() });
      if (record === undefined) throw new Error('no record');
      const read = readRecords([...files, record], []);
      expect(read.problems.filter((problem) => problem.at.file === record.file)).toEqual([]);
      const job = read.value?.jobs.find((one) => one.file === record.file);
      expect(job?.money[0]?.amount).toEqual({ minor: 1250, currency: 'GBP' });
      expect(printsIn([record.text])).toEqual(new Set([entryPrint(entry)]));
      const blocks = JSON.stringify(markdown(job?.body ?? ''));
      for (const kind of [
        'heading',
        'link',
        'image',
        'html',
        'code',
        'fence',
        'hr',
        'blockquote',
        'table',
        'em_',
        'strong',
      ])
        expect([kind, blocks.includes(`"type":"${kind}`)]).toEqual([kind, false]);
    }),
    { numRuns: 150 },
  );
});
