// The panel's one door, as both sides of google.script.run know it: the client's runner and the function at the top level
// of the script take their types from here, so that a question that either of them does not know cannot compile.
import type { PanelAnswer, PanelGiven, PanelQuestion, PanelReply, Progress } from '../panel/host';

/** The same type, with never in the place of whatever google.script.run cannot carry: dates, functions, undefined. */
type Carried<T> = T extends string | number | boolean | null
  ? T
  : T extends Date | ((...given: never[]) => unknown) | undefined
    ? never
    : { readonly [Key in keyof T]: Carried<T[Key]> };
type Carries<T> = T extends Carried<T> ? true : false;

/** Questions that could not be asked or answered; there are none, or the door below does not compile. */
type NotPlain = {
  [Question in PanelQuestion]: [Carries<PanelGiven<Question>>, Carries<PanelAnswer<Question>>] extends [true, true] ? never : Question;
}[PanelQuestion];

/** What is known of a run while another call is still at it; null where nothing is. */
export interface RunAttended {
  readonly progress: Progress | null;
}

/** `run` is a name that the panel gives to a long change, by which it follows and stops it; null where it does neither. */
export type PanelApi = [NotPlain] extends [never]
  ? <Question extends PanelQuestion>(question: Question, given: PanelGiven<Question>, run: string | null) => PanelReply<PanelAnswer<Question>>
  : NotPlain;

/** The names of the doors at the top level of the script. */
export interface PanelScript {
  readonly answerPanel: PanelApi;
  readonly attendRun: (given: { readonly run: string; readonly stop: boolean }) => RunAttended;
}
