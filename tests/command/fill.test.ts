// `fill` asks blank by blank in the printed order, writes down each answer at once, and overwrites nothing.
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { fillCommand, type FillOptions } from '../../src/command/fill-command.ts';
import { ticksSaid } from '../../src/command/fill/tick-words.ts';
import { copyOf, listening, recordOf, typing } from './typing.ts';

const job = '2026-11-28-rear-wheel';
const finch = 'tests/fixtures/finch-125';
const whole = [
  'y', 'y', 'all but 6', 'y', 'y', '3 arm bent a little', '', '', '', '', '24 > 25; tight spot', 'all', 'y',
  'all', 'y', 'y', 'y', 'by feel', 'y', '70', 'y', 'y', 's', 'clean', '', 'owner', 't', '', 'd',
]; // prettier-ignore

async function fill(folder: string, lines: readonly string[], options: FillOptions = {}, atTerminal = true) {
  const heard = listening(folder);
  const { asker, asked } = typing(lines, atTerminal);
  const code = await fillCommand(folder, job, { today: '2026-11-28', ...options }, heard.around, asker);
  return { code, asked, ...heard, text: recordOf(folder, job) };
}

describe('a sheet typed in', () => {
  test('asks what the sheet asks, with unit, standard, limit and caution', async () => {
    const { code, asked, told, text } = await fill(copyOf(finch), whole);
    expect(code).toBe(0);
    expect(asked.length).toBe(whole.length);
    expect(asked).toContainEqual('Chain slack (mm; standard 25 mm; limit 20 to 30 mm), found > left: ');
    expect(asked).toContainEqual(expect.stringContaining('Rear spindle nut, torque reached (N·m; standard 70 N·m'));
    expect(told.join('\n')).toContain('WARNING Engine off, plugs out.');
    for (const said of [
      'found: 24 mm',
      'left: 25 mm',
      'says: tight spot',
      'says: arm bent a little',
      'state: done',
      'hands: [owner]',
      '{check: rear-brake-holds}',
      'state left: [clean]',
      '{tightened: rear-spindle-nut, to: 70 N·m, result: reached}',
    ])
      expect(text).toContain(said);
    // What comes off stands before what goes back, and the wheel that was named as an exception has no tick.
    expect(text.indexOf('removed: rear wheel')).toBeLessThan(text.indexOf('refitted: rear wheel'));
    expect(text).not.toContain('step-6\n');
  });

  test('a torque, a reading and a line of safety are asked one by one, each time', async () => {
    const { asked } = await fill(copyOf(finch), whole);
    const together = asked.filter((one) => one.includes('only '));
    expect(together.length).toBe(3);
    expect(together.join()).not.toMatch(/torque|slack/u);
  });

  test('can be stopped and gone on with: the record itself is the state', async () => {
    const folder = copyOf(finch);
    const first = await fill(folder, ['y', 'y', 'all', 'q']);
    expect(first.text).toContain('removed: rear wheel');
    expect(first.said.join('\n')).toMatch(/open; go on at any time: splitpin fill/u);
    const second = await fill(folder, ['y', 'y', '', '', '', '', '24 > 25', 'q']);
    expect(second.asked[0]).toContain('Spindle nut, torque arm and adjusters broken loose');
    expect(second.text).toContain('found: 24 mm');
    expect(second.text.match(/removed: rear wheel/gu)).toHaveLength(1);
    expect(readdirSync(join(folder, 'jobs')).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  test('says at once what looks wrong, and lets it be written again', async () => {
    const lines = ['', '', '', '', '', '', '', '', '', 'about', '250 mm', '25', 'q'];
    const { told, text } = await fill(copyOf(finch), lines);
    expect(told.join('\n')).toContain('does not begin with a number');
    expect(told.join('\n')).toContain('About 10 times off what is to be expected: one unit taken for another?');
    expect(text).toContain('found: 25 mm');
  });

  test('Enter through all of it writes nothing', async () => {
    const folder = copyOf(finch);
    const before = recordOf(folder, job);
    const { text, said, code } = await fill(
      folder,
      Array.from({ length: 80 }, () => ''),
    );
    expect([code, text]).toEqual([0, before]);
    expect(said.join('\n')).toContain('Nothing was written');
  });

  test('--again asks what is there already, and takes another answer in its place', async () => {
    const folder = copyOf(finch);
    const lines = ['', '', '', '', '', '', '', '', '', '24', 'q'];
    await fill(folder, lines);
    const again = await fill(folder, ['', '', '', '', '', '', '', '', '', '25', 'q'], { again: true });
    expect(again.asked).toContainEqual(expect.stringContaining('now 24 mm > …'));
    expect(again.text).toContain('found: 25 mm');
    expect(again.text).not.toContain('24 mm');
  });
});

describe('through a pipe', () => {
  test('each line answers the next question', async () => {
    const { code, text } = await fill(copyOf(finch), whole, {}, false);
    expect(code).toBe(0);
    expect(text).toContain('found: 24 mm');
    expect(text).toContain('state: done');
  });

  test('an answer that cannot be kept is told, the rest is written, and the end says so', async () => {
    const lines = ['y', 'y', 'all', 'y', 'y', '', '', '', '', 'about right', 'all'];
    const { code, told, text } = await fill(copyOf(finch), lines, {}, false);
    expect(code).toBe(1);
    expect(told.join('\n')).toContain('does not begin with a number');
    expect(text).toContain('refitted: rear wheel');
  });
});

describe('a file of answers', () => {
  test('takes both sides of a reading in one line, and says what looks like a slip', async () => {
    const folder = copyOf(finch);
    const file = join(folder, '..', 'sheet.txt');
    writeFileSync(file, 'chain-slack//found: 24 > 25\n');
    const both = await fill(folder, [], { answers: 'sheet.txt' });
    expect([both.code, both.told]).toEqual([0, []]);
    expect(both.text).toMatch(/found: 24 mm, left: 25 mm/u);
    const other = copyOf(finch);
    writeFileSync(join(other, '..', 'sheet.txt'), 'chain-slack//found: 250 mm\n');
    const slip = await fill(other, [], { answers: 'sheet.txt' });
    expect([slip.code, slip.told.join()]).toEqual([0, expect.stringContaining('About 10 times off')]);
    expect(slip.text).toContain('found: 250 mm');
  });

  test('is what --list prints, filled in', async () => {
    const folder = copyOf(finch);
    const list = (await fill(folder, [], { list: true })).said.join('\n');
    expect(list).toContain('# Chain slack, as found (mm; standard 25 mm; limit 20 to 30 mm)\nchain-slack//found:');
    const file = join(folder, '..', 'sheet.txt');
    writeFileSync(
      file,
      list.replace('chain-slack//found:', 'chain-slack//found: 24,5').replace('rear wheel/off:', 'rear wheel/off: y'),
    );
    const { code, text, said } = await fill(folder, [], { answers: 'sheet.txt' });
    expect(code).toBe(0);
    expect(text).toContain('found: 24.5 mm');
    expect(text).toContain('removed: rear wheel');
    expect(said).toContainEqual('Chain slack, as found: 24.5 mm');
    // The same file once more says nothing new.
    expect((await fill(folder, [], { answers: 'sheet.txt' })).text).toBe(text);
  });

  test('lines that name no blank are told', async () => {
    const folder = copyOf(finch);
    writeFileSync(join(folder, '..', 'sheet.txt'), 'chain-slack//found: 24\nno such blank: 3\n');
    const { code, told, text } = await fill(folder, [], { answers: 'sheet.txt' });
    expect(code).toBe(1);
    expect(told).toContainEqual('No blank of this job: line 2: no such blank: 3');
    expect(text).toContain('found: 24 mm');
  });
});

describe('a sheet of the machine', () => {
  const name = 'new-first-start';

  /** A first start planned on the demo machine, and lines typed into it. */
  async function firstStart(answers: string, options: FillOptions = {}) {
    const folder = copyOf('demo-bike');
    writeFileSync(
      join(folder, 'jobs', `${name}.md`),
      '---\ntitle: First start\ndate: 2026-11-28\nkind: first start\nstate: planned\nprocedures: [first-start]\n---\n',
    );
    writeFileSync(join(folder, '..', 'sheet.txt'), answers);
    const heard = listening(folder);
    const code = await fillCommand(folder, name, { answers: 'sheet.txt', ...options }, heard.around, typing([]).asker);
    return { folder, code, ...heard, text: recordOf(folder, name) };
  }

  test('that is for this kind of job goes into its record: checks by their ids, minutes of the run', async () => {
    const { code, text, folder } = await firstStart(
      'before-live-kick/stop-switch-opens: y\nbefore-live-kick/battery-rested: y\nbefore-live-kick/battery-rested/value: 6,3\nrun-log/1/7: fired on the ninth kick\nrun-log/3/5: grey\nrun-log/3/7: clears\n',
      { hand: 'owner' },
    );
    expect(code).toBe(0);
    expect(text).toContain('{check: stop-switch-opens, by: owner}');
    expect(text).toContain('{check: battery-rested, by: owner, value: 6.3 V}');
    expect(text).toContain('{minute: 0, saw: fired on the ninth kick}');
    expect(text).toContain('{minute: 2, saw: "smoke: grey; clears"}');
    const again = listening(folder);
    await fillCommand(folder, name, { list: true }, again.around, typing([]).asker);
    expect(again.said.join('\n')).toContain('before-live-kick/stop-switch-opens: yes');
    expect(again.said.join('\n')).toContain('run-log/1/7: fired on the ninth kick');
  });

  test('that is named goes in as well: readings, services, grades of a form', async () => {
    const sheets = { sheet: ['inspection-engine', 'service-sheet', 'roadworthiness'] };
    const { code, text, told } = await firstStart(
      'inspection/compression/left/found: 6.9\nform/roadworthiness-core/bars/words: weak\n',
      sheets,
    );
    expect([code, told]).toEqual([0, []]);
    expect(text).toContain('{item: compression, found: {left: 6.9 bar}}');
    expect(text).toContain('says: weak');
  });
});

describe('another hand', () => {
  test('two copies of one sheet: both values are kept', async () => {
    const folder = copyOf(finch);
    writeFileSync(join(folder, '..', 'one.txt'), 'chain-slack//found: 24\n');
    writeFileSync(join(folder, '..', 'two.txt'), 'chain-slack//found: 31\n');
    await fill(folder, [], { answers: 'one.txt', hand: 'owner' });
    const { text } = await fill(folder, [], { answers: 'two.txt', hand: 'helper' });
    expect(text).toContain('found: 24 mm');
    expect(text).toContain('{item: chain-slack, found: 31 mm, by: helper}');
  });

  test('a record that is edited while it is filled in keeps what was edited, and takes what is typed', async () => {
    const folder = copyOf(finch);
    const path = join(folder, 'jobs', `${job}.md`);
    const heard = listening(folder);
    const { asker } = typing(['y', 'y', '', '', '', '', '', '', '', '24', 'q']);
    let asks = 0;
    const meddling = async (question: string): Promise<string | undefined> => {
      asks += 1;
      if (asks === 9) {
        const now = readFileSync(path, 'utf8');
        writeFileSync(
          path,
          now
            .replace('kind: repair', 'kind: repair # theirs')
            .replace('{item: chain-slack}', '{item: chain-slack, found: 31 mm}'),
        );
      }
      return asker.ask(question);
    };
    const code = await fillCommand(folder, job, { today: '2026-11-28' }, heard.around, { ...asker, ask: meddling });
    const text = recordOf(folder, job);
    expect(code).toBe(0);
    expect(heard.told.join('\n')).toContain('changed by another hand meanwhile');
    expect(text).toContain('kind: repair # theirs');
    expect(text).toContain('found: 31 mm');
    expect(text).toContain('found: 24 mm, by: second sheet');
  });

  test('a record that cannot be read any more is left alone, and the answers are kept beside', async () => {
    const folder = copyOf(finch);
    const path = join(folder, 'jobs', `${job}.md`);
    const heard = listening(folder);
    const { asker } = typing(['y', 'y', '', '', '', '', '', '', '', '24', 'q']);
    let asks = 0;
    const meddling = async (question: string): Promise<string | undefined> => {
      asks += 1;
      if (asks === 9) writeFileSync(path, 'half a');
      return asker.ask(question);
    };
    const code = await fillCommand(folder, job, { today: '2026-11-28' }, heard.around, { ...asker, ask: meddling });
    expect(code).toBe(1);
    expect(readFileSync(path, 'utf8')).toBe('half a');
    const aside = join(folder, '..', `${job}-answers.txt`);
    expect(existsSync(aside) && readFileSync(aside, 'utf8')).toBe('chain-slack//found: 24\n');
    expect(heard.told.join('\n')).toContain('--answers');
  });
});

describe('which job', () => {
  const named = async (wanted: string | undefined, machine = finch) => {
    const folder = copyOf(machine);
    const heard = listening(folder);
    const code = await fillCommand(folder, wanted, { list: true }, heard.around, typing([]).asker);
    return { code, ...heard };
  };

  test.each([job, `jobs/${job}.md`, 'rear-wheel', undefined])('%s is the one that is open', async (wanted) => {
    expect((await named(wanted)).code).toBe(0);
  });

  test('a done one has no blanks, and an unknown one brings the open ones', async () => {
    const done = await named('2026-02-21-service');
    expect([done.code, done.told[0]]).toEqual([
      2,
      '2026-02-21-service is done: it has no blanks. A correction goes into a later record.',
    ]);
    expect((await named('no such')).told.join('\n')).toContain(job);
  });
});

test.each([
  ['all', '1 2 3 4a 4b'],
  ['y', '1 2 3 4a 4b'],
  ['all as printed, except 3 and 4b', '1 2 4a'],
  ['all but 2', '1 3 4a 4b'],
  ['-2 3', '1 4a 4b'],
  ['2-4a', '2 3 4a'],
  ['1, 3', '1 3'],
])('“%s” of five ticks', (said, meant) => {
  const found = ticksSaid(said, ['1', '2', '3', '4a', '4b']);
  expect(found.kind === 'these' && found.labels.join(' ')).toBe(meant);
});

test.each([
  ['', 'later'],
  ['n', 'none'],
  ['all but 9', 'unclear'],
  ['perhaps', 'unclear'],
  ['3-1', 'unclear'],
])('“%s” of ticks is %s', (said, kind) => {
  expect(ticksSaid(said, ['1', '2', '3']).kind).toBe(kind);
});
