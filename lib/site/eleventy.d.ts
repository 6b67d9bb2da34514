declare module '@11ty/eleventy' {
  /** What of Eleventy is used to render from a program. */
  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: { quietMode?: boolean; configPath?: string; config?: (eleventyConfig: never) => void },
    );
    disableLogger(): void;
    write(): Promise<unknown>;
  }
}
