// One question asked and answered, at a terminal or by the next line of a pipe.
import type { Answer } from '../../entry/answer.ts';
import type { Blank } from '../../entry/blank.ts';
import { judgeAnswer } from '../../entry/judge-answer.ts';
import { askGrades, askTicks } from './ask-ticks.ts';
import { besideId, line, nothing, showCaution, stopped, type Asking, type Heard } from './asking.ts';
import { pairPrompt, promptFor, torquePrompt } from './prompt.ts';
import type { Labelled, Question } from './questions.ts';
import { sidesOf } from './sides-said.ts';

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
