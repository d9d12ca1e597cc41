// Odd input at the readers: what must simply work, and what must be told with its place while nothing else is lost.
import { describe, expect, test } from 'vitest';
import type { Problem } from '../../src/problem/problem.ts';
import { readContent } from '../../src/records/read-content.ts';
import { readRecords } from '../../src/records/read.ts';
import type { SourceFile } from '../../src/source/files.ts';
import { locate } from '../../src/source/locate.ts';
import { readDocument } from '../../src/source/document.ts';
import { job, machineFiles, manualAssets } from './folder.ts';

function read(...jobs: readonly SourceFile[]): ReturnType<typeof readRecords> {
  return readRecords([...machineFiles, ...jobs], manualAssets);
}

/** `file:line:column code` of each problem. */
function told(problems: readonly Problem[], files: readonly SourceFile[]): readonly string[] {
  return problems.map(({ at, code }) => {
    const text = [...machineFiles, ...files].find(({ file }) => file === at.file)?.text ?? '';
    const { line, column } = locate(text, at);
    return `${at.file}:${String(line)}:${String(column)} ${code}`;
  });
}

function problemsOf(...jobs: readonly SourceFile[]): readonly string[] {
  return told(read(...jobs).problems, jobs);
}

describe('what must simply work', () => {
  test.each([
    ['CRLF', (text: string) => text.replaceAll('\n', '\r\n')],
    ['CR alone', (text: string) => text.replaceAll('\n', '\r')],
    ['a byte order mark', (text: string) => `\uFEFF${text}`],
    ['a byte order mark and CRLF', (text: string) => `\uFEFF${text.replaceAll('\n', '\r\n')}`],
    ['no newline at the end', (text: string) => text.trimEnd()],
    ['spaces after the fences', (text: string) => text.replaceAll('---', '---  ')],
  ])('%s', (_what, change) => {
    const plain = read(job('a', ['next: look at the chain'])).value?.jobs[0];
    const file = job('a', ['next: look at the chain']);
    const { value, problems } = read({ ...file, text: change(file.text) });
    expect(problems).toEqual([]);
    expect(value?.jobs[0]?.next).toBe('look at the chain');
    expect(value?.jobs[0]?.body.trim()).toBe('Words.');
    expect(value?.jobs[0]?.bodyLine).toBe(plain?.bodyLine);
  });

  test.each(["the owner's bike (2)", '2025 05 plug "hot"', 'свеча', '点火プラグ', 'Zündkerze', 'a.b.c', '#1', '100%'])(
    'a file named %s',
    (name) => {
      const { value, problems } = read(job(name), job('later', [`continues: ${JSON.stringify(name)}`], '2025-06-01'));
      expect(problems).toEqual([]);
      expect(value?.jobs.map(({ id }) => id)).toEqual([name.normalize('NFC'), 'later']);
    },
  );

  test('an accented letter written in two ways is one name', () => {
    const { value, problems } = read(job('Zu\u0308ndkerze'), job('later', ['continues: Z\u00fcndkerze'], '2025-06-01'));
    expect(problems).toEqual([]);
    expect(value?.jobs[0]?.id).toBe('Z\u00fcndkerze');
  });

  test('files in any order give the same records', () => {
    const jobs = [job('b', [], '2025-05-02'), job('c', [], '2025-05-01'), job('a', [], '2025-05-02')];
    const forward = readRecords([...machineFiles, ...jobs], manualAssets);
    const backward = readRecords([...machineFiles, ...jobs].toReversed(), manualAssets);
    expect(forward.value?.jobs.map(({ id }) => id)).toEqual(['c', 'a', 'b']);
    expect(backward).toEqual(forward);
  });

  test('a bare question mark is not known; half-read digits are words; a comma may be a decimal sign', () => {
    const { value, problems } = read(
      job('a', [
        'readings: [{item: points-gap, found: ?, left: 0,35 mm}, {item: bore, found: {left top across: 5?.05 mm}}]',
      ]),
    );
    // In braces a comma ends the value: “35 mm” is then a key, and the hint says what to write.
    expect(problems.map(({ code }) => code)).toEqual(['number-ambiguous']);
    expect(problems[0]?.hint).toContain('write 0.35 mm');
    const block = read(
      job('a', [
        'readings:',
        '  - item: points-gap',
        '    found: ?',
        '    left: 0,35 mm',
        '  - {item: bore, found: {left top across: 5?.05 mm}}',
      ]),
    );
    expect(block.problems).toEqual([]);
    const [gap, bore] = block.value?.jobs[0]?.readings ?? [];
    expect(gap?.found[0]?.value).toEqual({ kind: 'unknown' });
    expect(gap?.left[0]?.value).toMatchObject({ kind: 'read', written: { decimals: 2 } });
    expect(bore?.found[0]?.value).toEqual({ kind: 'words', text: '5?.05 mm' });
    expect(value?.unread).toMatchObject([{ file: 'jobs/a.md', codes: ['number-ambiguous'] }]);
  });

  test('any value may be private', () => {
    const { value, problems } = read(
      job('a', [
        'next: {value: sell it quietly, private: yes}',
        'readings: [{item: own words, found: {left: {value: 3 mm, private: yes}}}]',
      ]),
    );
    expect(problems).toEqual([]);
    expect(value?.jobs[0]?.next).toBe('sell it quietly');
    expect(value?.kept?.map(({ path }) => path)).toEqual([
      ['next', 'value'],
      ['readings', 0, 'found', 'left', 'value'],
    ]);
  });

  test('hard use, second steps and grace of a service line', () => {
    const lines = new Map(read().value?.maker.services.map((line) => [line.id, line]));
    const oil = lines.get('gearbox-oil-change');
    expect(oil?.every).toMatchObject({ months: 6, distance: { text: '2000 mi' } });
    expect(oil?.grace).toBe(0);
    expect(oil?.severe).toMatchObject({ water: 'at once', dust: { distance: { text: '500 mi' } } });
    expect(lines.get('brake-shoes')?.wear).toBe('lining-thickness');
  });
});

