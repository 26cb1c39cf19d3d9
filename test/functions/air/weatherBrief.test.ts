// The weather of a trip, judged: each case with its word and the reason that comes first.
import { describe, expect, it } from 'vitest';
import { answer, call, day, sentenceOf } from '../../support/call';

const limits = [
  ['minimum ceiling', 1500],
  ['minimum visibility', 5000],
  ['maximum crosswind', 12],
  ['maximum gust spread', 10],
  ['maximum tailwind', 5],
];

interface Case {
  station?: string;
  metar?: string;
  taf?: string;
  date?: string;
  time?: string;
  role?: string;
  limits?: unknown[][];
  asOf?: string;
  runway?: number | string;
}

const brief = (given: Case) =>
  answer(
    'WEATHER_BRIEF',
    given.station ?? 'ZZXA',
    given.metar ?? '',
    given.taf ?? '',
    given.date === '' ? '' : day(given.date ?? '2026-11-28'),
    given.time ?? '1430Z',
    given.role ?? 'departure',
    given.limits ?? limits,
    given.asOf === undefined ? '' : day(given.asOf),
    given.runway ?? '',
  );

/** A report with these groups in place of clouds, wind or visibility as they stand. */
const report = (groups: string, wind = '22012KT', visibility = '9999', clouds = 'FEW040'): string =>
  `METAR ZZXA 281350Z ${wind} ${visibility} ${clouds} 18/09 Q1009 ${groups}`.trim();

function expectFirst(given: Case, verdict: string, reason: string): void {
  const got = brief(given);
  expect([got.verdict, String(got.reason).split('; ')[0]]).toEqual([verdict, reason]);
}

