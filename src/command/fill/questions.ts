// The blanks of a job as questions: ticks that may be given together as one, words beside steps as one, everything else by itself.
import type { Blank } from '../../entry/blank.ts';
import { withoutTwice } from '../../entry/foot-blanks.ts';

export interface Labelled {
  /** Number of the step as printed, with a letter where one step has several; else counted. */
  readonly label: string;
  readonly blank: Blank;
}

export type Question =
  | { readonly kind: 'one'; readonly blank: Blank }
  /** The two boxes of a reading: `0.50 > 0.35` gives both. */
  | { readonly kind: 'pair'; readonly found: Blank; readonly left: Blank }
  /** A fastener: what it reached says as well that it was tightened. */
  | { readonly kind: 'torque'; readonly tick: Blank; readonly reached: Blank }
  /** A row with several ticks, such as grades: one letter or number says which. `asks` is the row without its columns. */
  | { readonly kind: 'grades'; readonly asks: string; readonly row: string; readonly ticks: readonly Labelled[] }
  /** Ticks of one column. */
  | { readonly kind: 'ticks'; readonly head: string; readonly ticks: readonly Labelled[] }
  /** Words that may be written beside any of these. */
  | { readonly kind: 'words'; readonly head: string; readonly places: readonly Labelled[] }
  /** Empty rows, filled from the top: as many answers as there are. */
  | { readonly kind: 'rows'; readonly head: string; readonly rows: readonly Blank[] };

interface Group {
  readonly kind: 'one' | 'ticks' | 'words' | 'rows' | 'grades';
  readonly head: string;
  readonly blanks: Blank[];
}

/** In a table: what may be given together, then what is asked by itself, then words. */
const kinds: readonly Group['kind'][] = ['ticks', 'one', 'words', 'rows'];

/**
 * Table by table in printed order; in a table first the ticks that may be given together, last the words. What goes back on is asked
 * after everything that comes off, before the sheet of going together.
 */
export function questionsFor(blanks: readonly Blank[]): readonly Question[] {
  const groups = new Map<string, Group>();
  for (const blank of withoutTwice(blanks)) {
    if (isAside(blank)) continue;
    const { kind, head, key } = groupOf(blank);
    const group = groups.get(key) ?? { kind, head, blanks: [] };
    group.blanks.push(blank);
    groups.set(key, group);
  }
  const tables = [...new Set(blanks.map(({ table }) => table ?? ''))];
  const place = (group: Group): readonly number[] => [
    turnOf(group),
    tables.indexOf(group.blanks[0]?.table ?? ''),
    kinds.indexOf(group.kind === 'grades' ? 'one' : group.kind),
  ];
  const sorted = [...groups.values()].toSorted((a, b) => inOrder(place(a), place(b)));
  return withPairs(withTorques(sorted.map(questionOf)));
}

/** Ticks and words of an empty row go with its part; the clock is asked at the end. */
function isAside({ id }: Blank): boolean {
  return /\/spare-[^/]+\/(?:off|on|fasteners|note)$|^run-log\/\d+\/[2-6]$|^today\/1\/2$/u.test(id);
}

function groupOf({
  id,
  kind,
  singly,
  column = '',
  step,
  table = '',
  under = '',
  grades,
}: Blank): Pick<Group, 'kind' | 'head'> & { readonly key: string } {
  if (/\/spare-[^/]+\/part$/u.test(id)) return { kind: 'rows', head: 'What else came off', key: `spare ${table}` };
  if (/\/honest\/\d+\/\d+$/u.test(id)) return { kind: 'rows', head: column, key: `honest ${column}` };
  if (grades !== undefined) return { kind: 'grades', head: grades, key: `grades ${grades}` };
  if (kind === 'tick' && !singly)
    return { kind: 'ticks', head: column === '' ? under || 'Ticks' : column, key: `ticks ${table} ${column}` };
  if (kind === 'text' && (step !== undefined || column !== ''))
    return { kind: 'words', head: column, key: `words ${table} ${column}` };
  return { kind: 'one', head: '', key: `one ${id}` };
}

