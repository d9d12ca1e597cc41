// One question asked and answered, at a terminal or by the next line of a pipe.
import type { Answer } from '../../entry/answer.ts';
import type { Blank } from '../../entry/blank.ts';
import { judgeAnswer } from '../../entry/judge-answer.ts';
import type { Asker } from '../asker.ts';
import type { Terminal } from '../terminal.ts';
import { gradesSaid, numbered } from './grade-words.ts';
import { linesAbove, pairPrompt, promptFor, torquePrompt } from './prompt.ts';
import type { Labelled, Question } from './questions.ts';
import type { Session } from './session.ts';
import { ticksSaid } from './tick-words.ts';

/** `stop`: no more lines, or the person said so. What was answered before it is kept. */
export interface Heard {
  readonly answers: readonly Answer[];
  readonly stop: boolean;
  /** The rest of this table is left for later. */
  readonly skip?: boolean;
  /** An answer that cannot be kept, where nobody can be asked again. */
  readonly refused?: string;
}

export interface Asking {
  readonly session: Session;
  readonly asker: Asker;
  readonly terminal: Terminal;
  /** Cautions that have been shown: one stands once for all lines that follow each other. */
  readonly shown: Set<string>;
  /** Ids of all blanks that the sheets print. */
  readonly printed: ReadonlySet<string>;
}

/** Where words beside a blank go: into the line that is printed in its row, else into a note of its own. */
function besideId(id: string, { printed }: Asking): string {
  return printed.has(`${id}/words`) ? `${id}/words` : `${id}/note`;
}

const nothing: Heard = { answers: [], stop: false };
const stopped: Heard = { answers: [], stop: true };

/** Asks a question to its end. */
export async function ask(question: Question, asking: Asking): Promise<Heard> {
  if (question.kind === 'ticks') return askTicks(question, asking);
  if (question.kind === 'words') return askWords(question.head, question.places, asking);
  if (question.kind === 'rows') return askRows(question.head, question.rows, asking);
  if (question.kind === 'torque') return askTorque(question, asking);
  if (question.kind === 'grades') return askGrades(question, asking);
  if (question.kind === 'pair') return askPair(question, asking);
  return askOne(question.blank, promptFor(question.blank, question.blank.given), asking);
}

/** The next line, trimmed; undefined at the end, or where the person stops. */
async function line({ asker }: Asking, prompt: string): Promise<string | undefined> {
  const said = (await asker.ask(prompt))?.trim();
  return said === 'q' || said === 'quit' ? undefined : said;
}

function showCaution(blank: Blank, { terminal, shown }: Asking): void {
  for (const text of linesAbove(blank)) if (!shown.has(text)) terminal.tell(text);
  shown.clear();
  for (const text of linesAbove(blank)) shown.add(text);
}

async function askOne(blank: Blank, prompt: string, asking: Asking): Promise<Heard> {
  const { session, asker, terminal } = asking;
  showCaution(blank, asking);
  for (;;) {
    const said = await line(asking, prompt);
    if (said === undefined) return stopped;
    if (said === '') return nothing;
    if (said === 's') return { ...nothing, skip: true };
    const { value, note } = parted(blank, said, session.today);
    const [first] = isWord(value) ? [] : judgeAnswer(session.book, session.job, blank, value);
    const answers = [
      { blank: blank.id, value },
      ...(note === '' ? [] : [{ blank: besideId(blank.id, asking), value: note }]),
    ];
    if (first === undefined) return { answers, stop: false };
    terminal.tell(`   ${first.text}`);
    if (first.code === 'unreadable') {
      if (!asker.atTerminal) return { answers: [], stop: false, refused: `${blank.asks}: ${value}` };
      continue;
    }
    if (!asker.atTerminal) return { answers, stop: false };
    const again = await line(asking, '   Enter keeps it; or write it again: ');
    if (again === undefined) return { answers, stop: true };
    if (again === '') return { answers, stop: false };
    const better = parted(blank, again, session.today);
    if (judgeAnswer(session.book, session.job, blank, better.value).some(({ code }) => code === 'unreadable')) continue;
    return { answers: [{ blank: blank.id, value: better.value }], stop: false };
  }
}

