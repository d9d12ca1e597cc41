// A sheet typed in: each blank goes to its key, is read back as it was given, and nothing else in the record changes.
import { describe, expect, test } from 'vitest';
import { numberedSteps } from '../../src/book/numbered-steps.ts';
import type { Answer } from '../../src/entry/answer.ts';
import type { Blank } from '../../src/entry/blank.ts';
import { blanksOfAll } from '../../src/entry/blanks-of.ts';
import { writeAnswers } from '../../src/entry/write-answers.ts';
import { filesOf, machines, openJobs, today, withRecord, type OpenJob } from './open-jobs.ts';

const all = machines.flatMap((machine) => openJobs(machine));
const finch = all.find(({ machine }) => machine.endsWith('finch-125'));

function answer(
  open: OpenJob,
  answers: readonly Answer[],
  more: { hand?: string; instead?: boolean; text?: string } = {},
) {
  const { text = open.record.text, ...rest } = more;
  return writeAnswers({ ...open, record: { ...open.record, text }, answers, today, ...rest });
}

/** Something fit for each blank. */
function fitting(blank: Blank): string {
  if (blank.kind === 'tick') return 'yes';
  if (blank.id.endsWith('/foot/date')) return '2026-11-28';
  if (blank.kind === 'text') return `words at ${blank.id.split('/').slice(1).join(' ')}`;
  if (blank.id.endsWith('/reached')) return '20 N·m';
  return blank.unit === '' ? '12 mm' : '1,5';
}

test('every machine has an open job with blanks, each with its own id and a question', () => {
  expect(new Set(all.map(({ machine }) => machine)).size).toBe(machines.length);
  for (const { sheet } of all) {
    const blanks = blanksOfAll(sheet);
    expect(blanks.length).toBeGreaterThan(5);
    expect(new Set(blanks.map(({ id }) => id)).size).toBe(blanks.length);
    expect(blanks.filter(({ asks }) => asks.trim() === '')).toEqual([]);
    expect(blanks.some(({ id }) => id.endsWith('/foot/hand'))).toBe(true);
  }
});

test('readings, torques and what must be so before the work are never given together', () => {
  const together = all.flatMap(({ sheet }) => blanksOfAll(sheet)).filter(({ singly }) => !singly);
  expect(together.length).toBeGreaterThan(20);
  for (const { id, kind, caution } of together) {
    expect(kind).not.toBe('value');
    expect(id).not.toMatch(/\/reached$|\/before\/|assembly-\d+-\d+$/u);
    expect(caution?.grade).not.toBe('WARNING');
  }
});

