// The little of Eleventy that we use; Eleventy ships no types of its own.
declare module '@11ty/eleventy' {
  /** A template given as code: its data, and the function that renders one page of it. */
  export interface CodeTemplate {
    readonly data: Readonly<Record<string, unknown>>;
    readonly render: (data: EleventyData) => string | Promise<string>;
  }

  /** What a template is handed for one page of its pagination. */
  export interface EleventyData {
    readonly pagination: { readonly items: readonly string[] };
  }

  export interface UserConfig {
    readonly ignores: { add(glob: string): void; delete(glob: string): void };
    addTemplate(path: string, template: CodeTemplate): void;
    addPassthroughCopy(paths: Readonly<Record<string, string>>): void;
    setFrontMatterParsingOptions(options: {
      readonly language: string;
      readonly engines: Readonly<Record<string, { readonly parse: () => never }>>;
    }): void;
    setTemplateFormats(formats: readonly string[]): void;
    setUseGitIgnore(use: boolean): void;
    setQuietMode(quiet: boolean): void;
  }

  export interface EleventyOptions {
    readonly quietMode?: boolean;
    readonly source?: 'cli' | 'script';
    readonly configPath?: string | false;
    readonly config?: (configuration: UserConfig) => void | Promise<void>;
  }

  export interface RenderedPage {
    readonly url: string | false;
    readonly outputPath: string | false;
    readonly content: string;
  }

  export default class Eleventy {
    constructor(input: string, output: string, options?: EleventyOptions);
    disableLogger(): void;
    toJSON(): Promise<readonly RenderedPage[]>;
    write(): Promise<unknown>;
  }
}
