// A view turns the book into blocks. It knows motorcycles and nothing of paper.
import type { Book, JobPlan } from '../book/book.ts';
import type { Job } from '../records/model.ts';
import type { Block, Paragraph } from '../sheet/sheet.ts';

export interface ViewContext {
  readonly book: Book;
  /** The job the sheet is for, when it is made per job. */
  readonly job?: Job;
  readonly plan?: JobPlan;
  /** Options written beside the view in the sheet's content file. */
  readonly options: Readonly<Record<string, string>>;
  /** So many rows of a table that grows with the records are shown; on paper, where it is absent, more. */
  readonly rows?: number;
  /** Our own words in the dialect of this print; never applied to the owner's words. */
  readonly say: (words: string) => string;
  /** The owner's Markdown as paragraphs (raw HTML stays text; links and photos are checked). */
  readonly prose: (markdown: string) => readonly Paragraph[];
}

export interface View {
  readonly id: string;
  /** One sentence: what it shows. */
  readonly purpose: string;
  readonly needs: 'machine' | 'job';
  /** Names of the options it takes. */
  readonly options: readonly string[];
  /** Grows with the number of records: on screen a sheet leads to this page of the site instead of repeating it. */
  readonly long?: { readonly page: string; readonly title: string };
  readonly blocks: (context: ViewContext) => readonly Block[];
}

/** Declares a view; add it to list.ts. */
export function defineView(view: View): View {
  return view;
}