describe('what must be told', () => {
  test('front matter in a language that runs is refused and never run', () => {
    const marker = 'splitpinWasRun';
    for (const language of ['js', 'javascript', 'JS', ' js', 'coffee', 'json', 'toml']) {
      const file = { file: 'jobs/a.md', text: `---${language}\nglobalThis.${marker} = true\n---\n` };
      expect(problemsOf(file)).toEqual(['jobs/a.md:1:1 front-matter-language']);
    }
    expect(Object.hasOwn(globalThis, marker)).toBe(false);
  });

  test('everything wrong in a file is told at once', () => {
    const file = job('a', ['odometr: 8214 mi', 'time: 3 bar', 'heat cycles: many', 'findings: [{saw: oil}, {id: b}]']);
    expect(problemsOf(file)).toEqual([
      'jobs/a.md:6:1 key-unknown',
      'jobs/a.md:7:7 unit-wrong',
      'jobs/a.md:8:14 number-unreadable',
      'jobs/a.md:9:12 key-missing',
      'jobs/a.md:9:24 key-missing',
    ]);
  });

  test('the nearest unit is named', () => {
    const { problems } = read(job('a', ['work: [{tightened: cylinder-head-nut, to: 16 lbf·fz}]']));
    expect(problems.map(({ code }) => code)).toEqual(['unit-unknown']);
    expect(problems[0]?.hint).toContain('lbf·ft');
  });

  test('a broken job is left out and named; the rest is read', () => {
    const { value, problems } = read(
      job('good'),
      job('bad', ['odometer: 12,480 mi'], '2025-06-01'),
      job('late', ['continues: bad'], '2025-07-01'),
    );
    expect(problems.map(({ code }) => code)).toEqual(['number-ambiguous']);
    expect(value?.jobs.map(({ id }) => id)).toEqual(['good', 'late']);
    expect(value?.unread).toMatchObject([{ file: 'jobs/bad.md', codes: ['number-ambiguous'] }]);
  });

  test('one bad entry of a maker’s file costs that entry only', () => {
    const book =
      'splitpin: 1\nsource: {title: Second book}\nfasteners:\n  - {id: a-nut, name: A nut, torque: 3 mm}\n  - {id: b-nut, name: B nut, torque: 3 N·m}\n';
    const { value, problems } = read({ file: 'maker/second.yaml', text: book });
    expect(problems.map(({ code }) => code)).toEqual(['unit-wrong']);
    const ids = value?.maker.fasteners.map(({ id }) => id);
    expect(ids).toContain('b-nut');
    expect(ids).not.toContain('a-nut');
  });

  test('without a readable machine.yaml there are no records, and every file is still looked at', () => {
    const files = [{ file: 'machine.yaml', text: 'splitpin: 1\nname: [a]\n' }, job('a', ['odometr: 3 mi'])];
    const { value, problems } = readRecords(files, []);
    expect(value).toBeUndefined();
    expect(problems.map(({ code }) => code)).toContain('key-unknown');
    expect(problems.map(({ code }) => code)).toContain('value-not-text');
  });

  test('two files of one id, whatever the case and the spelling of an accent', () => {
    expect(problemsOf(job('Plug'), job('old/plug'))).toEqual(['jobs/old/plug.md:1:1 id-twice']);
    expect(problemsOf(job('Zu\u0308nder'), job('Z\u00fcnder'))).toHaveLength(1);
  });

  test('a record over a megabyte', () => {
    const big = job('a');
    expect(problemsOf({ ...big, text: big.text + 'x'.repeat(1_000_000) })).toEqual(['jobs/a.md:1:1 record-too-large']);
  });

  test.each([
    ['an alias bomb', 'a: &a [x]\nb: &b [*a, *a]\nc: [*b, *b]\n'],
    ['brackets without end', `a: ${'['.repeat(100_000)}\n`],
    ['lists without end', `${'- '.repeat(100_000)}\n`],
    ['a tag that runs', 'a: !!js/function "function () { return 1 }"\n'],
    ['two documents', 'a: 1\n---\nb: 2\n'],
  ])('%s', (_what, text) => {
    const { value, problems } = readDocument({ file: 'machine.yaml', text });
    expect(value).toBeUndefined();
    expect(problems.length).toBeGreaterThan(0);
  });

  test('brackets in brackets: forty are read, one more is not', () => {
    const codes = (depth: number): readonly string[] => {
      const text = `a: ${'['.repeat(depth)}x${']'.repeat(depth)}\n`;
      return readDocument({ file: 'machine.yaml', text }).problems.map(({ code }) => code);
    };
    expect(codes(40)).toEqual([]);
    expect(codes(41)).toEqual(['yaml-too-deep']);
  });

  test('keys that a program might trip over are only unknown keys', () => {
    const file = job('a', ['__proto__: {polluted: yes}', 'constructor: x', 'toString: y']);
    expect(read(file).problems.map(({ code }) => code)).toEqual(['key-unknown', 'key-unknown', 'key-unknown']);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });

  test.each([
    '/etc/passwd',
    '../../etc/passwd',
    'photos/../../x.png',
    'C:\\x.png',
    'photos\\x.png',
    'file:///x.png',
    'https://a.example/x.png',
    '~/x.png',
  ])('a photo at %s', (path) => {
    const codes = read(job('a', [`photos: [{file: '${path}', caption: x}]`])).problems.map(({ code }) => code);
    expect(codes).toEqual(['path-climbs']);
  });

  test('a photo behind a linked folder', () => {
    const link = { file: 'photos/album', absolute: '/nowhere', size: 0, modified: 0, link: true };
    const jobs = [...machineFiles, job('a', ['photos: [{file: photos/album/x.png, caption: x}]'])];
    expect(readRecords(jobs, [...manualAssets, link]).problems.map(({ code }) => code)).toEqual(['path-through-link']);
  });
});

