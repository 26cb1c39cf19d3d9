// Items judged by the lists of pilot, aircraft and navigation data, or by last good days typed on the trip.
import { isDay, on, verdictOf } from '../build';
import type { Block } from '../layout';
import { saysBeside } from '../lists';
import { besideCells, sheetNames } from '../places';
import { typedDays, working } from './entries';
import { allDays, endDay, notJudged, type Item } from './item';

/** What a step says, and where it says nothing, why it cannot. */
const saidBy = (place: string, otherwise: string): string => `IFERROR(IF(${place}="","${otherwise}",${place}&""),"${otherwise}")`;

/** What a list says of this flight, where the workbook keeps it; else the last good days typed. */
export function kept(label: string, block: Block, keeps: string, of: 'pilot' | 'aircraft' | 'data'): Item {
  const days = typedDays.filter((one) => one.of === of);
  const places = days.map(({ row }) => `B${row}`);
  const known = `${working(`B${block.first}`)}`;
  const late = days.map(
    ({ row, label: words, why, most }) =>
      `IF(B${row}="","",IF(NOT(${isDay(`B${row}`)}),"${words}: no date",IF(B${row}<${endDay},"${words} "&TEXT(B${row},"yyyy-mm-dd")&", before the last day of the trip",IF(B${row}>as_of+${most},"${words} "&TEXT(B${row},"yyyy-mm-dd")&": ${why}",""))))`,
  );
  const all = `TEXTJOIN("; ",TRUE,${late.join(',')})`;
  const lapsed = `OR(${places.map((place) => `IF(${isDay(place)},${place}<${endDay},FALSE)`).join(',')})`;
  const blank = `COUNTBLANK(${places[0] ?? ''}:${places[places.length - 1] ?? ''})`;
  const wrong = `OR(${places.map((place) => `IF(${place}="",FALSE,NOT(${isDay(place)}))`).join(',')})`;
  const byDays = `IF(${blank}=${places.length},"${notJudged}",IF(NOT(${allDays}),"UNKNOWN",IF(${lapsed},"NO",IF(OR(${blank}>0,${wrong}),"UNKNOWN",IF(${all}<>"","CHECK","OK")))))`;
  const daysSaid = `IF(${blank}=${places.length},"not kept here, and no last good day is typed",IF(${all}<>"",${all},IF(${blank}>0,"missing: "&TEXTJOIN(", ",TRUE,${days.map(({ row, label: words }) => `IF(B${row}="","${words}","")`).join(',')}),"the days typed last beyond the trip")))`;
  // A row that is not read might be the one that says NO.
  const listSheet = sheetNames[of === 'data' ? 'ledger' : 'currency'];
  const beside = `ISNUMBER(SEARCH("${saysBeside}",${on(listSheet, besideCells[of])}))`;
  const listed = verdictOf(known).slice(1);
  return [
    label,
    `=IF(${keeps}="yes",IF(AND(${beside},${listed}<>"NO"),"UNKNOWN",${listed}),IF(${keeps}="no",${byDays},"UNKNOWN"))`,
    `=IF(${keeps}="yes",IF(${beside},"${listSheet}: an entry stands ${saysBeside}; ","")&${saidBy(working(`D${block.first}`), 'not computed: a day of the trip is missing, or the list, see Trip working')},IF(${keeps}="no",${daysSaid},"Start does not say whether it is kept here"))`,
  ];
}
