// The rules by which the grid tints the words of verdicts, as it keeps them.
import { verdictTints } from '../../../sheets-templates/look';
import type { TintSnapshot } from '../../workbook/snapshot';
import { a1FromRange, type CellRange } from './a1';

/** A rule as the grid keeps it, as far as it is used here. */
export interface TintRule {
  readonly cfId: string;
  readonly ranges: readonly CellRange[];
  readonly rule: {
    readonly type: string;
    readonly subType?: string;
    readonly operator?: string;
    readonly value?: unknown;
    readonly style?: { readonly bg?: { readonly rgb?: string } | null } | undefined;
  };
}

/** The cell holds exactly this word. */
export const wordRule = (word: string, style: TintRule['rule']['style']): TintRule['rule'] => ({
  type: 'highlightCell',
  subType: 'text',
  operator: 'equal',
  value: word,
  style,
});

export const isHighlight = ({ rule: { type, subType } }: TintRule, kind: string): boolean => type === 'highlightCell' && subType === kind;

/** The word of a verdict that a rule tints. */
export function tintedWord(one: TintRule): string | undefined {
  const { operator, value } = one.rule;
  return isHighlight(one, 'text') && operator === 'equal' && typeof value === 'string' && value in verdictTints ? value : undefined;
}

export const tintResource = 'SHEET_CONDITIONAL_FORMATTING_PLUGIN';

export const tintsIn = (rules: readonly TintRule[]): TintSnapshot[] =>
  rules.map((one) => {
    const { value, style, subType } = one.rule;
    const [word, colour] = [tintedWord(one), style?.bg?.rgb];
    return {
      ranges: one.ranges.map((range) => a1FromRange(range)),
      ...(word !== undefined && { word }),
      ...(subType === 'formula' && { formula: String(value) }),
      ...(typeof colour === 'string' && { colour }),
    };
  });
