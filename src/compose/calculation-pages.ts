// A page for each calculation: what for, formula, signs, range, source, the published rows it was run against, and its uses here.
import { calculations } from '../calc/list.ts';
import type { Calculation } from '../calc/calculation.ts';
import { provedRowsOf } from '../calc/proved-rows.ts';
import type { Block } from '../sheet/sheet.ts';
import { aboutBlocks } from '../views/calculation/about.ts';
import { rowsOnPage, testedBlocks } from '../views/calculation/tested.ts';
import { usedBlocks } from '../views/calculation/used.ts';
import { workingBench } from '../views/bench/working-data.ts';
import { calculationFile } from '../views/calculations.ts';
import type { ViewContext } from '../views/view.ts';
import { lines } from '../views/wording/blocks.ts';
import { count } from '../views/wording/count.ts';
import type { PageSpec } from './pages.ts';

/** Pages of all calculations, in the order of the shelf. */
export function calculationPages(context: ViewContext): readonly PageSpec[] {
  return calculations.flatMap((one) => pagesOf(context, one));
}

function pagesOf(context: ViewContext, one: Calculation): readonly PageSpec[] {
  const { say } = context;
  const pages = Math.max(1, Math.ceil(provedRowsOf(one.id).length / rowsOnPage));
  return Array.from({ length: pages }, (_, index): PageSpec => {
    const title = index === 0 ? say(one.name) : `${say(one.name)}, ${say('published rows')}, ${count(index + 1)}`;
    const page = { file: calculationFile(one.id, index), title, section: say('Workings') };
    return {
      ...page,
      make: () => {
        const made = { ...page, blocks: blocksOf(context, one, index, pages) };
        const bench = index === 0 ? workingBench(context, { calculations: [one.id] }) : undefined;
        return bench === undefined ? made : { ...made, bench };
      },
    };
  });
}

function blocksOf(context: ViewContext, one: Calculation, index: number, pages: number): readonly Block[] {
  const { say } = context;
  const tested = testedBlocks(context, one, index);
  const further =
    index + 1 < pages
      ? [
          lines([
            [{ kind: 'link', text: say('further published rows'), to: `page:${calculationFile(one.id, index + 1)}` }],
          ]),
        ]
      : [];
  if (index > 0) return [...tested, ...further];
  return [...aboutBlocks(context, one), ...usedBlocks(context, one), ...tested, ...further];
}
