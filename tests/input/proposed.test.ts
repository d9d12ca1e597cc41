// What a hint proposes in place of a value in the wrong form can be taken as it stands: it is read without a problem of form.
import { expect, test } from 'vitest';
import { readRecords } from '../../src/records/read.ts';
import { small } from '../command/small-machine.ts';

const asset = { file: 'photos/x.jpg', absolute: '/nowhere/photos/x.jpg', size: 1, modified: 0 };

function problemsWith(line: string) {
  const files = { ...small, 'jobs/2024-05-09-a.md': record(line) };
  const all = Object.entries(files).filter(([file]) => !file.startsWith('../'));
  const { problems } = readRecords(
    all.map(([file, text]) => ({ file, text })),
    [asset],
  );
  return problems.filter(({ at, severity }) => at.file.includes('05-09') && severity === 'problem');
}

function record(line: string): string {
  return `---\ntitle: Plug looked at\ndate: 2024-05-09\nkind: service\nstate: done\n${line}\n---\n`;
}

test.each([
  ['hands: owner', '[owner]', 'hands: [owner]'],
  ['hands: "Tom, and a friend"', '["Tom, and a friend"]', 'hands: ["Tom, and a friend"]'],
  ['photos: [photos/x.jpg]', '{file: photos/x.jpg}', 'photos: [{file: photos/x.jpg}]'],
  ['photos: photos/x.jpg', '[{file: photos/x.jpg}]', 'photos: [{file: photos/x.jpg}]'],
  ['parts: [spark plug]', '{part: spark plug}', 'parts: [{part: spark plug}]'],
])('%s', (wrong, proposed, right) => {
  const [first] = problemsWith(wrong);
  expect(first?.code).toMatch(/^value-not-(?:list|keys)$/u);
  expect(first?.hint).toContain(proposed);
  expect(problemsWith(right)).toEqual([]);
});

test.each([['money: 12 GBP'], ['findings: [crack in the frame]'], ['work: removed seat']])(
  '%s: nothing is proposed that would be wrong again',
  (wrong) => {
    const hint = problemsWith(wrong)[0]?.hint ?? '';
    expect(hint).not.toMatch(/12 GBP|crack|removed seat/u);
  },
);
