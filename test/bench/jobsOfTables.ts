// Jobs that look something up: data cards against the calendar of cycles, loadings against an envelope, a table of the
// manual between its rows, and landings in a log. All data invented.
import { serialFromIso } from '../../addon/workbook/serialDates';
import { address } from '../../sheets-templates/build';
import { down, inBoth, middleRow, sheetsOf, type Cells, type Job } from './job';
import { evenNumbers, spread } from './numbers';

/** Effective dates of the three series (10 August 2023 is one of each); a user would type this little table. */
const series = { '28-day': 28, '56-day': 56, '14-day': 14 } as const;
const seriesTable: Cells = Object.fromEntries(
  Object.entries(series).flatMap(([name, days], index) => [
    [`M${2 + index}`, name],
    [`N${2 + index}`, days],
    [`O${2 + index}`, serialFromIso('2023-08-10')],
  ]),
);

/** One card in ten was loaded on a day that is no effective date, one in twenty has nothing recorded, some are loaded ahead. */
function cards(rows: number): { readonly loaded: readonly (number | '')[]; readonly names: readonly string[] } {
  const next = evenNumbers(71);
  const names = Array.from({ length: rows }, () => Object.keys(series)[Math.floor(next() * 3)] ?? '');
  const loaded = names.map((name) => {
    const day = serialFromIso('2023-08-10') + series[name as keyof typeof series] * Math.floor(next() * (1260 / series[name as keyof typeof series]));
    const kind = next();
    return kind < 0.05 ? '' : kind < 0.15 ? day + 3 : day;
  });
  return { loaded, names };
}

export const cycleStatus = (rows: number): Job => {
  const { loaded, names } = cards(rows);
  const cell = `A${middleRow(rows)}`;
  return {
    name: 'data cards, cycle status',
    ...sheetsOf({
      typed: { A: loaded, B: names },
      cells: { K2: serialFromIso('2026-10-20'), K3: 5 },
      call: `=CYCLE_STATUS(${down('A', rows)},${down('B', rows)},K2,K3)`,
      byHand: {
        cells: seriesTable,
        filled: {
          I: '=MATCH(B2,M$2:M$4,0)',
          G: '=IF(A2="","",IF(MOD(A2-INDEX(O$2:O$4,I2),INDEX(N$2:N$4,I2))=0,A2+INDEX(N$2:N$4,I2),""))',
          H: '=IF(G2="","",G2-K$2)',
          F: '=IF(G2="","UNKNOWN",IF(A2>K$2,"UNKNOWN",IF(H2<=0,"NO",IF(H2<=K$3,"CHECK","OK"))))',
        },
      },
    }),
    results: down('F', rows, 'H'),
    shared: [inBoth({ K2: serialFromIso('2026-11-03') }), inBoth({ K2: serialFromIso('2026-12-01') })],
    oneRow: [inBoth({ [cell]: serialFromIso('2023-08-10') }), inBoth({ [cell]: serialFromIso('2026-10-22') })],
  };
};

/** Corners of the limits, arm and weight: forward limit slanting above the second corner, aft limit and ceiling straight. */
const envelope: Cells = { M2: 35, N2: 1500, M3: 35, N3: 1950, M4: 39.5, N4: 2400, M5: 47, N5: 2400, M6: 47, N6: 1500 };

export const balanceCheck = (rows: number): Job => ({
  name: 'loadings in an envelope',
  ...sheetsOf({
    typed: { A: spread(81, rows, 1480, 2420, 0.5), B: spread(82, rows, 34.5, 47.5, 0.05) },
    cells: envelope,
    call: `=BALANCE_CHECK(${down('A', rows)},${down('B', rows)},M2:N6)`,
    byHand: {
      // The slope of the forward limit, both ways round; the limits are straight beyond the corner, which MAX and MIN say shortest.
      cells: { P2: '=(M4-M3)/(N4-N3)', P3: '=(N4-N3)/(M4-M3)' },
      filled: {
        G: '=IF(A2<N$2,"",IF(A2>N$4,"",B2-MAX(M$3,M$3+(A2-N$3)*P$2)))',
        H: '=IF(A2<N$2,"",IF(A2>N$4,"",M$5-B2))',
        I: '=IF(B2<M$2,"",IF(B2>M$5,"",MIN(N$4,N$3+(B2-M$3)*P$3)-A2))',
        F: '=IF(G2="","NO",IF(I2="","NO",IF(MIN(G2,H2,I2)>=0,"OK","NO")))',
      },
    },
  }),
  results: down('F', rows, 'I'),
  shared: [inBoth({ N3: 1960 }), inBoth({ N3: 1980 })],
  oneRow: [inBoth({ [`A${middleRow(rows)}`]: 2000.25 }), inBoth({ [`A${middleRow(rows)}`]: 2222.25 })],
});

