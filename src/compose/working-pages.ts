// The workings on the screen: one page while they are few, else several, with every rule named on the first.
import type { Block } from '../sheet/sheet.ts';
import { noWorkings, toCalculations, workedRules, type WorkedRule } from '../views/workings.ts';
import type { ViewContext } from '../views/view.ts';
import { lines } from '../views/wording/blocks.ts';
import { count } from '../views/wording/count.ts';
import { turning } from './turning.ts';
import type { PageSpec } from './pages.ts';

/** So many lines of figures make a page. */
const perPage = 150;

/** Pages of the workings in place of the one that is given; the first keeps its name. */
export function workingPages(context: ViewContext, { file, title, section, pdf }: WorkingsPage): readonly PageSpec[] {
  const rules = workedRules(context);
  const parts = inParts(rules);
  const pages = parts.map((part, at) => ({
    file: at === 0 ? file : file.replace('.html', `-${String(at + 1)}.html`),
    title: at === 0 ? title : `${title}, ${count(at + 1)}`,
    section,
    workings: part.flatMap(({ figures }) => figures),
  }));
  const beside = turning(pages);
  const fileOf = (rule: WorkedRule): string => pages[parts.findIndex((part) => part.includes(rule))]?.file ?? file;
  return pages.map(({ workings, ...page }, at): PageSpec => {
    const make = (): readonly Block[] => [
      ...(at === 0 ? head(context, rules, fileOf) : []),
      ...(parts[at] ?? []).flatMap(({ blocks }) => blocks()),
    ];
    const printed = at === 0 && pdf !== undefined ? { pdf } : {};
    return { ...page, workings, make: () => ({ ...page, blocks: make(), ...printed, ...beside(at) }) };
  });
}

interface WorkingsPage {
  readonly file: string;
  readonly title: string;
  readonly section: string;
  readonly pdf?: string;
}

/** At least one part, so that the page is there where nothing was worked out. */
function inParts(rules: readonly WorkedRule[]): readonly (readonly WorkedRule[])[] {
  const parts: WorkedRule[][] = [[]];
  let length = 0;
  for (const rule of rules) {
    if (length > 0 && length + rule.length > perPage) {
      parts.push([]);
      length = 0;
    }
    parts.at(-1)?.push(rule);
    length += rule.length;
  }
  return parts;
}

function head(
  context: ViewContext,
  rules: readonly WorkedRule[],
  fileOf: (rule: WorkedRule) => string,
): readonly Block[] {
  if (rules.length === 0) return noWorkings(context);
  const links = rules.map((rule) => [
    { kind: 'link', text: rule.name, to: `page:${fileOf(rule)}#${rule.id}` } as const,
    `: ${count(rule.figures.length)}`,
  ]);
  return [toCalculations(context), lines(links)];
}