describe.each(all.map((open) => [`${open.machine} ${open.job.id}`, open] as const))('%s', (_name, open) => {
  const blanks = blanksOfAll(open.sheet);
  const answers = blanks.map((blank) => ({ blank: blank.id, value: fitting(blank) }));
  const out = answer(open, answers);

  test('takes a whole sheet, and the record is read without a problem', () => {
    expect(out.problems).toEqual([]);
    expect(out.value.changes.length).toBeGreaterThan(5);
    const again = withRecord(open.machine, { ...open.record, text: out.value.text });
    expect(again.map(({ job }) => job.id)).toContain(open.job.id);
  });

  test('says at each printed blank what was given', () => {
    const again = withRecord(open.machine, { ...open.record, text: out.value.text }).find(
      ({ job }) => job.id === open.job.id,
    );
    const now = new Map(blanksOfAll(again?.sheet ?? []).map(({ id, given }) => [id, given]));
    for (const { id, kind } of blanks) {
      // A row for what nobody foresaw is empty again: what was written in it has a line of its own.
      if (kind === 'text' || id.includes('/spare-') || !now.has(id)) continue;
      expect([id, now.get(id) === undefined]).toEqual([id, false]);
    }
  });

  test('leaves the body and every comment as they were', () => {
    const body = (text: string): string => text.slice(text.indexOf('\n---') + 4);
    expect(body(out.value.text)).toBe(body(open.record.text));
    for (const comment of open.record.text.match(/#.*$/gmu) ?? []) expect(out.value.text).toContain(comment);
  });

  test('given twice it changes nothing more', () => {
    expect(answer(open, answers, { text: out.value.text }).value.text).toBe(out.value.text);
  });

  test('nothing given changes nothing', () => {
    expect(
      answer(
        open,
        blanks.map(({ id }) => ({ blank: id, value: ' ' })),
      ).value,
    ).toEqual({ text: open.record.text, changes: [] });
  });
});

/** A job planned with these procedures on the demo machine. */
function planned(...procedures: readonly string[]): OpenJob {
  const record = {
    file: 'jobs/2026-11-28-planned.md',
    text: `---\ntitle: Planned\ndate: 2026-11-28\nkind: strip\nstate: planned\nprocedures: [${procedures.join(', ')}]\n---\n`,
  };
  const open = openJobs('demo-bike', [...filesOf('demo-bike'), record]).find(({ job }) => job.file === record.file);
  if (open === undefined) throw new Error('the job was not planned');
  return open;
}

test('a part that two procedures of a job take off keeps the bag that the sheet printed first', () => {
  const open = planned('top-end-strip-two-stroke', 'carburettor-clean');
  const plan = open.book.plans.find(({ job }) => job.id === open.job.id);
  if (plan === undefined) throw new Error('the job has no plan');
  const steps = numberedSteps(open.book, plan, 'steps').filter(({ step }) => step.off.includes('carburettor'));
  expect(steps.map(({ bag }) => bag !== undefined)).toEqual([true, false]);
  const { text } = answer(open, [{ blank: `${open.job.id}/carburettor/off`, value: 'yes' }]).value;
  expect(text).toContain(`{removed: carburettor, bag: ${String(steps[0]?.bag)}`);
});

test('oil that comes out is drained and filled, and stands in no other way in the record', () => {
  const open = planned('clutch-cover-off');
  const ticks = ['off', 'on'].map((way) => ({ blank: `${open.job.id}/gearbox-oil/${way}`, value: 'yes' }));
  const out = answer(open, ticks).value;
  expect(out.text).toContain('{drained: gearbox-oil');
  expect(out.text).toContain('{filled: gearbox-oil}');
  expect(out.text).not.toContain('removed');
  const sheet = openJobs('demo-bike', [...filesOf('demo-bike'), { file: open.job.file, text: out.text }]).find(
    ({ job }) => job.id === open.job.id,
  )?.sheet;
  const blanks = blanksOfAll(sheet ?? []).filter(({ id }) => id.includes('/gearbox-oil/'));
  expect(blanks.map(({ given, asks }) => [given, asks.toLowerCase()])).toEqual([
    ['yes', 'gearbox oil, off'],
    ['yes', 'gearbox oil, back on'],
  ]);
});

describe('one record', () => {
  if (finch === undefined) throw new Error('the fixture has no open job');
  const id = finch.job.id;
  const put = (answers: Readonly<Record<string, string>>, more: Parameters<typeof answer>[2] = {}) =>
    answer(
      finch,
      Object.entries(answers).map(([blank, value]) => ({ blank: `${id}/${blank}`, value })),
      more,
    );

  test('a bare number is in the unit of its box, and a comma is a point', () => {
    expect(put({ 'chain-slack//found': '24,5' }).value.text).toContain('found: 24.5 mm');
    expect(put({ 'chain-slack//found': '1 in' }).value.text).toContain('found: 1 in');
    expect(put({ 'chain-slack//found': '2?.5' }).value.text).toContain('2?.5');
  });

  test('a part goes off with the bag that the sheet printed, and on again after it', () => {
    const { text } = put({ 'rear wheel/on': 'yes', 'rear wheel/off': 'x' }).value;
    expect(text).toContain('{removed: rear wheel, bag: 3,');
    expect(text.indexOf('removed: rear wheel')).toBeLessThan(text.indexOf('refitted: rear wheel'));
  });

  test('the bags of the sheet stay when the first of them is written down', () => {
    const { text } = put({ 'rear torque arm/off': 'yes' }).value;
    const again = withRecord(finch.machine, { ...finch.record, text }).find(({ job }) => job.id === id);
    expect(again && answer(again, [{ blank: `${id}/rear wheel/off`, value: 'yes' }]).value.text).toContain(
      '{removed: rear wheel, bag: 3,',
    );
  });

  test('what is tightened says to what, or how', () => {
    expect(put({ 'rear-spindle-nut/reached': '70' }).value.text).toContain(
      '{tightened: rear-spindle-nut, to: 70 N·m, result: reached}',
    );
    expect(put({ 'rear-spindle-nut/reached': 'by feel' }).value.text).toContain(
      '{tightened: rear-spindle-nut, result: by feel}',
    );
    expect(put({ 'rear-torque-arm-nut/reached': 'by feel' }).value.text).toContain(
      '{tightened: rear torque arm nut, result: by feel}',
    );
  });

  test('not known and not done are told apart from what was never answered', () => {
    expect(put({ 'chain-slack//found': '?' }).value.text).toContain('found: "?"');
    expect(put({ 'chain-slack//found': '-' }).value.text).toContain('{at: chain-slack//found, says: not done}');
    expect(put({ 'rear wheel/off': '-' }).value.text).not.toContain('removed');
  });

  test('with its first answer a planned job has begun, and not before', () => {
    expect(put({ 'wheel-rear-out/step-1': 'yes' }).value.text).toContain('state: under way');
    expect(put({ 'foot/state': 'd', 'wheel-rear-out/step-1': 'yes' }).value.text).toContain('state: done');
  });

  test('two hands: both values stand, and a query tells it', () => {
    const first = put({ 'chain-slack//found': '24' }, { hand: 'owner' }).value.text;
    const both = put({ 'chain-slack//found': '31' }, { hand: 'helper', text: first }).value;
    expect(both.text).toContain('found: 24 mm');
    expect(both.text).toContain('{item: chain-slack, found: 31 mm, by: helper}');
    expect(both.changes[0]).toMatchObject({ was: '24 mm', becomes: '31 mm, beside it' });
    const again = withRecord(finch.machine, { ...finch.record, text: both.text });
    expect(again[0]?.book.queries.map(({ code }) => code)).toContain('read-twice-differently');
    expect(put({ 'chain-slack//found': '31' }, { hand: 'helper', text: both.text }).value.text).toBe(both.text);
  });

  test('told so, an answer takes the place of what stands there', () => {
    const first = put({ 'chain-slack//found': '24' }).value.text;
    const better = put({ 'chain-slack//found': '25' }, { instead: true, text: first }).value;
    expect(better.text).toContain('found: 25 mm');
    expect(better.text).not.toContain('24 mm');
    expect(better.changes).toMatchObject([{ was: '24 mm', becomes: '25 mm' }]);
  });

  test('told so, “no” takes out the line of a part that was off by a tick, and nothing that somebody wrote', () => {
    const off = 'rear wheel/off';
    const text = put({ [off]: 'yes', 'rear torque arm/off': 'yes' }).value.text;
    expect(text).toContain('{removed: rear wheel, bag: 3,');
    const taken = put({ [off]: 'no' }, { instead: true, text }).value;
    expect(taken.text).not.toContain('removed: rear wheel');
    expect(taken.text).toContain('removed: rear torque arm');
    expect(taken.changes).toContainEqual(expect.objectContaining({ was: 'removed rear wheel', becomes: 'not done' }));
    expect(put({ [off]: '?' }, { instead: true, text }).value.text).toContain('removed: rear wheel');
    expect(put({ [off]: 'no' }, { text }).value.text).toContain('removed: rear wheel');
    const noted = text.replace('{removed: rear wheel, ', '{removed: rear wheel, note: leans on the bench, ');
    const kept = put({ [off]: 'no' }, { instead: true, text: noted }).value.text;
    expect(kept).toMatch(/removed: rear wheel, note: leans on the bench, bag: 3,[^\n]*done: no/u);
    // Given back, it is done again, and its words are still there.
    expect(put({ [off]: 'yes' }, { instead: true, text: kept }).value.text).toMatch(
      /leans on the bench[^\n]*done: yes/u,
    );
  });

  test('told so, what was reached takes the place of what was, and a tick that is none is taken out', () => {
    const nut = 'rear-spindle-nut/reached';
    const text = put({ [nut]: '60', 'wheel-rear-out/step-1': 'yes' }).value.text;
    const better = put({ [nut]: '70', 'wheel-rear-out/step-1': 'no' }, { instead: true, text }).value;
    expect(better.text).toContain('{tightened: rear-spindle-nut, to: 70 N·m, result: reached}');
    expect(better.text).not.toContain('second answer');
    expect(better.text).toContain('{at: wheel-rear-out/step-1, says: not done}');
    expect(better.text).not.toContain('- wheel-rear-out/step-1');
    expect(better.changes.map(({ was }) => was)).toEqual(expect.arrayContaining(['ticked', '60 N·m']));
    const back = put({ 'wheel-rear-out/step-1': 'yes' }, { instead: true, text: better.text }).value;
    expect(back.text).not.toContain('not done');
    const beside = put({ [nut]: '70' }, { text }).value.text;
    expect(beside).toContain('to: 60 N·m');
    expect(beside).toContain('second answer');
  });

  test('told so, words take the place of words of the same hand, and go beside those of another', () => {
    const note = 'wheel-rear-out/step-3/note';
    const text = put({ [note]: 'long spacer scored' }, { hand: 'owner' }).value.text;
    const better = put({ [note]: 'spacer polished' }, { hand: 'owner', instead: true, text }).value.text;
    expect(better).toContain('says: spacer polished, by: owner');
    expect(better).not.toContain('scored');
    const beside = put({ [note]: 'spacer renewed' }, { hand: 'helper', instead: true, text }).value.text;
    expect(beside).toContain('long spacer scored');
    expect(beside).toContain('says: spacer renewed, by: helper');
  });

  test('what cannot be kept is a problem that names it, and the rest is written', () => {
    const out = put({
      'chain-slack//found': 'about right',
      'rear wheel/off': 'perhaps',
      'no such/blank': 'x',
      'foot/hand': 'owner',
    });
    expect(out.problems.map(({ code }) => code).toSorted()).toEqual([
      'answer-unreadable',
      'answer-unreadable',
      'blank-unknown',
    ]);
    expect(out.value.text).toContain('hands: [owner]');
  });

  test('missing and broken things are findings; what is sent out is off until it is back', () => {
    const { text } = put({
      'honest/1/1': 'chain guard',
      'honest/2/2': 'a spoke',
      'honest/1/3': 'rim, the wheel builder, 2026-12-20',
    }).value;
    expect(text).toContain('{id: chain-guard-missing, saw: "missing when found: chain guard"}');
    expect(text).toContain('{id: a-spoke-broken, saw: "broken in this job: a spoke"}');
    expect(text).toContain('{sent out: rim, to: the wheel builder, promised: 2026-12-20}');
  });

  test('line ends and a byte order mark stay as they were', () => {
    const text = `\uFEFF${finch.record.text.replaceAll('\n', '\r\n')}`;
    const out = put({ 'chain-slack//found': '24', 'rear wheel/off': 'y' }, { text }).value.text;
    expect(out.startsWith('\uFEFF---\r\n')).toBe(true);
    expect(out.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/u);
  });
});

test('lines of a plan that nobody ticked are still to be done, in a job that has begun', () => {
  const tern = openJobs('tests/fixtures/tern-350')[0];
  if (tern === undefined) throw new Error('the fixture has no open job');
  const text = tern.record.text.replace(
    'readings:',
    'work:\n  - {drained: left fork leg}  # into the jug\n  - {opened: tool box}\nreadings:',
  );
  const planned = withRecord(tern.machine, { ...tern.record, text }).find(({ job }) => job.id === tern.job.id);
  if (planned === undefined) throw new Error('the plan is gone');
  const out = answer(planned, [{ blank: `${tern.job.id}/drained/left fork leg`, value: 'yes' }]).value.text;
  expect(out).toContain('- {drained: left fork leg}  # into the jug');
  expect(out).toContain('- {opened: tool box, done: no}');
  const begun = withRecord(tern.machine, { ...tern.record, text: out }).find(({ job }) => job.id === tern.job.id);
  expect(begun?.job.work.map(({ thing }) => thing)).toEqual(['left fork leg']);
  expect(begun?.job.toDo?.map(({ thing }) => thing)).toEqual(['tool box']);
  const done = begun && answer(begun, [{ blank: `${tern.job.id}/opened/tool box`, value: 'yes' }]).value.text;
  expect(done).toContain('- {opened: tool box, done: yes}');
});