describe('the clock', () => {
  test('goes on over a change of instrument', () => {
    const jobs = [
      job('a', ['odometer: 8200 mi'], '2026-03-01'),
      job('b', ['odometer: 8214 mi'], '2026-03-14'),
      job('c', ['odometer: 23418 mi'], '2026-03-14'),
      job('d', ['odometer: 23500 mi'], '2026-04-01'),
    ];
    expect(problemsOf(...jobs)).toEqual([]);
  });

  test('going back is told with both places, also within one day’s ride and against the clock’s own ends', () => {
    const back = read(job('a', ['odometer: 8200 mi'], '2025-03-01'), job('b', ['odometer: 8100 mi'], '2025-04-01'));
    expect(back.problems.map(({ code, also }) => [code, also?.[0]?.at.file])).toEqual([
      ['odometer-went-back', 'jobs/a.md'],
    ]);
    const over = read(job('a', ['odometer: 8300 mi'], '2025-03-01'));
    expect(over.problems.map(({ at }) => at.file)).toEqual(['machine.yaml']);
  });

  test('that rolled over may read less', () => {
    const files = machineFiles.map((file) =>
      file.file === 'machine.yaml' ? { ...file, text: file.text.replace('state: dead ', 'state: rolled over ') } : file,
    );
    const jobs = [job('a', ['odometer: 8200 mi'], '2025-03-01'), job('b', ['odometer: 40 mi'], '2025-04-01')];
    expect(readRecords([...files, ...jobs], manualAssets).problems).toEqual([]);
  });
});

describe('content', () => {
  test('a caution that does not exist is told with its place and the nearest name', () => {
    const cautions = {
      file: 'content/cautions/a.md',
      text: '---\ncautions: [{id: petrol, grade: WARNING, line: Burns.}]\n---\n',
    };
    const sheet = {
      file: 'content/sheets/s.md',
      text: '---\nsheet: s\ncode: S\ntitle: S\nper: machine\nsection: X\nviews:\n  - {caution: petrl}\n---\n',
    };
    const { problems } = readContent([cautions, sheet]);
    expect(problems).toMatchObject([{ code: 'reference-unknown', hint: 'Did you mean “petrol”?' }]);
    expect(problems.map(({ at }) => locate(sheet.text, at))).toMatchObject([{ line: 8, column: 15, length: 5 }]);
  });

  test('`applies` takes the words of the features and no others', () => {
    const text =
      '---\nprocedure: p\ntitle: P\napplies: {stroke: too, lubrication: [pump, premix]}\nsteps: [{do: x}]\n---\n';
    expect(readContent([{ file: 'content/procedures/p.md', text }]).problems).toMatchObject([
      { code: 'word-unknown', hint: 'Did you mean “two”?' },
    ]);
  });
});
