// Ticks asked together: those of a column in one line, those of one row, such as its grades, by a figure.
import { besideId, line, nothing, showCaution, stopped, type Asking, type Heard } from './asking.ts';
import { gradesSaid, numbered } from './grade-words.ts';
import type { Question } from './questions.ts';
import { ticksSaid } from './tick-words.ts';

/** Which of the ticks of one row: `2`, `harmed`; `1 2` where more than one is meant; `-` none of them. */
export async function askGrades(
  question: Extract<Question, { readonly kind: 'grades' }>,
  asking: Asking,
): Promise<Heard> {
  const { asks, row, ticks } = question;
  const [first] = ticks;
  if (first === undefined) return nothing;
  showCaution(first.blank, asking);
  const heads = ticks.map(({ blank }) => blank.column ?? '');
  const now = ticks.filter(({ blank }) => blank.given === 'yes').map(({ blank }) => blank.column?.toLowerCase() ?? '');
  const given = now.length === 0 ? '' : `; now ${now.join(', ')}`;
  for (;;) {
    const said = await line(asking, `${asks} (${numbered(heads)}${given}): `);
    if (said === undefined) return stopped;
    if (said === '') return nothing;
    if (said === 's') return { ...nothing, skip: true };
    const meant = gradesSaid(said, heads);
    if (meant.kind === 'these') {
      const yes = ticks.filter((_, index) => meant.places.includes(index));
      const none = yes.length === 0 && meant.note === '' ? ticks.slice(0, 1) : [];
      const answers = [
        ...yes.map(({ blank }) => ({ blank: blank.id, value: 'yes' })),
        ...none.map(({ blank }) => ({ blank: blank.id, value: 'no' })),
        ...(meant.note === '' ? [] : [{ blank: besideId(row, asking), value: meant.note }]),
      ];
      return { answers, stop: false };
    }
    asking.terminal.tell(`   ${meant.why}`);
    if (!asking.asker.atTerminal) return { answers: [], stop: false, refused: `${asks}: ${said}` };
  }
}

/** `all`, `all but 7 and 12`, `3 5 8`. */
export async function askTicks(
  { head, ticks }: Extract<Question, { readonly kind: 'ticks' }>,
  asking: Asking,
): Promise<Heard> {
  const { terminal, asker } = asking;
  terminal.tell(`${head}:`);
  for (const { label, blank } of ticks) terminal.tell(`   ${label.padStart(3)}  ${blank.asks}`);
  const labels = ticks.map(({ label }) => label);
  for (;;) {
    const said = await line(
      asking,
      `${head} (all; all but ${labels.slice(-2).join(' and ')}; only ${labels[0] ?? '1'}; n none; Enter later): `,
    );
    if (said === undefined) return stopped;
    const meant = ticksSaid(said.replace(/^only\s+/iu, ''), labels);
    if (meant.kind === 'later') return nothing;
    if (meant.kind === 'none')
      return { answers: ticks.map(({ blank }) => ({ blank: blank.id, value: 'no' })), stop: false };
    if (meant.kind === 'these') {
      const yes = ticks.filter(({ label }) => meant.labels.includes(label));
      return { answers: yes.map(({ blank }) => ({ blank: blank.id, value: 'yes' })), stop: false };
    }
    terminal.tell(`   ${meant.why}`);
    if (!asker.atTerminal) return { answers: [], stop: false, refused: `${head}: ${said}` };
  }
}
