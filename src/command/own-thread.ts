// A thread of our own: its program lies beside the file that starts it, compiled or as it was written.
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { Worker, type WorkerOptions } from 'node:worker_threads';

/** Starts `<name>.js` beside `from` (the `import.meta.url` of who asks); as written, `<name>.ts`, with the loader of sources. */
export function startThread(name: string, from: string, options: WorkerOptions = {}): Worker {
  if (!from.endsWith('.ts')) return new Worker(new URL(`./${name}.js`, from), options);
  // Node 20 gives a thread no loader of its own by an option: the thread registers it itself.
  const loader = new URL('dist/esm/api/index.mjs', pathToFileURL(createRequire(from).resolve('tsx/package.json'))).href;
  const program = new URL(`./${name}.ts`, from).href;
  const begin = `import(${JSON.stringify(loader)}).then(({ register }) => (register(), import(${JSON.stringify(program)})))`;
  return new Worker(begin, { ...options, eval: true, execArgv: [] });
}
