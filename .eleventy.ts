// Eleventy's configuration for running it by itself: the site of one machine, the same HTML as the program's, without PDFs.
// SPLITPIN_FOLDER names the machine, SPLITPIN_OUT the output folder, SPLITPIN_TODAY the day; see DEVELOPERS.md.
import type { UserConfig } from '@11ty/eleventy';
import { configureAlone } from './src/tools/site-alone.ts';

const output = process.env['SPLITPIN_OUT'] ?? 'out/eleventy';

export default async function (configuration: UserConfig): Promise<{ readonly dir: object }> {
  const machine = process.env['SPLITPIN_FOLDER'];
  await configureAlone(configuration, { machine, output, today: process.env['SPLITPIN_TODAY'] });
  return { dir: { input: 'templates', output } };
}
