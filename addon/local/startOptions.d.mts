export interface StartOptions {
  readonly print: boolean;
  readonly file: string;
  readonly port: number;
  readonly lan: boolean;
  readonly restore: boolean;
  readonly new: boolean;
  readonly help: boolean;
}

export declare const help: string;
export declare const defaultFile: string;
export declare function readOptions(
  words: readonly string[],
): { readonly values: StartOptions; readonly wrong?: undefined } | { readonly values?: undefined; readonly wrong: string };
