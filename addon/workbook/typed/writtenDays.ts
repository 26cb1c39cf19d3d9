// Days as files of flights write them: 2026-11-21, 20261121, 21.11.2026, 11/21/2026, 21 Nov 2026, Nov 21, 2026.
import { firstYear, isCivilDate, isoDate, lastYear } from '../../../core/basics/civilDate';

export type DateOrder = 'day first' | 'month first';

/** 21.11.2026 or 11/21/2026, a time of day after it or not. */
const turnedDate = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})(?: .*)?$/;

/** The order in which a file writes day and month, where they are told apart by slashes or points: as its own dates show. */
export function dateOrderOf(dates: readonly string[]): DateOrder | 'either' | 'both' {
  const parts = dates.map((date) => turnedDate.exec(date.trim())).filter((found) => found !== null);
  const dayFirst = parts.some(([, one]) => Number(one) > 12);
  const monthFirst = parts.some(([, , other]) => Number(other) > 12);
  if (dayFirst && monthFirst) return 'both';
  if (parts.length === 0 || dayFirst) return 'day first';
  return monthFirst ? 'month first' : 'either';
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const monthNamed = (word = ''): string => String(months.indexOf(word.slice(0, 3).toLowerCase()) + 1);

/** Year, month and day as the text has them; none where it is no date of these forms. */
function partsOf(text: string, order: DateOrder): readonly (string | undefined)[] {
  const written = /^(\d{4})(?:([-/.])(\d{1,2})\2(\d{1,2})|(\d{2})(\d{2}))(?:[T ].*)?$/.exec(text);
  if (written !== null) return [written[1], written[3] ?? written[5], written[4] ?? written[6]];
  const turned = turnedDate.exec(text);
  if (turned !== null) return order === 'day first' ? [turned[3], turned[2], turned[1]] : [turned[3], turned[1], turned[2]];
  const named = /^(\d{1,2})[-. ]*([a-z]{3,9})[-., ]*(\d{4})$/i.exec(text);
  if (named !== null) return [named[3], monthNamed(named[2]), named[1]];
  const american = /^([a-z]{3,9})[. ]+(\d{1,2}),? +(\d{4})$/i.exec(text);
  return american === null ? [] : [american[3], monthNamed(american[1]), american[2]];
}

/** The day as 2026-11-21, from the years of flying; undefined where the text is no such day. */
export function isoOf(text: string, order: DateOrder): string | undefined {
  const [year, month, day] = partsOf(text.trim(), order);
  const date = { year: Number(year), month: Number(month), day: Number(day) };
  return year !== undefined && isCivilDate(date) && date.year >= firstYear && date.year <= lastYear ? isoDate(date) : undefined;
}
