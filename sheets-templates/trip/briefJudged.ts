// Items whose word and reason are those of a brief on Trip working: runways, climb, fuel.
import { verdictOf } from '../build';
import type { Block } from '../layout';
import { workingRows } from '../working/rows';
import { working } from './entries';
import { notJudged, type Item } from './item';
import { tripRows as rows } from './rows';

/** The last row of a brief laid out on Trip working: verdict and reason. The items of a brief end with it, whatever stands above. */
export const ofBrief = (block: Block, column: string, items = 'A'): string =>
  `INDEX(${working(`${column}${block.first}:${column}${block.last}`)},MATCH("verdict",${working(`${items}${block.first}:${items}${block.last}`)},0))`;
/** Which columns of a brief and of its corrections: the field's own, or those of the alternate at their right. */
interface Columns {
  readonly item: string;
  readonly word: string;
  readonly reason: string;
  readonly correction: string;
  readonly doubt: string;
  readonly why: string;
}
const own: Columns = { item: 'A', word: 'B', reason: 'C', correction: 'A', doubt: 'E', why: 'F' };
const beside: Columns = { item: 'D', word: 'E', reason: 'F', correction: 'G', doubt: 'K', why: 'L' };

export const brief = (label: string, block: Block, lacks: string, corrections?: Block, columns = own): Item => {
  const word = ofBrief(block, columns.word, columns.item);
  const said = ofBrief(block, columns.reason, columns.item);
  if (corrections === undefined) return [label, verdictOf(word), `=IFERROR(${said}&"",${lacks})`];
  const of = (column: string): string => working(`${column}${corrections.first}:${column}${corrections.last}`);
  const words = of(columns.doubt);
  const doubts = `TEXTJOIN("; ",TRUE,IFERROR(FILTER(${of(columns.why)}&IF(${of(columns.correction)}="corrections"," (section 7 of Manual tables)",""),(${words}<>"OK")*(${words}<>"")),""))`;
  const doubted = (verdict: string): string => `COUNTIF(${words},"${verdict}")>0`;
  const judged = verdictOf(word).slice(1);
  return [
    label,
    `=IF(OR(${judged}="NO",${doubted('NO')}),"NO",IF(OR(${judged}="UNKNOWN",${doubted('UNKNOWN')}),"UNKNOWN",IF(OR(${judged}="CHECK",${doubted('CHECK')}),"CHECK","OK")))`,
    // A correction that cannot be read leaves the brief without an answer, and is the reason.
    `=IFERROR(${said}&IF(${doubts}="","","; "&${doubts}),IF(${doubts}="",${lacks},"not computed: "&${doubts}))`,
  ];
};

/** The landing at the alternate, where one is planned. */
export function alternateLanding(): Item {
  const [label, word, reason] = brief(
    'Landing, alternate',
    workingRows.landingBrief,
    '"not computed, for the reason of Landing runway"',
    workingRows.landingCorrections,
    beside,
  ) as readonly [string, string, string];
  return [label, `=IF(D${rows.field}="","${notJudged}",${word.slice(1)})`, `=IF(D${rows.field}="","no alternate is planned",${reason.slice(1)})`];
}
