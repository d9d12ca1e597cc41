// How the tests are run: a worker on every core, random values from one seed, and one set of loaded modules for all files that only compute.
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

/**
 * Folders whose files only compute: what modules keep hangs on data that a test makes anew, so they are loaded once for all, and
 * loading was most of the time of a short file. Whoever makes pictures, starts processes or changes folders leaves traces in the process
 * that no care of ours takes away (the decoder of photos stays shut for drawings, for all that use its library), and gets one of its own.
 */
const computing = [
  'architecture',
  'book',
  'entry',
  'evenings',
  'faults',
  'goldens',
  'layout',
  'money',
  'plan',
  'problem',
  'properties',
  'published',
  'views',
].map((folder) => `tests/${folder}/**/*.test.ts`);

export default defineConfig({
  plugins: [compiledThreads],
  test: {
    pool: 'forks',
    // Left to itself it keeps one core free, which is half of a small machine.
    maxWorkers: '100%',
    setupFiles: ['tests/set-up/each-file.ts'],
    testTimeout: 600_000,
    hookTimeout: 600_000,
    env: { NO_COLOR: '1' },
    projects: [
      { extends: true, test: { name: 'apart', include: ['tests/**/*.test.ts'], exclude: computing } },
      { extends: true, test: { name: 'together', include: computing, isolate: false } },
    ],
  },
});
