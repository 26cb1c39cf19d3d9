// What the panel knows of functions and sheets. The build makes it from the registry and the templates.

export interface ParameterEntry {
  readonly name: string;
  readonly unit: string;
  readonly help: string;
  readonly optional: boolean;
}

export interface ResultEntry {
  readonly name: string;
  readonly unit: string;
  readonly help: string;
}

export interface ExampleEntry {
  readonly formula: string;
  /** The answer as its cells, row by row. */
  readonly answer: readonly (readonly string[])[];
  readonly source: string;
  /** The formula stands by itself; otherwise it refers to ranges that only stand for the user's own. */
  readonly whole: boolean;
}

export interface FunctionEntry {
  readonly name: string;
  readonly subject: string;
  readonly summary: string;
  readonly notes: string;
  readonly signature: string;
  readonly parameters: readonly ParameterEntry[];
  readonly results: readonly ResultEntry[];
  readonly examples: readonly ExampleEntry[];
  readonly source: string;
}

export interface Catalogue {
  readonly functions: readonly FunctionEntry[];
  readonly sheets: readonly { readonly key: string; readonly name: string }[];
}
