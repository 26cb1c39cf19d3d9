// Jobs of the air: altitudes, airspeed, wind and descent. The formulas by hand are the shortest that give the same values:
// what depends on a shared input alone is worked out once in a cell of its own.
import { down, inBoth, middleRow, sheetsOf, type Cells, type Job } from './job';
import { spread } from './numbers';

/** R L / g0 of the ICAO standard atmosphere, the exponent of its temperature over its pressure. */
const exponent: Cells = { N2: '=287.05287*0.0065/9.80665' };

export const pressureAltitude = (rows: number): Job => ({
  name: 'pressure altitude',
  ...sheetsOf({
    typed: { A: spread(11, rows, -200, 9000, 1) },
    cells: { K2: 29.8 },
    call: `=PRESSURE_ALTITUDE(${down('A', rows)},K2)`,
    byHand: {
      cells: { ...exponent, N3: '=(1-(K2*0.0254*13595.1*9.80665/100/1013.25)^N2)*288.15/0.0065/0.3048' },
      filled: { F: '=A2+N$3' },
    },
  }),
  results: down('F', rows),
  shared: [inBoth({ K2: 29.92 }), inBoth({ K2: 30.1 })],
  oneRow: [inBoth({ [`A${middleRow(rows)}`]: 1234.5 }), inBoth({ [`A${middleRow(rows)}`]: 4321.5 })],
});

/** Moist air, with one dew point for all: the pressure of each row does not depend on it. */
export const densityAltitude = (rows: number): Job => ({
  name: 'density altitude',
  ...sheetsOf({
    typed: { A: spread(21, rows, -500, 12000, 1), B: spread(22, rows, 15, 45, 0.5) },
    cells: { K2: 8 },
    call: `=DENSITY_ALTITUDE(${down('A', rows)},${down('B', rows)},K2)`,
    byHand: {
      cells: { ...exponent, N3: '=(1-0.62198)*6.1094*EXP(17.625*K2/(K2+243.04))', N4: '=1/(1/N2-1)' },
      filled: {
        G: '=1013.25*(1-0.0065*0.3048/288.15*A2)^(1/N$2)',
        F: '=(1-(G2/1013.25*288.15*(1-N$3/G2)/(B2+273.15))^N$4)*288.15/0.0065/0.3048',
      },
    },
  }),
  results: down('F', rows),
  shared: [inBoth({ K2: 10 }), inBoth({ K2: 12 })],
  oneRow: [inBoth({ [`B${middleRow(rows)}`]: 20.25 }), inBoth({ [`B${middleRow(rows)}`]: 30.25 })],
});

export const windComponents = (rows: number): Job => ({
  name: 'wind components',
  ...sheetsOf({
    typed: { A: spread(31, rows, 0, 360, 1) },
    cells: { K2: 200, K3: 15, K4: 25 },
    call: `=WIND_COMPONENTS(${down('A', rows)},K2,K3,K4)`,
    byHand: {
      filled: { J: '=RADIANS(K$2-A2)', F: '=K$3*COS(J2)', G: '=K$3*SIN(J2)', H: '=K$4*COS(J2)', I: '=K$4*SIN(J2)' },
    },
  }),
  results: down('F', rows, 'I'),
  shared: [inBoth({ K2: 210 }), inBoth({ K2: 233 })],
  oneRow: [inBoth({ [`A${middleRow(rows)}`]: 12.5 }), inBoth({ [`A${middleRow(rows)}`]: 77.5 })],
});

export const windTriangle = (rows: number): Job => ({
  name: 'wind triangle',
  ...sheetsOf({
    typed: { A: spread(41, rows, 0, 360, 1), B: spread(42, rows, 90, 160, 1) },
    cells: { K2: 40, K3: 20 },
    call: `=WIND_TRIANGLE(${down('A', rows)},${down('B', rows)},K2,K3)`,
    byHand: {
      filled: { I: '=RADIANS(K$2-A2)', H: '=DEGREES(ASIN(K$3*SIN(I2)/B2))', F: '=MOD(A2+H2,360)', G: '=B2*COS(RADIANS(H2))-K$3*COS(I2)' },
    },
  }),
  results: down('F', rows, 'H'),
  shared: [inBoth({ K3: 25 }), inBoth({ K3: 31 })],
  oneRow: [inBoth({ [`B${middleRow(rows)}`]: 101.5 }), inBoth({ [`B${middleRow(rows)}`]: 140.5 })],
});

/** One calibrated airspeed flown at many altitudes: the pressure of each row does not depend on it. */
export const trueAirspeed = (rows: number): Job => ({
  name: 'true airspeed',
  ...sheetsOf({
    typed: { A: spread(51, rows, 0, 25000, 10), B: spread(52, rows, -40, 30, 0.5) },
    cells: { K2: 110 },
    call: `=TRUE_AIRSPEED(K2,${down('A', rows)},${down('B', rows)})`,
    byHand: {
      cells: { ...exponent, N3: '=SQRT(1.4*287.05287*288.15)*3600/1852', N4: '=(1+(K2/N3)^2/5)^3.5-1' },
      filled: { G: '=(1-0.0065*0.3048/288.15*A2)^(1/N$2)', F: '=SQRT(5*((N$4/G2+1)^(2/7)-1)*1.4*287.05287*(B2+273.15))*3600/1852' },
    },
  }),
  results: down('F', rows),
  shared: [inBoth({ K2: 120 }), inBoth({ K2: 140 })],
  oneRow: [inBoth({ [`B${middleRow(rows)}`]: 1.25 }), inBoth({ [`B${middleRow(rows)}`]: 11.25 })],
});

export const descentStart = (rows: number): Job => ({
  name: 'descent start',
  ...sheetsOf({
    typed: { A: spread(61, rows, 9000, 25000, 100), B: spread(62, rows, 1000, 8000, 100), C: spread(63, rows, -5, 12, 0.5) },
    cells: { K2: 2.5 },
    call: `=DESCENT_START(${down('A', rows)},${down('B', rows)},K2,${down('C', rows)})`,
    byHand: { cells: { N2: '=0.3048/1852/TAN(RADIANS(K2))' }, filled: { F: '=(A2-B2)*N$2+C2' } },
  }),
  results: down('F', rows),
  shared: [inBoth({ K2: 3 }), inBoth({ K2: 3.5 })],
  oneRow: [inBoth({ [`A${middleRow(rows)}`]: 12345 }), inBoth({ [`A${middleRow(rows)}`]: 15432 })],
});
