// A page of the site, as against a sheet of paper: the same blocks in another frame.
import type { Block } from './sheet.ts';

/** A page of the site: the same blocks in the site's frame. */
export interface Page {
  /** File below the output folder, always ending in `.html`. */
  readonly file: string;
  readonly title: string;
  /** Which entry of the site's contents it belongs to. */
  readonly section: string;
  readonly blocks: readonly Block[];
  readonly previous?: { readonly file: string; readonly title: string };
  readonly next?: { readonly file: string; readonly title: string };
  /** The PDF of the same content, below the output folder. */
  readonly pdf?: string;
  /** What a script of the site works with on this page: its file below `assets/`, what is done there, and its data as text. */
  readonly bench?: {
    readonly script: string;
    readonly label: string;
    readonly data: string;
    /** A script of this binder’s own that is read before it, below `assets/`. */
    readonly with?: string;
  };
}
