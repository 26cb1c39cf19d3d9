// What the panel may ask of the spreadsheet it stands beside. Each host answers in its own way: Google Sheets through
// google.script.run, the local workbook through messages between frames. Everything is plain data, so that it survives both.

import type { FlightPlan } from '../workbook/addFlight';
import type { TableKind } from '../workbook/pasted/tableKinds';
import type { TableAnswers } from '../workbook/pasted/tableQuestions';
import type { CarriedSheet } from '../workbook/carriedInputs';
import type { CellsStep } from '../workbook/cellChanges';
import type { EntryWritten } from '../workbook/tripEntries';
import type { WorkbookSnapshot } from '../workbook/snapshot';

interface PanelQuestions {
  /**
   * The workbook as plain data: every sheet, or the one in sight with that of its day, and perhaps no other names than those that it uses. Refused
   * while formulas are still being worked out.
   */
  readWorkbook: {
    readonly given: { readonly sheets: 'shown' | 'all' };
    readonly answer: WorkbookSnapshot;
  };
  /** Shows a cell and selects it. */
  goTo: {
    readonly given: { readonly sheet: string; readonly row: number; readonly column: number };
    readonly answer: { readonly cell: string };
  };
  /** Copies the sheet in sight beside it, every formula of the copy turned into the value it shows; the sheet itself stays. */
  freezeSheet: {
    readonly given: Readonly<Record<string, never>>;
    readonly answer: { readonly sheet: string; readonly formulas: number };
  };
  /**
   * Puts sheets of today's version in the place of a set of older ones: they take over the names, with these entries in
   * them, and the older ones stay beside them under another name, for the user to delete.
   */
  updateSheets: {
    readonly given: { readonly set: string; readonly entries: readonly CarriedSheet[] };
    readonly answer: { readonly updated: readonly string[]; readonly kept: readonly string[] };
  };
  /**
   * Writes into single cells, or empties them, whatever stands there: all of them or none. With `copyFirst` a sheet is put aside before that, as
   * freezeSheet does, under its name and the suffix.
   */
  writeEntries: {
    readonly given: {
      readonly entries: readonly EntryWritten[];
      readonly copyFirst?: { readonly sheet: string; readonly suffix: string };
    };
    /** `copy` is the name of the sheet put aside. */
    readonly answer: { readonly cells: number; readonly copy?: string };
  };
  /**
   * Changes rectangles of cells, all of them or none, and only where each still holds what it held when the change was worked out; rows are put in
   * before that, or taken out after it where they are blank. The same turned round takes it back. Answers with the number of cells written.
   */
  changeCells: {
    readonly given: CellsStep;
    readonly answer: { readonly cells: number };
  };
  /**
   * Copies the sheets of a trip, so that they read one another, and writes into the copies and onto Flights of the day: all of it or nothing.
   * Answers with the names of the copies, that of the Trip sheet first.
   */
  addFlight: {
    readonly given: Pick<FlightPlan, 'sheet' | 'entries' | 'listed'>;
    readonly answer: { readonly copies: readonly string[] };
  };
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

/** How far a long change has come. */
export interface Progress {
  /** A sentence that says what is being done. */
  readonly doing: string;
  /** Sheets written, of how many. */
  readonly done: number;
  readonly of: number;
}

/** The little of an AbortSignal that is used; the script on Google's side has none. */
export interface StopSignal {
  readonly aborted: boolean;
  addEventListener(type: 'abort', listener: () => void, options: { readonly once: true }): void;
}

/** How a long change is followed and stopped by whoever asked for it. */
export interface Watch {
  readonly onProgress: (progress: Progress) => void;
  /** Aborted when the user stops it: everything is then put back as it was, and the question is refused. */
  readonly stop: StopSignal;
}

/** Points read off a chart's picture, as a text to be put in like one that is pasted, and what is known of it already. */
export interface TracedText {
  readonly text: string;
  readonly answers: TableAnswers;
}

export interface PanelHost {
  /**
   * Lets the user trace a chart of this kind of table in a picture, and answers with its points; undefined where the user left it. A host without
   * room for a picture lacks it.
   */
  traceChart?(list: TableKind['list']): Promise<TracedText | undefined>;
  /**
   * Rejects with an Error whose message is a sentence for the user. Google Sheets heeds `watch` while sheets are inserted or brought up to
   * date; a host that does such a thing in one step tells no progress, and is not to be stopped.
   */
  ask<Question extends PanelQuestion>(question: Question, given: PanelGiven<Question>, watch?: Watch): Promise<PanelAnswer<Question>>;
}