/** Off and measured, then on, then the sheet of going together, then the foot. */
function turnOf({ blanks: [first] }: Group): number {
  if (first === undefined) return 0;
  if (/\/foot\/[^/]+$/u.test(first.id)) return 3;
  if (first.table?.startsWith('assembly') === true) return 2;
  return first.kind === 'tick' && first.column === 'On' ? 1 : 0;
}

function inOrder(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((one, index) => one !== b[index]);
  return (a[at] ?? 0) - (b[at] ?? 0);
}

function questionOf({ kind, head, blanks }: Group): Question {
  const [first] = blanks;
  if (first === undefined) throw new Error('a question without a blank');
  if (kind === 'rows') return { kind, head, rows: blanks };
  if (kind === 'grades') return gradesOf(head, blanks);
  if (kind === 'ticks') return { kind, head, ticks: labelled(blanks) };
  return kind === 'words' ? { kind, head, places: labelled(blanks) } : { kind: 'one', blank: first };
}

/** The columns in printed order, counted from 1. */
function gradesOf(row: string, blanks: readonly Blank[]): Question {
  const [first] = blanks;
  const column = `: ${first?.column?.toLowerCase() ?? ''}`;
  const whole = first?.asks ?? '';
  const asks = whole.endsWith(column) ? whole.slice(0, -column.length) : whole;
  const step = first?.step === undefined ? '' : `${first.step}  `;
  const ticks = blanks.map((blank, index) => ({ label: String(index + 1), blank }));
  return { kind: 'grades', asks: step + asks, row, ticks };
}

/** The tick of a fastener and the box beside it are one question. */
function withTorques(questions: readonly Question[]): readonly Question[] {
  return questions.flatMap((question, index): readonly Question[] => {
    const [before, after] = [questions[index - 1], questions[index + 1]];
    if (question.kind !== 'one') return [question];
    if (isTorqueOf(question, after)) return [];
    return before?.kind === 'one' && isTorqueOf(before, question)
      ? [{ kind: 'torque', tick: before.blank, reached: question.blank }]
      : [question];
  });
}

/** Found and left of one reading are one question. */
function withPairs(questions: readonly Question[]): readonly Question[] {
  return questions.flatMap((question, index): readonly Question[] => {
    const [before, after] = [questions[index - 1], questions[index + 1]];
    if (question.kind !== 'one') return [question];
    if (before?.kind === 'one' && isLeftOf(before.blank, question.blank)) return [];
    if (after?.kind !== 'one' || !isLeftOf(question.blank, after.blank)) return [question];
    return [{ kind: 'pair', found: question.blank, left: after.blank }];
  });
}

function isLeftOf(found: Blank, left: Blank): boolean {
  return found.id.endsWith('/found') && left.id === found.id.replace(/found$/u, 'left') && left.kind === 'value';
}

function isTorqueOf(tick: Question, reached: Question | undefined): boolean {
  if (tick.kind !== 'one' || reached?.kind !== 'one') return false;
  return (
    tick.blank.kind === 'tick' && reached.blank.id.endsWith('/reached') && tick.blank.table === reached.blank.table
  );
}

/** A row without a number belongs to the step above it. */
function labelled(list: readonly Blank[]): readonly Labelled[] {
  let step = '';
  let letter = 0;
  const used = new Set<string>();
  return list.map((blank, index) => {
    if (blank.step === undefined && step !== '') letter += 1;
    else {
      step = blank.step ?? '';
      letter = 0;
    }
    const wanted = step === '' ? String(index + 1) : step + (letter === 0 ? '' : String.fromCodePoint(97 + letter));
    let label = wanted;
    while (used.has(label)) label = nextLabel(label);
    used.add(label);
    return { label, blank };
  });
}

/** Rows of one official number are told apart by letters: `2.1`, `2.1b`, `2.1c`. */
function nextLabel(label: string): string {
  const letter = /[a-y]$/u.exec(label)?.[0];
  if (letter === undefined) return `${label}b`;
  return label.slice(0, -1) + String.fromCodePoint((letter.codePointAt(0) ?? 96) + 1);
}
