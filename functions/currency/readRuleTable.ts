// Reader of rules written as a table, one thing asked a row: a pilot's own on a sheet, or those of an authority in a file.
import type { Named } from '../../core/basics/named';
import type { Authority, MedicalPeriod, PilotRule, Task } from '../../core/currency/rules/rule';
import { isBlank, isRange, type CellValue, type RangeValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { columnPlaces } from '../registry/readHeadings';
import { limitInWords } from '../registry/readNumber';
import { namedFromCell, plainWords } from '../registry/readText';
import { tallyWords, windowWords } from './listWords';
import { headings, Reader, RowMistake, rowOf, tallies, type Counted, type Row } from './readRuleRow';

const mustBe = 'a table of rules under one header row';
export const ownRulesName = 'own rules';

/** A sentence about one row, and the rule it was to be. */
export interface RuleMistake {
  readonly rule: Named | undefined;
  readonly place: number;
  readonly sentence: string;
}

function taskOf({ what, needed = 0, task }: Row): Task {
  return { counts: { of: tallies[what as Counted], ...task }, needed };
}

/** What rows of one rule must have in common, to be compared. */
const shared = ({ within, common, counting, what }: Row): string => JSON.stringify([what === 'medical' ? '' : within, common, counting]);

/** The rule that rows of one name make. */
function ruleOf(rows: readonly Row[], first: Row): PilotRule {
  const { rule, what, within, common, counting } = first;
  const item = rule.name;
  const lasts = within === undefined || 'days' in within || 'sinceDay' in within ? undefined : within;
  if (what === 'paper') {
    const validity =
      lasts === undefined
        ? {}
        : { lasts: 'months' in lasts ? { months: lasts.months, to: 'day' as const } : { months: lasts.calendarMonths, to: 'month_end' as const } };
    return { kind: 'paper', item, ...common, papers: [item], ...validity };
  }
  if (what === 'medical') {
    const rules = rows.map(({ medical, within: period }): MedicalPeriod => ({ ...medical, within: period ?? { months: 1 } }));
    return { kind: 'medical', item, ...common, rules, privileges: [{ privilege: 'private', name: 'private' }], least: 'private' };
  }
  const tasks = rows.map(taskOf);
  const said = tasks.map(({ counts, needed }) => `${limitInWords(needed)} ${tallyWords(counts, needed)}`).join(' and ');
  const window = within === undefined ? '' : 'sinceDay' in within ? '' : ` in ${windowWords(within)}`;
  const reading = common.reading === undefined ? `${said}${window}` : common.reading;
  return { kind: 'days', item, ...common, reading, within: within ?? { days: 1 }, tasks, ...counting, typesCountForClass: true };
}

/** Every rule of the table, and a sentence for each row that makes none. */
export function readRules(range: RangeValue, dates: DateHost): { readonly rules: readonly PilotRule[]; readonly mistakes: readonly RuleMistake[] } {
  const places = columnPlaces(range, { headings, needed: ['rule', 'what'], mustBe });
  const used = [...places.values()];
  const byName = new Map<string, Row[]>();
  const mistakes: RuleMistake[] = [];
  range.slice(1).forEach((cells, index) => {
    if (used.every((at) => isBlank(cells[at]))) return;
    const place = index + 2;
    const reader = new Reader(cells, places, dates);
    try {
      const row = rowOf(reader);
      const before = byName.get(row.rule.key) ?? [];
      const [first] = before;
      if (first !== undefined && (shared(first) !== shared(row) || (first.what === 'paper') !== (row.what === 'paper') || row.what === 'paper'))
        throw reader.refuse('rule', `a name of its own, since the rows of one rule differ in "what" and "at least" only`);
      byName.set(row.rule.key, [...before, row]);
    } catch (thrown) {
      if (!(thrown instanceof RowMistake)) throw thrown;
      mistakes.push({
        rule: namedFromCell(cells[places.get('rule') ?? -1]),
        place,
        sentence: thrown.message,
      });
    }
  });
  const rules = [...byName.values()].flatMap((rows) => (rows[0] === undefined ? [] : [ruleOf(rows, rows[0])]));
  return { rules, mistakes };
}

/** A row that cannot be read makes nothing but itself UNKNOWN. */
const unreadable = ({ rule, place, sentence }: RuleMistake): PilotRule => ({
  kind: 'unreadable',
  item: rule?.name ?? `own rule in row ${place}`,
  neededFor: 'every flight',
  paragraph: sentence,
  warnDays: 0,
});

export function ownRules(help: string): Parameter<Authority> & { readonly shape: 'table' } {
  const read = (raw: CellValue, dates: DateHost): Authority => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const { rules, mistakes } = readRules(range, dates);
    const broken = new Set(mistakes.flatMap(({ rule }) => rule?.key ?? []));
    const whole = rules.filter(({ item }) => !broken.has(plainWords(item)));
    return { name: ownRulesName, own: true, pilot: [...whole, ...mistakes.map(unreadable)], aircraft: [] };
  };
  return { shape: 'table', unit: 'table', mustBe, help, optional: undefined, read };
}
