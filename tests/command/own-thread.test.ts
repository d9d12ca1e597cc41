// A thread of sources: what `npm run splitpin` starts. Everywhere else the tests run the compiled ones, see set-up/compiled-thread.ts.
import { once } from 'node:events';
import { expect, test } from 'vitest';
import { startThread } from '../../src/command/own-thread.ts';

const beside = new URL('../../src/command/take/form-thread.ts', import.meta.url).href;

test('is started from sources as they were written, and answers', async () => {
  const worker = startThread('form-worker', beside, { workerData: new Uint8Array(8) });
  const [answer]: unknown[] = await once(worker, 'message');
  await worker.terminate();
  expect(answer).toEqual({ fault: 'not a PDF' });
});

test('that has no program fails, and says so', async () => {
  const worker = startThread('no-such-worker', beside);
  const [fault]: unknown[] = await once(worker, 'error');
  expect(String(fault)).toContain('no-such-worker');
});
