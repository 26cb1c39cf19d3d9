// Weather reports: what stays blank, what is refused with a sentence, and what trends and remarks must not change.
import { AltimeterUnit, parseMetar, SpeedUnit } from 'metar-taf-parser';
import { describe, expect, it } from 'vitest';
import { answer, sentenceOf } from '../../support/call';

const read = (text: string): Readonly<Record<string, unknown>> => answer('METAR_READ', text);

describe('METAR_READ', () => {
  it('leaves a variable wind without a direction (NWS METAR key: VRB at 6 kt or less)', () => {
    expect(read('ABCD 011955Z VRB05KT 9999 12/05 Q1013')).toMatchObject({ wind_from_true: '', wind_kt: 5, gust_kt: '' });
  });

  it.each([
    ['ABCD 011955Z /////KT 9999 12/05 Q1013', { wind_from_true: '', wind_kt: '', temperature_c: 12 }],
    ['ABCD 011955Z 22015KT 9999 ///// Q1013', { temperature_c: '', dew_point_c: '' }],
    ['ABCD 011955Z 22015KT 9999 12/// Q1013', { temperature_c: 12, dew_point_c: '' }],
    ['ABCD 011955Z 22015KT 9999 12/ Q1013', { temperature_c: 12, dew_point_c: '' }],
    ['ABCD 011955Z 22015KT 9999 XX/05 Q1013', { temperature_c: '' }],
    ['ABCD 011955Z 22015KT 9999 12/05 Q////', { altimeter_hpa: '' }],
    ['ABCD 011955Z AUTO 22015KT', { temperature_c: '', dew_point_c: '', altimeter_hpa: '', gust_kt: '' }],
  ])('leaves blank what %s does not say', (text, expected) => expect(read(text)).toMatchObject(expected));

  it.each([
    ['METAR ABCD 011955Z 22015KT 9999 M00/M01 Q0998=', { temperature_c: 0, dew_point_c: -1, altimeter_hpa: 998 }],
    ['SPECI COR ABCD 011955Z 36015KT CAVOK 12/05 Q1013', { station: 'ABCD', wind_from_true: 360 }],
    ['  abcd   011955z 22015kt\n9999 12/05 q1013 ', { wind_kt: 15, altimeter_hpa: 1013 }],
    ['ABCD 011955Z 22015KT 1 1/2SM R24L/1200FT BR OVC005 12/11 A2992', { temperature_c: 12, dew_point_c: 11 }],
    ['ABCD 011955Z 220100G115KT 9999 12/05 Q1013', { wind_kt: 100, gust_kt: 115 }],
    ['ABCD 011955Z 22037KMH 9999 12/05 Q1013', { wind_kt: expect.closeTo(37 / 1.852, 9) }],
    ['ABCD 011955Z 22015KT 9999 //////CB BKN///TCU 12/05 Q1013 W15/S3', { temperature_c: 12 }],
  ])('reads %s', (text, expected) => expect(read(text)).toMatchObject(expected));

  it('takes nothing from a trend or from remarks but the tenths of the same temperature', () => {
    expect(read('ABCD 011955Z 22015KT 9999 12/05 Q1013 TEMPO 25030G45KT 3000 TSRA')).toMatchObject({ wind_from_true: 220, wind_kt: 15, gust_kt: '' });
    expect(read('ABCD 011955Z 22015KT 9999 12/05 Q1013 BECMG 30025KT')).toMatchObject({ wind_kt: 15 });
    expect(read('ABCD 011955Z 22015KT 10SM 12/05 A2992 RMK PK WND 23041/1940 T02000150')).toMatchObject({ temperature_c: 12, dew_point_c: 5, gust_kt: '' });
    expect(read('ABCD 011955Z 22015KT 10SM ///// A2992 RMK T02000150')).toMatchObject({ temperature_c: '' });
  });

  it.each([
    'ABCD 011955Z 22015G27KT 180V250 9999 4000NE R24L/1200FT -SHRA BKN012 OVC030CB 12/05 Q1013',
    'ABCD 011955Z AUTO VRB02MPS 0400 R09/0350N FZFG VV001 M01/M01 Q1021',
    'ABCD 011955Z 00000KT CAVOK M00/M07 A2992',
    'ABCD 011955Z 22015KT 1 1/2SM 12/05 A2992 Q1013',
  ])('says of %s what the parser says that is given the whole of it, not only the groups wanted', (text) => {
    const { station, wind, temperature = NaN, dewPoint, altimeter } = parseMetar(text);
    const perKnot = wind?.unit === SpeedUnit.MetersPerSecond ? 3600 / 1852 : 1;
    const { wind_kt: knots, altimeter_hpa: pressure, ...rest } = read(text);
    // A missing direction or gust is blank; the library's minus zero is zero.
    expect(rest).toEqual({ station, day_time_z: '011955Z', wind_from_true: wind?.degrees ?? '', gust_kt: wind?.gust ?? '', temperature_c: temperature + 0, dew_point_c: dewPoint });
    expect(knots).toBeCloseTo((wind?.speed ?? NaN) * perKnot, 9);
    expect(pressure).toBeCloseTo((altimeter?.value ?? NaN) * (altimeter?.unit === AltimeterUnit.InHg ? 33.8638866667 : 1), 2);
  });

  it.each([
    ['garbage', 'which does not begin as a report does'],
    ['22015KT 9999 12/05 Q1013', 'which does not begin as a report does'],
    ['ABCD 22015KT 9999 12/05 Q1013', 'no day and time'],
    ['ABCD 321955Z 22015KT', 'no day and time'],
    ['ABCD 012460Z 22015KT', 'no day and time'],
    ['TAF ABCD 011730Z 0118/0224 22015KT 9999 SCT030', 'which is a forecast'],
    ['ABCD 011955Z NIL', 'which reports nothing'],
    ['ABCD 011955Z 22015KT 12/05 Q1013 ABCD 012055Z 30020KT 10/05 Q1014', 'more than one report'],
    ['ABCD 011955Z 22O15KT 9999 12/05 Q1013', 'cannot be read ("22O15KT")'],
    ['ABCD 011955Z 22015 9999 12/05 Q1013', 'cannot be read ("22015")'],
    ['ABCD 011955Z 22015 KT 9999 12/05 Q1013', 'cannot be read ("22015")'],
    ['ABCD 011955Z 22015G25 9999 12/05 Q1013', 'cannot be read ("22015G25")'],
    ['ABCD 011955Z VRB03 9999 12/05 Q1013', 'cannot be read ("VRB03")'],
    ['ABCD 011955Z 22015G15KT 9999 12/05 Q1013', 'cannot be read ("22015G15KT")'],
    ['ABCD 011955Z 00003KT 9999 12/05 Q1013', 'cannot be read ("00003KT")'],
    ['ABCD 011955Z 220P49MPS 9999 12/05 Q1013', 'cannot be read ("220P49MPS")'],
    ['ABCD 011955Z 37015KT 9999 12/05 Q1013', 'cannot be read ("37015KT")'],
    ['ABCD 011955Z 22015KT 23016KT 9999 12/05 Q1013', 'cannot be read ("23016KT")'],
    ['ABCD 011955Z 22015KT 9999 12/05 13/05 Q1013', 'cannot be read ("13/05")'],
    ['ABCD 011955Z 22015KT 9999 7/5 Q1013', 'cannot be read ("7/5")'],
    ['ABCD 011955Z 22015KT 9999 123/05 Q1013', 'cannot be read ("123/05")'],
    ['ABCD 011955Z 22015KT 9999 12/05 A29.92', 'cannot be read ("A29.92")'],
    ['ABCD 011955Z 22015KT 9999 12/05 Q101', 'cannot be read ("Q101")'],
    ['ABCD 011955Z 22015KT 9999 12/05 A0992', 'cannot be read ("A0992")'],
    ['ABCD 011955Z 22015KT 9999 05/12 Q1013', 'dew point above its temperature'],
  ])('refuses %s', (text, why) => {
    expect(sentenceOf('METAR_READ', text)).toMatch(/^METAR_READ: text must be one METAR or SPECI report, .*; got "/);
    expect(sentenceOf('METAR_READ', text)).toContain(why);
  });
});