describe('a report', () => {
  it.each<[string, string, string]>([
    [report(''), 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    [report('', '00000KT', '9000', 'BKN015'), 'OK', 'within your limits: calm, visibility 9,000 m, ceiling 1,500 ft'],
    [report('', '22012KT', 'CAVOK', ''), 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    [report('-RA', '22012KT', '5000'), 'OK', 'within your limits: wind 220 at 12 kt, visibility 5,000 m, no ceiling'],
    [report('', '04012KT', '0200', 'FG VV001'), 'NO', 'ceiling 100 ft, below your minimum of 1,500 ft'],
    [report('', '22012KT', '9999', 'BKN014'), 'NO', 'ceiling 1,400 ft, below your minimum of 1,500 ft'],
    [report('', '22012KT', '9999', 'SCT002 OVC020'), 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, ceiling 2,000 ft'],
    [report('', '22012KT', '4900'), 'NO', 'visibility 4,900 m, below your minimum of 5,000 m'],
    [report('', '22012KT', '3SM'), 'NO', 'visibility 4,828 m, below your minimum of 5,000 m'],
    [report('', '22012KT', 'M1/4SM'), 'NO', 'visibility 0 m, below your minimum of 5,000 m'],
    [report('', '22012KT', '9999 3000SW'), 'CHECK', 'visibility 3,000 m to the SW, below your minimum of 5,000 m'],
    [report('', '22012KT', '5000 R27/0600N'), 'CHECK', 'runway visual range 600 m on runway 27, below your minimum visibility of 5,000 m'],
    [report('', '22012G23KT'), 'NO', 'gusts 11 kt above the wind, more than your maximum of 10 kt'],
    [report('', '22012G22KT'), 'OK', 'within your limits: wind 220 at 12 gusting 22 kt, visibility 10,000 m or more, no ceiling'],
    [report('TSRA'), 'NO', 'thunderstorm with rain (TSRA)'],
    [report('VCTS'), 'CHECK', 'thunderstorm in the vicinity (VCTS)'],
    [report('-FZDZ'), 'NO', 'light freezing drizzle (-FZDZ)'],
    [report('FZRASN'), 'NO', 'freezing rain and snow (FZRASN)'],
    [report('SHGR'), 'NO', 'hail showers (SHGR)'],
    [report('PL'), 'NO', 'ice pellets (PL)'],
    [report('+FC'), 'NO', 'tornado or waterspout (+FC)'],
    [report('VCFC'), 'NO', 'funnel cloud in the vicinity (VCFC)'],
    [report('SQ'), 'NO', 'squall (SQ)'],
    [report('VA'), 'NO', 'volcanic ash (VA)'],
    [report('+DS'), 'NO', 'heavy duststorm (+DS)'],
    [report('+SHRA'), 'CHECK', 'heavy rain showers (+SHRA)'],
    [report('-SN'), 'CHECK', 'light snow (-SN)'],
    [report('BCFG'), 'CHECK', 'patches of fog (BCFG)'],
    [report('FZFG'), 'CHECK', 'freezing fog (FZFG)'],
    [report('BLSN'), 'CHECK', 'blowing snow (BLSN)'],
    [report('VCSH'), 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    [report('RETS'), 'CHECK', 'in the past hour thunderstorm (TS)'],
    [report('RERA'), 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    [report('', '22012KT', '9999', 'FEW040CB'), 'CHECK', 'cumulonimbus (CB)'],
    [report('', '22012KT', '9999', 'FEW040 //////TCU'), 'CHECK', 'towering cumulus (TCU)'],
    [report('WS R21'), 'CHECK', 'wind shear (WS R21)'],
    [report('WS ALL RWY'), 'CHECK', 'wind shear (WS ALL RWY)'],
    [report('R21/490535'), 'CHECK', 'runway 21 dry snow on 51 to 100 %, 5 mm deep, friction coefficient 0.35 (R21/490535)'],
    [report('R21/490525'), 'NO', 'runway 21 dry snow on 51 to 100 %, 5 mm deep, friction coefficient 0.25 (R21/490525)'],
    [report('R21/290095'), 'CHECK', 'runway 21 wet on 51 to 100 %, less than 1 mm deep, braking good (R21/290095)'],
    [report('R21/190095'), 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    [report('R21/CLRD20'), 'NO', 'runway 21 dry, friction coefficient 0.20 (R21/CLRD20)'],
    [report('R21/CLRD//'), 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    [report('R/SNOCLO'), 'NO', 'all runways closed by snow, slush or ice (R/SNOCLO)'],
    [report('R21/7999//'), 'NO', 'runway 21 closed by snow, slush or ice (R21/7999//)'],
    [report('TEMPO 0300 FG'), 'NO', 'METAR trend TEMPO: visibility 300 m, below your minimum of 5,000 m'],
    [report('NOSIG'), 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    [report('TEMPO FM1500 0300 FG'), 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
  ])('%s is %s: %s', (metar, verdict, reason) => expectFirst({ metar }, verdict, reason));

  it.each<[string, string]>([
    ['METAR ZZXA 281350Z AUTO /////KT 9999 FEW040 18/09 Q1009', 'wind is missing in the report'],
    ['METAR ZZXA 281350Z AUTO ///12KT 9999 FEW040 18/09 Q1009', 'wind is missing in the report'],
    ['METAR ZZXA 281350Z AUTO 22012KT //// FEW040 18/09 Q1009', 'visibility is missing in the report'],
    ['METAR ZZXA 281350Z AUTO 22012KT 9999 // FEW040 18/09 Q1009', 'weather is missing in the report'],
    ['METAR ZZXA 281350Z AUTO 22012KT 9999 18/09 Q1009', 'cloud is missing in the report'],
    ['METAR ZZXA 281350Z AUTO 22012KT 9999 ////// 18/09 Q1009', 'a cloud layer has no amount or no height, so the ceiling is not known'],
    ['METAR ZZXA 281350Z AUTO 22012KT 9999 BKN/// 18/09 Q1009', 'a cloud layer has no amount or no height, so the ceiling is not known'],
    ['METAR ZZXA 281350Z AUTO 22012KT 9999 VV/// 18/09 Q1009', 'a cloud layer has no amount or no height, so the ceiling is not known'],
    ['METAR ZZXA 281350Z 22012KT 9999 BKNO15 18/09 Q1009', 'cannot be read: BKNO15'],
    ['METAR ZZXA 281350Z 22012KT 9999 FEW040 TSR 18/09 Q1009', 'cannot be read: TSR'],
    ['METAR ZZXA 281350Z 22012KT 9999 FEW040 18/09 Q1009 RNK AO2', 'cannot be read: RNK AO2'],
    ['METAR ZZXA 281350Z 22012KT 9999 FEW040 18/09 Q1009 TEMPO 0F00', 'cannot be read: 0F00'],
    ['METAR ZZXA 281350Z NIL', 'the text given as METAR reports nothing'],
    ['TAF ZZXA 281100Z 2812/2912 CAVOK', 'the text given as METAR is a forecast'],
    ['fine, says the tower', 'the text given as METAR does not begin as a report does'],
    ['', 'no report'],
  ])('%s is UNKNOWN: %s', (metar, reason) => expectFirst({ metar }, 'UNKNOWN', reason));

  it('of another station is CHECK, and of any where the field has none', () => {
    expectFirst({ metar: report(''), station: 'ZZXB' }, 'CHECK', 'METAR is of ZZXA, not of ZZXB');
    const nobodys = 'is of ZZXA, and the field has no station to compare it with: give the one whose reports it goes by';
    expectFirst({ metar: report(''), station: ' ' }, 'CHECK', `METAR ${nobodys}`);
    expect(brief({ metar: report(''), station: 'zzxa' }).verdict).toBe('OK');
  });

  it('gives its own numbers beside the verdict', () => {
    expect(brief({ metar: 'SPECI ZZXA 281350Z VRB16G24KT 3/4SM -SHRA SCT008 BKN012CB M01/M03 A2992' })).toMatchObject({
      report_time_z: '281350Z',
      age_minutes: 40,
      wind_from_true: '',
      wind_kt: 16,
      gust_kt: 24,
      variable_from_true: 0,
      variable_to_true: 360,
      temperature_c: -1,
      dew_point_c: -3,
      visibility_m: 1207,
      ceiling_ft: 1200,
      weather: 'light rain showers (-SHRA)',
    });
    expect(brief({ metar: report('', '22012KT 180V260') })).toMatchObject({ wind_from_true: 220, variable_from_true: 180, variable_to_true: 260 });
  });
});

describe('the age of a report', () => {
  it.each<[string, Case, string, string]>([
    ['90 minutes', { time: '1520Z' }, 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    ['91 minutes', { time: '1521Z' }, 'CHECK', 'METAR is 91 minutes old at the departure time, more than 90 minutes'],
    ['of later', { time: '1340Z' }, 'CHECK', 'METAR is of 10 minutes after the departure time'],
    ['a day', { date: '2026-11-29', time: '1350Z' }, 'CHECK', 'METAR is 1,440 minutes old at the departure time, more than 90 minutes'],
    ['a month, by as_of', { date: '2026-12-28', asOf: '2026-11-28' }, 'CHECK', 'METAR is 30 days old at the departure time, more than 90 minutes'],
    [
      'a month, by as_of, and foul',
      { metar: report('', '22012KT', '0200', 'VV001'), date: '2026-12-28', asOf: '2026-11-28' },
      'CHECK',
      'METAR is 30 days old at the departure time, more than 90 minutes',
    ],
    ['a trip of today', { asOf: '2026-11-28' }, 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    ['no time', { time: '' }, 'UNKNOWN', 'no date and time of use'],
    ['no date', { date: '' }, 'UNKNOWN', 'no date and time of use'],
    ['arrival soon', { role: 'arrival', time: '1520Z' }, 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    ['arrival later', { role: 'arrival', time: '1530Z' }, 'CHECK', 'no forecast (TAF) for the arrival time, when the METAR is 100 minutes old'],
    ['alternate later', { role: 'alternate', time: '1730Z' }, 'CHECK', 'no forecast (TAF) for the alternate time, when the METAR is 220 minutes old'],
  ])('%s', (_, given, verdict, reason) => expectFirst({ metar: report(''), ...given }, verdict, reason));

  it('a trend serves an arrival for two hours', () => {
    expect(brief({ metar: report('NOSIG'), role: 'arrival', time: '1550Z' }).verdict).toBe('OK');
    expect(brief({ metar: report('NOSIG'), role: 'arrival', time: '1551Z' }).verdict).toBe('CHECK');
  });

  it.each([
    ['METAR ZZXA 302350Z 22012KT CAVOK 18/09 Q1009', '2026-12-01', '0030Z', 40],
    ['METAR ZZXA 312350Z 22012KT CAVOK 18/09 Q1009', '2027-01-01', '0030Z', 40],
    ['METAR ZZXA 282350Z 22012KT CAVOK 18/09 Q1009', '2027-03-01', '0030Z', 40],
    ['METAR ZZXA 292350Z 22012KT CAVOK 18/09 Q1009', '2028-03-01', '0030Z', 40],
  ])('%s for %s %s is %i minutes old', (metar, date, time, age) =>
    expect(brief({ metar, date, time })).toMatchObject({ verdict: 'OK', age_minutes: age }),
  );
});

describe('a forecast', () => {
  const metar = report('');
  const arrival = (taf: string, more: Case = {}): Case => ({ metar, taf: `TAF ZZXA 281100Z ${taf}`, role: 'arrival', time: '1800Z', ...more });

  it.each<[string, string, string]>([
    ['2812/2912 22012KT CAVOK', 'OK', 'within your limits: forecast wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    [
      '2812/2912 22012KT CAVOK BECMG 2820/2822 0400 FG',
      'OK',
      'within your limits: forecast wind 220 at 12 kt, visibility 10,000 m or more, no ceiling',
    ],
    ['2812/2912 22012KT CAVOK BECMG 2819/2821 0400 FG', 'NO', 'TAF BECMG 2819/2821: visibility 400 m, below your minimum of 5,000 m'],
    [
      '2812/2912 22012KT 0400 FG VV002 BECMG 2814/2817 9999 NSW NSC',
      'OK',
      'within your limits: forecast wind 220 at 12 kt, visibility 10,000 m or more, no ceiling',
    ],
    ['2812/2912 22012KT 0400 FG VV002 BECMG 2816/2818 9999 NSW NSC', 'NO', 'TAF: ceiling 200 ft, below your minimum of 1,500 ft'],
    ['2812/2912 22012KT 0400 FG VV002 BECMG 2814/2816 9999 NSC', 'CHECK', 'TAF: fog (FG)'],
    [
      '2812/2912 22012KT 0400 FG VV002 FM281600 22010KT 9999 NSC',
      'OK',
      'within your limits: forecast wind 220 at 10 kt, visibility 10,000 m or more, no ceiling',
    ],
    ['2812/2912 22012KT CAVOK TEMPO 2818/2820 BKN008', 'NO', 'TAF TEMPO 2818/2820: ceiling 800 ft, below your minimum of 1,500 ft'],
    [
      '2812/2912 22012KT CAVOK TEMPO 2813/2817 BKN008',
      'OK',
      'within your limits: forecast wind 220 at 12 kt, visibility 10,000 m or more, no ceiling',
    ],
    ['2812/2912 22012KT CAVOK TEMPO 2813/2818 BKN008', 'NO', 'TAF TEMPO 2813/2818: ceiling 800 ft, below your minimum of 1,500 ft'],
    ['2812/2912 22012KT CAVOK PROB30 2818/2820 0300 FG', 'CHECK', 'TAF PROB30 2818/2820: visibility 300 m, below your minimum of 5,000 m'],
    ['2812/2912 22012KT CAVOK PROB40 TEMPO 2818/2820 TSRA', 'CHECK', 'TAF PROB40 TEMPO 2818/2820: thunderstorm with rain (TSRA)'],
    ['2812/2912 22012KT CAVOK TEMPO 2818/2820 TSRA', 'NO', 'TAF TEMPO 2818/2820: thunderstorm with rain (TSRA)'],
    ['2812/2912 22012KT CAVOK TEMPO 2818/2820 22015G30KT', 'NO', 'TAF TEMPO 2818/2820: gusts 15 kt above the wind, more than your maximum of 10 kt'],
    ['2812/2912 22012KT 9999 NSC WS020/24045KT', 'CHECK', 'TAF: wind shear (WS020/24045KT)'],
    ['2812/2818 22012KT CAVOK', 'CHECK', 'TAF ends at 281800Z, less than an hour after the arrival time'],
    ['2812/2817 22012KT CAVOK', 'UNKNOWN', 'TAF is for 281200Z to 281700Z, not for the arrival time 281800Z'],
    ['2819/2912 22012KT CAVOK', 'UNKNOWN', 'TAF is for 281900Z to 291200Z, not for the arrival time 281800Z'],
    ['2812/2912 22012KT 9999', 'UNKNOWN', 'cloud is missing in the forecast'],
    ['2812/2912 22012KT CAVOK TEMPQ 2818/2820 0300 FG', 'UNKNOWN', 'TAF: cannot be read: TEMPQ 2818/2820 0300'],
    ['2812/2912 22012KT CAVOK TEMPO 2818 0300 FG', 'UNKNOWN', 'TAF: cannot be read: TEMPO 2818 0300 FG'],
    ['2812/2912 22012KT CAVOK TEMPO 2910/2914 0300 FG', 'UNKNOWN', 'TAF: cannot be read: TEMPO 2910/2914'],
    ['NIL', 'UNKNOWN', 'the text given as TAF forecasts nothing (NIL)'],
    ['2812/2912 CNL', 'UNKNOWN', 'the text given as TAF is cancelled (CNL)'],
    ['281218 22012KT CAVOK', 'UNKNOWN', 'the text given as TAF has no validity that can be read, such as 0118/0224'],
  ])('%s for 1800Z is %s: %s', (taf, verdict, reason) => expectFirst(arrival(taf), verdict, reason));

  it('of another station, of last month, or of later than its use', () => {
    expectFirst(arrival('2812/2912 22012KT CAVOK', { taf: 'TAF ZZXB 281100Z 2812/2912 22012KT CAVOK' }), 'CHECK', 'TAF is of ZZXB, not of ZZXA');
    expectFirst(
      arrival('2812/2912 22012KT CAVOK', { date: '2026-12-28', asOf: '2026-11-28' }),
      'UNKNOWN',
      'TAF is for 281200Z to 291200Z, not for the arrival time 281800Z',
    );
    expectFirst(arrival('', { taf: 'TAF ZZXA 281900Z 2818/2918 22012KT CAVOK' }), 'CHECK', 'TAF is of 60 minutes after the arrival time');
  });

  it('counts over a report of hours before, whose faults are then worth a look', () => {
    const foggy = report('', '22012KT', '0400', 'FG VV002');
    expectFirst(arrival('2812/2912 22012KT CAVOK', { metar: foggy }), 'CHECK', 'ceiling 200 ft, below your minimum of 1,500 ft');
    expectFirst({ metar: foggy, role: 'arrival', time: '1800Z' }, 'NO', 'ceiling 200 ft, below your minimum of 1,500 ft');
  });

  it('alone serves an alternate, makes an arrival CHECK, and is not enough for a departure', () => {
    const taf = 'TAF ZZXA 281100Z 2812/2912 22012KT CAVOK';
    expectFirst(
      { taf, role: 'alternate', time: '1800Z' },
      'OK',
      'within your limits: forecast wind 220 at 12 kt, visibility 10,000 m or more, no ceiling',
    );
    expectFirst({ taf, role: 'destination', time: '1800Z' }, 'CHECK', 'no report (METAR), judged by the forecast alone');
    expectFirst({ taf, time: '1800Z' }, 'UNKNOWN', 'no report');
  });

  it('of a departure with a report of the hour counts for its own time', () => {
    const taf = 'TAF ZZXA 281100Z 2812/2912 22012KT 9999 NSC TEMPO 2812/2814 0400 FG';
    expect(brief({ metar, taf, time: '1430Z' }).verdict).toBe('OK');
    expectFirst(
      { metar, taf: taf.replace('2812/2814', '2814/2816'), time: '1430Z' },
      'NO',
      'TAF TEMPO 2814/2816: visibility 400 m, below your minimum of 5,000 m',
    );
  });

  it('that begins after a departure, or a short flight, whose report is of the hour is not wanted yet', () => {
    const taf = 'TAF ZZXA 281100Z 2815/2915 22012KT CAVOK';
    expect(brief({ metar, taf, time: '1430Z' }).verdict).toBe('OK');
    expect(brief({ metar, taf, time: '1430Z', role: 'arrival' }).verdict).toBe('OK');
    expectFirst(
      { metar, taf: taf.replace('CAVOK', '0400 FG VV002'), time: '1430Z', role: 'arrival' },
      'NO',
      'TAF: ceiling 200 ft, below your minimum of 1,500 ft',
    );
    expectFirst(
      { metar, taf: 'TAF ZZXA 280500Z 2806/2814 22012KT CAVOK', time: '1430Z' },
      'CHECK',
      'TAF is for 280600Z to 281400Z, not for the departure time 281430Z',
    );
  });

  it('without the word TAF is one all the same', () => {
    expect(brief({ metar, taf: 'ZZXA 281100Z 2812/2912 22012KT CAVOK', role: 'arrival', time: '1800Z' }).verdict).toBe('OK');
    expectFirst({ metar, taf: metar, role: 'arrival', time: '1800Z' }, 'UNKNOWN', 'the text given as TAF does not begin with TAF and a station');
  });

  it('gives the worst of its groups beside the verdict', () => {
    expect(brief(arrival('2812/2912 22012KT 9999 BKN030 TEMPO 2817/2819 VRB20G35KT 2000 +TSRA BKN010CB'))).toMatchObject({
      forecast_wind_from_true: '',
      forecast_wind_kt: 20,
      forecast_gust_kt: 35,
      forecast_variable_from_true: 0,
      forecast_variable_to_true: 360,
      forecast_visibility_m: 2000,
      forecast_ceiling_ft: 1000,
      forecast_weather: 'thunderstorm with heavy rain (+TSRA)',
    });
  });
});

describe('one wrong key', () => {
  const keys = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789/+- ='];
  /** Every text that one key left out, put in, changed, or struck too early makes of this one. */
  const slips = (text: string): string[] =>
    [...text].flatMap((_, at) => [
      text.slice(0, at) + text.slice(at + 1),
      text.slice(0, at) + text.slice(at + 1, at + 2) + text.slice(at, at + 1) + text.slice(at + 2),
      ...keys.flatMap((key) => [text.slice(0, at) + key + text.slice(at), text.slice(0, at) + key + text.slice(at + 1)]),
    ]);

  it.each([
    report('', '22012KT', '0300 FG', 'VV001'),
    report('NOSIG', '22012G35KT', '1 1/2SM +TSRA', 'BKN010CB'),
    report('TEMPO 0300 FG', '22012KT', '9999', 'NSC'),
  ])('never makes %s OK', (metar) => expect(slips(metar).filter((slip) => brief({ metar: slip }).verdict === 'OK')).toEqual([]));

  it.each([
    'TAF ZZXA 281100Z 2812/2912 22012KT CAVOK TEMPO 2818/2820 0300 FG VV001',
    'TAF ZZXA 281100Z 2812/2912 22012KT 9999 NSC FM281700 22012KT 0300 FG VV001 BECMG 2822/2824 9999 NSW NSC',
  ])('never makes %s OK', (taf) =>
    expect(slips(taf).filter((slip) => brief({ metar: report(''), taf: slip, role: 'arrival', time: '1830Z' }).verdict === 'OK')).toEqual([]),
  );
});

describe('the wind across a runway', () => {
  it.each<[string, number | string, string, string]>([
    ['22012KT', 220, 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    ['22013KT', 310, 'NO', 'crosswind 13 kt, more than your maximum of 12 kt'],
    ['22012G22KT', 260, 'NO', 'crosswind 14.2 kt, more than your maximum of 12 kt'],
    ['22012KT', 40, 'NO', 'tailwind 12 kt, more than your maximum of 5 kt'],
    ['22012KT 140V300', 220, 'OK', 'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling'],
    ['22013KT 140V300', 220, 'NO', 'crosswind 12.9 kt, more than your maximum of 12 kt'],
    ['VRB06KT', 220, 'NO', 'tailwind 6 kt, more than your maximum of 5 kt'],
    ['VRB05KT', 220, 'OK', 'within your limits: wind variable at 5 kt, visibility 10,000 m or more, no ceiling'],
  ])('%s on %s is %s', (wind, runway, verdict, reason) => expectFirst({ metar: report('', wind), runway }, verdict, reason));
});

describe("the pilot's limits", () => {
  const metar = report('', '22012KT', '8000', 'BKN010');
  const only = (...rows: unknown[][]): unknown[][] => rows;

  it('in other units', () => {
    const rows = only(['minimum ceiling', 300, 'm'], ['minimum visibility', 5, 'SM'], ['maximum gust spread', 10, 'kt']);
    expectFirst({ metar, limits: rows }, 'NO', 'visibility 8,000 m, below your minimum of 8,047 m');
    expect(
      brief({ metar, limits: only(['minimum ceiling', 300, 'm'], ['Minimum Visibility', '8', 'km'], ['maximum gust spread', 10, '']) }).verdict,
    ).toBe('OK');
  });

  it('are UNKNOWN where one is missing', () => {
    expectFirst(
      { metar, limits: only(['minimum ceiling', ''], ['minimum visibility', 5000], ['maximum gust spread', 10]) },
      'UNKNOWN',
      'no minimum ceiling among your limits',
    );
    expectFirst(
      {
        metar,
        runway: 220,
        limits: only(['minimum ceiling', 500], ['minimum visibility', 5000], ['maximum gust spread', 10], ['maximum crosswind', 12]),
      },
      'UNKNOWN',
      'no maximum tailwind among your limits',
    );
  });

  it('beyond what 9999 can show are CHECK', () => {
    const rows = only(['minimum ceiling', 500], ['minimum visibility', 12_000], ['maximum gust spread', 10]);
    expectFirst({ metar: report(''), limits: rows }, 'CHECK', 'visibility 10,000 m or more, which may be below your minimum of 12,000 m');
  });

  it('of the wind as a whole', () => {
    expectFirst(
      { metar: report('', '22025G32KT'), limits: [...limits, ['maximum wind', 30]] },
      'NO',
      'wind 32 kt, gusts included, more than your maximum of 30 kt',
    );
  });

  it.each<[unknown[][], RegExp]>([
    [[['minimum cloud', 500]], /limits must be rows of a name \(minimum ceiling, .*; got "minimum cloud" \(row 1, column 1 of limits\)/],
    [[['minimum ceiling', -5]], /\(minimum ceiling 0 to 5,000 ft\); got -5 \(row 1, column 2 of limits\)/],
    [[['minimum visibility', 5, 'NM']], /\(minimum visibility in m, km, sm\); got "NM" \(row 1, column 3 of limits\)/],
    [[['minimum visibility', 'good']], /got "good"/],
    [
      [
        ['minimum ceiling', 500],
        ['minimum ceiling', 600],
      ],
      /each once; got a limit given twice/,
    ],
    [[['minimum ceiling']], /got a range of 1 row x 1 column/],
  ])('%j are refused', (rows, sentence) =>
    expect(sentenceOf('WEATHER_BRIEF', 'ZZXA', metar, '', day('2026-11-28'), '1430Z', 'departure', rows)).toMatch(sentence),
  );
});

describe('a whole trip in one call', () => {
  it('leaves a blank row blank, and a bad one spoils itself only', () => {
    const rows = call(
      'WEATHER_BRIEF',
      [['ZZXA'], ['ZZXB'], [''], ['ZZXC']],
      [[report('')], ['METAR ZZXB 281350Z 09008KT CAVOK 21/12 Q1007'], [''], [report('')]],
      [[''], ['TAF ZZXB 281100Z 2812/2912 09010KT CAVOK'], [''], ['']],
      [[day('2026-11-28')], [day('2026-11-28')], [''], ['soon']],
      [['1430Z'], ['1600Z'], [''], ['1430Z']],
      [['departure'], ['arrival'], [''], ['alternate']],
      limits,
    ) as unknown[][];
    expect(rows.map(([verdict]) => String(verdict).slice(0, 40))).toEqual(['OK', 'OK', '', 'WEATHER_BRIEF: date must be a date from ']);
    expect(rows[2]?.every((cell) => cell === '')).toBe(true);
  });

  it('a row without a role is not judged, unless there is a report in it', () => {
    const blank = call('WEATHER_BRIEF', 'ZZXA', '', '', day('2026-11-28'), '1430Z', '', limits) as unknown[][];
    expect(blank[0]?.every((cell) => cell === '')).toBe(true);
    expect(sentenceOf('WEATHER_BRIEF', 'ZZXA', report(''), '', day('2026-11-28'), '1430Z', '', limits)).toBe(
      'WEATHER_BRIEF: role must be one of departure, arrival, alternate; got a blank.',
    );
  });
});