const altitudes = [0, 2000, 4000, 6000, 8000, 10000];
const temperatures = [-10, 0, 10, 20, 30];
/** An invented ground roll. */
const groundRoll = (altitude: number, temperature: number): number => Math.round(800 * 1.08 ** (altitude / 1000) * 1.01 ** temperature);

/** The table as our sheets hold it: one row for each grid point, under a header. */
const longTable: Cells = Object.fromEntries([
  ...['altitude', 'temperature', 'ground roll'].map((head, column) => [address(1, 13 + column), head] as const),
  ...altitudes.flatMap((altitude, a) =>
    temperatures.flatMap((temperature, t) =>
      [altitude, temperature, groundRoll(altitude, temperature)].map(
        (value, column) => [address(2 + a * temperatures.length + t, 13 + column), value] as const,
      ),
    ),
  ),
]);

/** The table as somebody lays it out to look things up by hand: altitudes down, temperatures across. */
const squareTable: Cells = Object.fromEntries([
  ...temperatures.map((temperature, t) => [address(1, 14 + t), temperature] as const),
  ...altitudes.flatMap((altitude, a) => [
    [address(2 + a, 13), altitude] as const,
    ...temperatures.map((temperature, t) => [address(2 + a, 14 + t), groundRoll(altitude, temperature)] as const),
  ]),
]);

/** The square table's interpolation: the cell below and left of the point, the way from it, then straight lines between four cells. */
const betweenFour = {
  G: '=MIN(MATCH(A2,M$2:M$7,1),5)',
  H: '=MIN(MATCH(B2,N$1:R$1,1),4)',
  I: '=(A2-INDEX(M$2:M$7,G2))/(INDEX(M$2:M$7,G2+1)-INDEX(M$2:M$7,G2))',
  J: '=(B2-INDEX(N$1:R$1,H2))/(INDEX(N$1:R$1,H2+1)-INDEX(N$1:R$1,H2))',
  F: '=(1-I2)*((1-J2)*INDEX(N$2:R$7,G2,H2)+J2*INDEX(N$2:R$7,G2,H2+1))+I2*((1-J2)*INDEX(N$2:R$7,G2+1,H2)+J2*INDEX(N$2:R$7,G2+1,H2+1))',
};

export const tableRead = (rows: number): Job => {
  const typed = { A: spread(91, rows, 0, 10000, 10), B: spread(92, rows, -10, 30, 0.5) };
  const tableCell = (value: number) => ({ ours: { O15: value }, byHand: { Q4: value } });
  return {
    name: 'table of the manual, two inputs',
    ours: { typed, cells: { ...longTable, F2: `=AFM_READ(M1:O31,"ground roll",${down('A', rows)},${down('B', rows)})` }, filled: {} },
    byHand: { typed, cells: squareTable, filled: betweenFour },
    results: down('F', rows),
    shared: [tableCell(1350), tableCell(1340)],
    oneRow: [inBoth({ [`A${middleRow(rows)}`]: 1234.5 }), inBoth({ [`A${middleRow(rows)}`]: 4321.5 })],
  };
};

/**
 * A log of so many flights in no order, and whether the landings of 90 days are enough: how many, the verdict, the last good day.
 * By hand each flight needs the landings within 90 days from it on, since the last good day hangs on the latest flight with enough of them.
 */
export const recencyLog = (rows: number): Job => {
  const from = serialFromIso('2020-01-01');
  return {
    name: 'recency log',
    ...sheetsOf({
      typed: { A: spread(101, rows, from, from + 2500, 1), B: spread(102, rows, 0, 3, 1) },
      cells: { K2: from + 2000 },
      call: `=RECENCY_DAYS(${down('A', rows)},${down('B', rows)},K2)`,
      byHand: {
        cells: {
          F2: `=SUMIFS(${down('B', rows)},${down('A', rows)},">"&(K2-90),${down('A', rows)},"<="&K2)`,
          G2: '=IF(AND(ISNUMBER(H2),H2>=K2),"OK","NO")',
          H2: `=IF(COUNTIF(${down('I', rows)},">=3")=0,"",MAXIFS(${down('A', rows)},${down('I', rows)},">=3")+89)`,
        },
        filled: { I: `=IF(A2>K$2,0,SUMIFS(B$2:B$${rows + 1},A$2:A$${rows + 1},">="&A2,A$2:A$${rows + 1},"<="&MIN(A2+89,K$2)))` },
      },
    }),
    results: 'F2:H2',
    shared: [inBoth({ K2: from + 1500 }), inBoth({ K2: from + 1234 })],
    oneRow: [inBoth({ [`B${middleRow(rows)}`]: 4 }), inBoth({ [`B${middleRow(rows)}`]: 7 })],
  };
};
