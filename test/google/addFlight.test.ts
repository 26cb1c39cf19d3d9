// The next flight of the day on the double: five sheets copied together, reading one another and the flight before; all of it or nothing.
import { afterEach, describe, expect, it } from 'vitest';
import { addFlight } from '../../addon/google/addFlight';
import { insertSheets } from '../../addon/google/insertSheets';
import { readWorkbook } from '../../addon/google/readWorkbook';
import { addFlight as planned, type FlightPlan } from '../../addon/workbook/addFlight';
import { referencesOf } from '../../addon/workbook/formulaText';
import { sheetTemplates } from '../../sheets-templates';
import { tankRows } from '../../sheets-templates/balance/rows';
import { flightList, flightsFrom } from '../../sheets-templates/day/places';
import { tripRows as rows } from '../../sheets-templates/trip/rows';
import type { Double } from './double/services';
import { documentOf, formulasOf, rangesOf, sheetNamesOf } from './smallDocument';
import { withDouble, withoutPlatform } from './support';

const kinds = ['Trip sheet', 'Trip working', 'Route', 'Descent and hold card', 'Weight and balance'];
const copies = (count: number): string[] => kinds.map((name) => `${name} ${count}`);

/** Every sheet inserted, the first trip in sight. */
function inserted(): Double {
  const double = withDouble('Europe/Paris');
  insertSheets(
    sheetTemplates.map(({ key }) => key),
    sheetTemplates,
  );
  double.document.setActiveSheet(double.sheet('Trip sheet'));
  return double;
}
const plan = (): FlightPlan => planned(readWorkbook({ sheets: 'all' }), sheetTemplates);
const fuelCell = (double: Double, sheet: string) => double.sheet(sheet).cell(tankRows.first, 3);

afterEach(withoutPlatform);

describe('a flight added on Google Sheets', () => {
  it('copies the sheets of the trip together, behind the first ones, and shows the new Trip sheet', () => {
    const double = inserted();
    const before = sheetNamesOf(double);
    const first = formulasOf(double.sheet('Trip working'));
    expect(addFlight(plan()).copies).toEqual(copies(2));
    const last = before.indexOf('Weight and balance') + 1;
    expect(sheetNamesOf(double)).toEqual([...before.slice(0, last), ...copies(2), ...before.slice(last)]);
    expect(double.document.active.name).toBe('Trip sheet 2');
    expect(formulasOf(double.sheet('Trip working'))).toEqual(first);
  });

  it('has formulas that name the copies, and the first flight by its ranges alone', () => {
    const double = inserted();
    addFlight(plan());
    const formulas = copies(2).flatMap((name) => formulasOf(double.sheet(name)));
    const named = formulas.flatMap((formula) => [...referencesOf(formula).sheets]);
    expect(named.filter((name) => kinds.includes(name))).toEqual([]);
    expect(named.filter((name) => copies(2).includes(name)).length).toBeGreaterThan(50);
    const reading = formulas.filter((formula) => referencesOf(formula).words.has('flight_told'));
    expect(reading).toHaveLength(4 + 2);
    expect(fuelCell(double, 'Weight and balance 2').formula).toBe(
      `=IFERROR(IF(ISNUMBER(VLOOKUP("in "&B${tankRows.first};flight_told;2;FALSE));VLOOKUP("in "&B${tankRows.first};flight_told;2;FALSE);"")`.concat(
        ';"")',
      ),
    );
    expect(rangesOf(double).filter((name) => name.startsWith('flight_told'))).toEqual([
      expect.stringMatching(/^flight_told=Trip working!/),
      expect.stringMatching(/^flight_told_2=Trip working 2!/),
    ]);
  });

  it('leaves nothing of the first flight, and keeps loads, people and the rules of entries', () => {
    const double = inserted();
    const [first, mark] = [double.sheet('Trip sheet'), double.sheet('Trip working').cell(1, 1).value];
    addFlight(plan());
    const second = double.sheet('Trip sheet 2');
    expect(second.cell(rows.field, 2).value).toBe('Tansy Ridge');
    for (const [row, column] of [
      [rows.field, 3],
      [rows.takeoffTime, 2],
      [rows.runwayName, 2],
      [rows.metars.first, 1],
      [rows.tafs.last, 1],
    ] as const)
      expect([first.cell(row, column).value !== '', second.cell(row, column).value], `${row}-${column}`).toEqual([true, '']);
    expect([second.cell(rows.pilot, 2).value, second.cell(rows.reserve, 2).value]).toEqual(['A. Invented', 45]);
    expect(double.sheet('Trip working 2').cell(1, 1).value).toBe(mark);
    expect(second.cell(rows.reserve, 2).validation).toBe(first.cell(rows.reserve, 2).validation);
    expect(fuelCell(double, 'Weight and balance 2').validation).not.toBeNull();
  });

  it('is listed below the first, by its own ranges, and a third below it', () => {
    const double = inserted();
    addFlight(plan());
    const day = double.sheet('Flights of the day');
    const at = (index: number, column: number) => day.cell(flightList.first + index, flightsFrom + column);
    expect([at(1, 0).value, at(1, 1).formula]).toEqual(['Trip sheet 2', '=IFERROR(VLOOKUP("from";flight_told_2;2;FALSE)&"";"")']);
    double.document.setActiveSheet(double.sheet('Trip sheet 2'));
    double.sheet('Trip sheet 2').cell(rows.field, 3).value = 'Marrowfield';
    expect(addFlight(plan()).copies).toEqual(copies(3));
    expect([at(2, 0).value, at(2, 8).formula]).toEqual(['Trip sheet 3', '=IFERROR(trip_verdict_3&"";"")']);
    expect(double.sheet('Trip sheet 3').cell(rows.beforeTo, 2).formula).toContain('flight_told_2');
    double.document.setActiveSheet(double.sheet('Trip sheet'));
    expect(plan).toThrow('a flight stands after that of "Trip sheet"');
  });

  it('takes everything back where a step fails, whichever it is', () => {
    const whole = inserted();
    const wanted = plan();
    const counted = whole.recorder.count('document');
    addFlight(wanted);
    const steps = whole.recorder.count('document') - counted;
    for (const part of [3, 2, 1.5, 1.02]) {
      const double = inserted();
      const given = plan();
      const before = documentOf(double);
      double.recorder.failAt = double.recorder.count('document') + Math.floor(steps / part);
      expect(() => addFlight(given)).toThrow('No flight was added, because Google Sheets refused a step; everything is as it was.');
      expect(documentOf(double)).toEqual(before);
    }
    console.log(`a flight: ${steps} calls that read or change the document`);
  });

  it('refuses a trip that is gone', () => {
    inserted();
    expect(() => addFlight({ ...plan(), sheet: 'Trip sheet 9' })).toThrow('no sheet "Trip sheet 9"');
  });
});
