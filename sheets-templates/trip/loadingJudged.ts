// The items of the Trip sheet that hear Weight and balance.
import { on, verdictOf, worstOf } from '../build';
import { balanceCells, sheetNames } from '../places';
import { loadingLacks } from './notComputed';

const balance = (place: string): string => on(sheetNames.balance, place);
const notComputed = '"not computed, for the reason of Loading, take-off"';

const ofPoint = (cells: string, point: string): string => `INDEX(${balance(cells)},MATCH("${point}",${balance(balanceCells.pointNames)},0))`;
export const pointOf = (label: string, point: string): readonly [string, string, string] => [
  label,
  verdictOf(ofPoint(balanceCells.pointVerdicts, point)),
  `=IFERROR(${ofPoint(balanceCells.pointReasons, point)},${loadingLacks})`,
];

/** Points, lateral balance and burn together; fewer OK than the five points means that nothing was computed. */
const allLoading = balance(balanceCells.loadingVerdicts);
export const burnVerdict = `=IF(COUNTIF(${allLoading},"NO")>0,"NO",IF(OR(COUNTIF(${allLoading},"UNKNOWN")>0,COUNTIF(${allLoading},"OK")<4),"UNKNOWN",IF(COUNTIF(${allLoading},"CHECK")>0,"CHECK","OK")))`;
/** What no other item tells: the burn, the fuel beyond landing, the lateral balance; each that is not OK, by name. */
export const burnReason = (verdict: string): string => {
  const [names, verdicts, reasons] = [balance(balanceCells.burnNames), balance(balanceCells.burnVerdicts), balance(balanceCells.burnReasons)];
  const told = `TEXTJOIN("; ",TRUE,FILTER(${names}&": "&${reasons},(${verdicts}<>"OK")*(${verdicts}<>"")))`;
  const untold = `IF(COUNTIF(${allLoading},"OK")>0,"take-off, landing or zero fuel is not OK",${notComputed})`;
  return `=IF(${verdict}="OK",${ofPoint(balanceCells.pointReasons, 'during the flight')},IFERROR(${told},${untold}))`;
};

const entryVerdicts = balance(balanceCells.entryVerdicts);
/** Every doubt: of two slips the one told first must not hide the other. */
const doubtsSaid = `TEXTJOIN("; ",TRUE,FILTER(${balance(balanceCells.entryNames)}&": "&${balance(balanceCells.entryReasons)},${entryVerdicts}="CHECK"))`;
const entriesReason = `=IFERROR(${doubtsSaid},IF(COUNTIF(${entryVerdicts},"OK")>0,"nothing looks swapped, doubled or in another unit",${loadingLacks}))`;
export const entriesOfLoading = [
  'Loading, entries',
  worstOf(entryVerdicts, `COUNTIF(${balance(balanceCells.stationAircraft)},aircraft_in_use)`),
  entriesReason,
] as const;
