// check --watch: a line a problem in the form that editors follow, again after every change, until it is interrupted.
import { dirname } from 'node:path';
import { expect, test } from 'vitest';
import { compiled } from '../set-up/compiled.ts';
import { startProgram } from './process.ts';
import { put, small, smallMachine } from './small-machine.ts';

const file = 'jobs/2024-03-02-bought.md';
const good = small[file] ?? '';

test('follows changes line by line and ends well when it is interrupted', async () => {
  const program = await compiled();
  const machine = smallMachine({ [file]: good.replace('state: done', 'state: dne') });
  const running = startProgram(program, ['check', 'bike', '--watch', '--today', '2024-06-01'], {
    folder: dirname(machine),
  });
  await running.until(/^bike: 1 problem, .*Waiting/mu);
  expect(running.out()).toMatch(
    /^bike: checking\nbike\/jobs\/2024-03-02-bought\.md:5:8: problem word-unknown: “dne” is not a state of a job\. \(.+\)$/mu,
  );
  put(machine, { [file]: good });
  await running.until(/^bike: no problems, .*Waiting/mu);
  put(machine, { 'jobs/2024-05-09-new.md': '---\ntitle: New\ndate: 2024-13-09\nkind: service\nstate: done\n---\n' });
  await running.until(/^bike\/jobs\/2024-05-09-new\.md:3:7: problem date-unreadable: /mu);
  const ended = new Promise((done) => running.child.on('close', done));
  running.child.kill('SIGINT');
  expect(await ended).toBe(0);
  for (const line of running.out().trim().split('\n'))
    expect(line).toMatch(/^bike: |^(?:bike\/)?\S+:\d+:\d+: (?:problem|query) [a-z-]+: .+$/u);
});
