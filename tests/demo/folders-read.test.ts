// The demo, the fixtures and the content give no problem, and name nothing that does not exist.
import { describe, expect, test } from 'vitest';
import { content, contentProblems, readFolder } from './read-folder.ts';

const folders = [
  ['demo-bike', 30],
  ['tests/fixtures/tern-350', 12],
  ['tests/fixtures/finch-125', 6],
  ['tests/fixtures/from-the-manual', 4],
] as const;

test('content gives no problem and has every shelf', () => {
  expect(contentProblems).toEqual([]);
  expect(content.holdPoints.map((point) => point.id)).toEqual([
    'before-spending',
    'before-turning',
    'before-live-kick',
    'before-plain-petrol',
    'before-moving',
    'before-road',
    'before-handing-over',
  ]);
  expect(content.procedures.size).toBeGreaterThanOrEqual(18);
  expect(content.schedules).toHaveLength(2);
});

describe.each(folders)('%s', (folder, atLeast) => {
  const { records, problems, content: all } = readFolder(folder);
  const known = new Set(all.holdPoints.flatMap((point) => point.checks).map((check) => check.id));

  test('gives no problem', () => {
    expect(problems).toEqual([]);
    expect(records.unread).toEqual([]);
    expect(records.jobs.length).toBeGreaterThanOrEqual(atLeast);
  });

  test('ticks only checks, procedures and services that exist', () => {
    const lines = [...records.maker.services, ...all.schedules.flatMap((schedule) => schedule.services)];
    const services = new Set(lines.map((line) => line.id));
    const unknown = records.jobs.flatMap((job) => [
      ...job.checks.filter((done) => !known.has(done.check)).map((done) => job.id + ': ' + done.check),
      ...job.procedures.filter((id) => !all.procedures.has(id)).map((id) => job.id + ': ' + id),
      ...job.services.filter((id) => !services.has(id)).map((id) => job.id + ': ' + id),
    ]);
    expect(unknown).toEqual([]);
  });

  test('ticks no check that is not for this machine', () => {
    const { stroke, lubrication, ignition, trigger } = records.machine.features;
    const own: Readonly<Record<string, string>> = { stroke, lubrication, ignition, trigger };
    const applies = new Map(
      content.holdPoints.flatMap((point) =>
        point.checks.map((check) => [check.id, { ...point.applies, ...check.applies }]),
      ),
    );
    const strange = records.jobs.flatMap((job) =>
      job.checks
        .filter(({ check }) =>
          Object.entries(applies.get(check) ?? {}).some(([key, words]) => {
            const mine = own[key];
            return mine !== undefined && !words.includes(mine);
          }),
        )
        .map(({ check }) => job.id + ': ' + check),
    );
    expect(strange).toEqual([]);
  });
});
