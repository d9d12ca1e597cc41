// The content holds together: what undoes a check can be touched, every row of a general schedule says its evidence, no verdict of safety.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { cardLines } from '../../src/book/faults/card-lines.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import { makeBook } from '../../src/book/make.ts';
import { content, demo, readFolder, root } from './read-folder.ts';

const folders = [
  demo,
  ...['tern-350', 'finch-125', 'from-the-manual'].map((name) => readFolder('tests/fixtures/' + name)),
];
const told = readDay('2026-11-14');
if (!told.ok) throw new Error('the demo’s day');
const demoDay = told.value;
const checks = content.holdPoints.flatMap((point) => point.checks.map((check) => ({ ...check, point: point.id })));

test('what undoes a check is a thing that somebody can touch', () => {
  const steps = [...content.procedures.values()].flatMap((one) => [...one.steps, ...one.assembly]);
  const touchable = new Set([
    ...[...content.procedures.values()].flatMap((one) => one.disturbs),
    ...steps.flatMap((step) => [...step.off, ...step.fasteners, ...step.measure, ...step.set]),
    ...folders.flatMap(({ records }) => [
      ...records.maker.fasteners.flatMap((one) => [one.id, one.of ?? one.id]),
      ...records.maker.settings.flatMap((one) => [one.id, one.of ?? one.id]),
      ...records.maker.limits.flatMap((one) => [one.id, one.of ?? one.id]),
      ...records.jobs.flatMap((job) => job.work.map((entry) => entry.thing)),
      ...records.jobs.map((job) => job.kind),
    ]),
  ]);
  const byHand = new Set([
    'advance unit',
    'centre stand',
    'coil',
    'cut-out wire',
    'frame',
    'flywheel',
    'fuel hose',
    'gear change',
    'ignition switch',
    'oil pump cable',
    'oil tank',
    'wiring loom',
  ]);
  const nowhere = checks.flatMap((check) =>
    check.undoneBy
      .filter((thing) => !touchable.has(thing) && !byHand.has(thing))
      .map((thing) => check.id + ': ' + thing),
  );
  expect(nowhere).toEqual([]);
});

test('a caution is one line of a sheet', () => {
  const long = [...content.cautions.values()].filter((caution) => caution.line.length > 88);
  expect(long.map((caution) => caution.id)).toEqual([]);
  expect(content.cautions.size).toBeGreaterThanOrEqual(40);
});

test('every check says why, and its id is used once', () => {
  expect(checks.filter((check) => check.why.length < 12).map((check) => check.id)).toEqual([]);
  expect(new Set(checks.map((check) => check.id)).size).toBe(checks.length);
});

test('the stop switch is proved the way this ignition stops', () => {
  const ways = checks.filter((check) => check.id.startsWith('stop-switch'));
  expect(ways.map((check) => check.applies.ignition)).toEqual([['magneto'], ['battery and coil']]);
});

test('every row of a general schedule begins its source with how it is known', () => {
  const rows = content.schedules.flatMap((schedule) => schedule.services);
  expect(rows.length).toBeGreaterThanOrEqual(45);
  for (const folder of ['two-stroke-trail-100-175', 'four-stroke-single-100-200']) {
    const text = readFileSync(join(root, 'content/schedules', folder + '.md'), 'utf8');
    const lines = text.split('\n').filter((line) => line.startsWith('  - {id: '));
    const silent = lines.filter((line) => !/source: "(?:work )?(?:read|memory|common practice)[:;"]/.test(line));
    expect(silent).toEqual([]);
  }
});

test('no sentence promises safety or legality', () => {
  const shelves = ['cautions', 'hold-points', 'procedures', 'faults', 'schedules'];
  const texts = shelves.flatMap((shelf) =>
    readdirSync(join(root, 'content', shelf)).map((file) => ({
      file,
      text: readFileSync(join(root, 'content', shelf, file), 'utf8'),
    })),
  );
  expect(texts.length).toBeGreaterThanOrEqual(28);
  expect(
    texts.filter(({ text }) => /\b(?:safe|safely|legal|legally|roadworthy)\b/i.test(text)).map(({ file }) => file),
  ).toEqual([]);
});

test('the no-start card has its four groups for every kind of machine', () => {
  for (const { records } of folders) {
    const lines = cardLines(makeBook(records, content, demoDay));
    expect(new Set(lines.map((line) => line.part))).toEqual(new Set(['spark', 'fuel', 'compression', 'air']));
    expect(lines.filter((line) => line.saw.startsWith('No spark with a new plug'))).toHaveLength(1);
    expect(lines.filter((line) => line.means === '')).toEqual([]);
    expect(lines.length).toBeLessThanOrEqual(30);
  }
});
