// Which procedures, what it is called, for which day: asked where the command line did not say.
import { readDay, type Binder } from '../../build.ts';
import { proceduresFor } from '../../entry/plan-record.ts';
import type { Asked } from '../add-command.ts';
import type { Asker } from '../asker.ts';
import type { Terminal } from '../terminal.ts';

/** Undefined where neither a procedure nor a title was given. Through a pipe three lines answer: procedures, title, day. */
export async function askPlan(
  book: Binder['book'],
  given: Asked,
  today: string,
  asker: Asker,
  terminal: Terminal,
): Promise<Asked | undefined> {
  const all = proceduresFor(book);
  if (asker.atTerminal) {
    for (const [index, { title, id }] of all.entries())
      terminal.tell(`${String(index + 1).padStart(3)}  ${title}  (${id})`);
  }
  const ids = await askProcedures(
    all.map(({ id }) => id),
    asker,
    terminal,
  );
  if (ids === undefined) return undefined;
  const titles = all.filter(({ id }) => ids.includes(id)).map(({ title }) => title);
  const own = titles.length === 0 ? 'what the job is' : `Enter for “${titles.join('; ')}”`;
  const title = (await asker.ask(`Title (${own}): `))?.trim() ?? '';
  if (ids.length === 0 && title === '') return undefined;
  const date = given.date ?? (await askDay(today, asker, terminal));
  return { ...given, procedures: ids, ...(title === '' ? {} : { title }), date };
}

async function askProcedures(
  all: readonly string[],
  asker: Asker,
  terminal: Terminal,
): Promise<readonly string[] | undefined> {
  for (;;) {
    const said = (
      await asker.ask('Procedures, by number or name, in the order of the work (Enter for none): ')
    )?.trim();
    if (said === undefined) return undefined;
    const words = said.split(/[\s,;]+/u).filter((word) => word !== '');
    const meant = words.map((word) => (/^\d+$/u.test(word) ? all[Number(word) - 1] : word) ?? word);
    const strange = meant.filter((id) => !all.includes(id));
    if (strange.length === 0 || !asker.atTerminal) return [...new Set(meant)];
    terminal.tell(`   There is no ${strange.join(', ')}.`);
  }
}

async function askDay(today: string, asker: Asker, terminal: Terminal): Promise<string> {
  for (;;) {
    const said = (await asker.ask(`Day it is planned for (Enter for ${today}): `))?.trim() ?? '';
    if (said === '') return today;
    const read = readDay(said);
    if (read.ok || !asker.atTerminal) return said;
    terminal.tell(`   ${read.why.message}. Write it as ${today}.`);
  }
}
