// The words of verdicts as pages show them: the pocket view, the panel's form and the printed trip.
import { verdictTints } from '../../../sheets-templates/look';

export type VerdictWord = keyof typeof verdictTints;

export const isVerdict = (word: string): word is VerdictWord => word in verdictTints;

export const worstFirst: readonly VerdictWord[] = ['NO', 'UNKNOWN', 'CHECK', 'OK'];

/** Words beside an entry that say how to type it into a grid: they tell nothing where there is a picker, nor on paper. */
export const typingHelp: ReadonlySet<string> = new Set(['date', 'yes or no']);
