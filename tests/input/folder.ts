// A small machine for tests of input, from the page of formats; jobs are added by each test.
import type { SourceFile } from '../../src/source/files.ts';
import { manualAssets, manualFiles } from '../manual/manual-folder.ts';

export { manualAssets };

/** machine.yaml, a maker's book and instruments, without jobs. */
export const machineFiles: readonly SourceFile[] = manualFiles().machine.filter(
  ({ file }) => !file.startsWith('jobs/'),
);

/** A job file with these lines of front matter after the four that every job has. */
export function job(name: string, lines: readonly string[] = [], date = '2025-05-01'): SourceFile {
  const front = ['---', 'title: Plug looked at', `date: ${date}`, 'kind: service', 'state: done', ...lines, '---'];
  return { file: `jobs/${name}.md`, text: `${front.join('\n')}\nWords.\n` };
}