/** `0.50 > 0.35`: as found and as left; `> 0.35` as left alone; without `>` as found. A note after it is of both. */
async function askPair({ found, left }: Extract<Question, { readonly kind: 'pair' }>, asking: Asking): Promise<Heard> {
  const { asker, terminal, session } = asking;
  const prompt = pairPrompt(found, left);
  let kept: readonly Answer[] | undefined;
  for (;;) {
    const said = await line(asking, kept === undefined ? prompt : '   Enter keeps it; or write it again: ');
    if (said === undefined) return { answers: kept ?? [], stop: true };
    if (said === '') return { answers: kept ?? [], stop: false };
    if (said === 's') return { ...nothing, skip: true };
    const { value, note } = parted(found, said, session.today);
    const answers = sidesOf(found, left, value);
    const judged = answers.flatMap(({ blank, value: one }) =>
      judgeAnswer(session.book, session.job, blank === left.id ? left : found, one),
    );
    for (const { text } of judged) terminal.tell(`   ${text}`);
    const all = [...answers, ...(note === '' ? [] : [{ blank: `${found.id}/note`, value: note }])];
    const unreadable = judged.some(({ code }) => code === 'unreadable');
    if (judged.length === 0 || (!unreadable && !asker.atTerminal)) return { answers: all, stop: false };
    if (!asker.atTerminal) return { answers: [], stop: false, refused: `${found.asks}: ${value}` };
    if (!unreadable) kept = all;
  }
}

function sidesOf(found: Blank, left: Blank, value: string): readonly Answer[] {
  const [first = '', second = ''] = value.split('>').map((one) => one.trim());
  return [
    ...(first === '' ? [] : [{ blank: found.id, value: first }]),
    ...(second === '' ? [] : [{ blank: left.id, value: second }]),
  ];
}

/** `y` and `n` are said of a fastener, and are no value to be judged. */
function isWord(value: string): boolean {
  return /^[yn]$/iu.test(value);
}

/** What was reached, or that it was tightened; `-` says that it was not. */
async function askTorque(question: Extract<Question, { readonly kind: 'torque' }>, asking: Asking): Promise<Heard> {
  const { tick, reached } = question;
  showCaution(tick, asking);
  const { caution: _shown, ...bare } = reached;
  const heard = await askOne(bare, torquePrompt(reached), asking);
  const [value] = heard.answers;
  if (value === undefined) return heard;
  if (value.value === '-' || value.value === 'n')
    return { ...heard, answers: [{ blank: tick.id, value: 'no' }, ...heard.answers.slice(1)] };
  const yes = { blank: tick.id, value: 'yes' };
  return { ...heard, answers: value.value === 'y' ? [yes, ...heard.answers.slice(1)] : [yes, ...heard.answers] };
}

/** A value and a note after a semicolon; `t` for today where a day is asked. */
function parted(blank: Blank, said: string, today: string): { readonly value: string; readonly note: string } {
  if (blank.id.endsWith('/foot/date') && /^t(?:oday)?$/u.test(said)) return { value: today, note: '' };
  const at = blank.kind === 'text' ? -1 : said.indexOf(';');
  if (at < 0) return { value: said, note: '' };
  return { value: said.slice(0, at).trim(), note: said.slice(at + 1).trim() };
}

/** Which of the ticks of one row: `2`, `harmed`; `1 2` where more than one is meant; `-` none of them. */
async function askGrades(question: Extract<Question, { readonly kind: 'grades' }>, asking: Asking): Promise<Heard> {
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

async function askTicks(
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

/** `3 spacer scored`, a line each, until an empty one. */
async function askWords(head: string, places: readonly Labelled[], asking: Asking): Promise<Heard> {
  const { terminal, asker } = asking;
  const answers: Answer[] = [];
  const first = places[0]?.label ?? '1';
  for (;;) {
    const said = await line(asking, `${head}: step and words, as “${first} spacer scored”; Enter for no more: `);
    if (said === undefined) return { answers, stop: true };
    if (said === '') return { answers, stop: false };
    const found = /^(\S+)\s+(\S.*)$/u.exec(said);
    const place = places.find(({ label }) => label === found?.[1]?.replace(/[.:]$/u, ''));
    if (place !== undefined && found?.[2] !== undefined) {
      answers.push({ blank: place.blank.id, value: found[2] });
      continue;
    }
    terminal.tell(`   Begin with one of: ${places.map(({ label }) => label).join(' ')}`);
    if (!asker.atTerminal) return { answers, stop: false, refused: `${head}: ${said}` };
  }
}

async function askRows(head: string, rows: readonly Blank[], asking: Asking): Promise<Heard> {
  const answers: Answer[] = [];
  for (const blank of rows) {
    const said = await line(asking, `${head} (Enter for ${answers.length === 0 ? 'nothing' : 'no more'}): `);
    if (said === undefined) return { answers, stop: true };
    if (said === '') break;
    answers.push({ blank: blank.id, value: said });
  }
  return { answers, stop: false };
}
