// What the disk reader hands over: the text of each record, and the other files that records may name.

/** A text file. `file` is its path below the folder that was read, with forward slashes. */
export interface SourceFile {
  readonly file: string;
  readonly text: string;
  /** The day of the first picture that it names, `2024-05-04`; only of a record that says no day itself. */
  readonly pictured?: string;
}

/** A photo or a paper: never opened here, only looked up by name. */
export interface Asset {
  readonly file: string;
  readonly absolute: string;
  /** Bytes. */
  readonly size: number;
  /** Milliseconds since 1970. */
  readonly modified: number;
  /** The file, or a folder on the way to it, is a symbolic link: it is never followed. */
  readonly link?: boolean;
}
