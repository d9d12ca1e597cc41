// How the tests are run: a worker on every core, each with one set of loaded modules for all its files, random values from one seed.
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vitest/config';

const compiledThread = fileURLToPath(new URL('tests/set-up/compiled-thread.ts', import.meta.url));

/** Sources get the compiled threads; a test that asks for the starter of threads by itself gets that. */
const compiledThreads: Plugin = {
  name: 'compiled-threads',
  enforce: 'pre',
  resolveId: (id, importer) =>
    id.endsWith('/own-thread.ts') && importer?.includes('/src/') === true ? compiledThread : undefined,
};

export default defineConfig({
  plugins: [compiledThreads],
  test: {
    include: ['tests/**/*.test.ts'],
    pool: 'forks',
    // Left to itself it keeps one core free, which is half of a small machine.
    maxWorkers: '100%',
    // Most of a short file's time was loading. What modules keep hangs on data that a test makes anew; `set-up/each-file.ts` looks after the rest.
    isolate: false,
    setupFiles: ['tests/set-up/each-file.ts'],
    testTimeout: 600_000,
    hookTimeout: 600_000,
    env: { NO_COLOR: '1' },
  },
});
