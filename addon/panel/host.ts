// What the panel may ask of the spreadsheet it stands beside. Each host answers in its own way: Google Sheets through
// google.script.run, the local workbook through messages between frames. Everything is plain data, so that it survives both.

interface PanelQuestions {
  /** Adds sheets by key; nothing is overwritten. */
  insertSheets: {
    readonly given: { readonly keys: readonly string[] };
    readonly answer: { readonly inserted: readonly string[]; readonly reads: readonly string[] };
  };
  /** Puts a formula, written with commas, into the selected cell if that is empty. */
  putFormula: {
    readonly given: { readonly formula: string };
    readonly answer: { readonly cell: string };
  };
}

export type PanelQuestion = keyof PanelQuestions;
export type PanelGiven<Question extends PanelQuestion> = PanelQuestions[Question]['given'];
export type PanelAnswer<Question extends PanelQuestion> = PanelQuestions[Question]['answer'];

/** How an answer travels: what was asked for, or a sentence that says why not. */
export type PanelReply<Answer> = { readonly answer: Answer } | { readonly refusal: string };

export interface PanelHost {
  /** Rejects with an Error whose message is a sentence for the user. */
  ask<Question extends PanelQuestion>(question: Question, given: PanelGiven<Question>): Promise<PanelAnswer<Question>>;
}
