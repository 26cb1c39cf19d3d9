// Published reports and forecasts whose answer is no single cell: times of changes, ranges on runways, what is refused.
import { describe, expect, it } from 'vitest';
import { readMetar } from '../../../core/air/report/metar';
import { call, sentenceOf } from '../../support/call';

describe('ICAO Annex 3, as the example files of WMO give it', () => {
  it('A3-1: runway visual range, and a trend with its times', () => {
    const { observed, trends } = readMetar(
      'METAR YUDO 221630Z 24004MPS 0600 R12/1000U DZ FG SCT010 OVC020 17/16 Q1018 BECMG TL1700 0800 FG BECMG AT1800 9999 NSW',
    );
    expect(observed.runwayRanges).toEqual([{ runway: '12', metres: 1000, orMore: false }]);
    expect(trends).toMatchObject([
      { kind: 'BECOMING', fromClock: undefined, conditions: { visibility: { metres: 800 }, weather: ['FG'] } },
      { kind: 'BECOMING', fromClock: 1080, conditions: { visibility: { metres: 10_000 }, weather: [] } },
    ]);
  });

  it('A3-2: minimum visibility to the north-east, and a trend', () => {
    const { observed, trends } = readMetar(
      'SPECI YUDO 151115Z 05025G37KT 3000 1200NE +TSRA BKN005CB 25/22 Q1008 TEMPO TL1200 0600 BECMG AT1200 8000 NSW NSC',
    );
    expect(observed.directional).toEqual([{ metres: 1200, orMore: false, towards: 'NE' }]);
    expect(trends).toMatchObject([
      { kind: 'TEMPORARY', conditions: { visibility: { metres: 600 } } },
      { kind: 'BECOMING', fromClock: 720, conditions: { visibility: { metres: 8000 }, weather: [], clouds: [] } },
    ]);
  });

  it('A5-1: the times of its groups', () => {
    const rows = call(
      'TAF_READ',
      'TAF YUDO 151800Z 1600/1618 13005MPS 9000 BKN020 BECMG 1606/1608 SCT015CB BKN020\n TEMPO 1608/1612 17006G12MPS 1000 TSRA SCT010CB BKN020 FM161230 15004MPS 9999 BKN020 ',
    ) as unknown[][];
    expect(rows.map((row) => row.slice(0, 3))).toEqual([
      ['FROM', '160000Z', '161230Z'],
      ['BECMG', '160600Z', '160800Z'],
      ['TEMPO', '160800Z', '161200Z'],
      ['FROM', '161230Z', '161800Z'],
    ]);
    expect(rows.map((row) => row[9])).toEqual(['BKN 2,000 ft', 'SCT 1,500 ft CB, BKN 2,000 ft', 'SCT 1,000 ft CB, BKN 2,000 ft', 'BKN 2,000 ft']);
    expect(rows.map((row) => row[11])).toEqual(['', '', '', '']);
  });

  it('A5-2, and the reports that are nil, say nothing and are refused', () => {
    expect(sentenceOf('TAF_READ', 'TAF AMD YUDO 161500Z 1600/1618 CNL')).toContain('which is cancelled (CNL)');
    expect(sentenceOf('TAF_READ', 'TAF YUDO 160000Z NIL')).toContain('which forecasts nothing (NIL)');
    expect(sentenceOf('METAR_WEATHER', 'METAR YUDO 221630Z NIL')).toContain('which reports nothing');
  });
});

describe('FAA AIM 7-1', () => {
  it('METAR: runway visual range in feet, and less than a bound', () => {
    const ranges = (group: string) => readMetar(`ABCD 011955Z 13008KT 1/2SM ${group} FG VV002 12/12 A2992`).observed.runwayRanges;
    // 1,200 ft are 365.76 m exactly.
    expect(ranges('R32L/1200FT')).toEqual([{ runway: '32L', metres: expect.closeTo(365.76, 9), orMore: false }]);
    expect(ranges('R27R/M1000V4000FT')).toEqual([{ runway: '27R', metres: 0, orMore: false }]);
  });

  it('TAF: validity from 18Z on the 9th to 24Z on the 10th, and FM100000 is 0000Z on the 10th', () => {
    const rows = call('TAF_READ', 'TAF KPIT 091730Z 0918/1024 15005KT 5SM HZ FEW020 WS010/31022KT FM100000 27008KT P6SM SKC') as unknown[][];
    expect(rows.map((row) => row.slice(0, 3))).toEqual([
      ['FROM', '091800Z', '100000Z'],
      ['FROM', '100000Z', '102400Z'],
    ]);
    expect(rows[0]?.[10]).toBe('WS010/31022KT');
  });

  it('TAF: PROB40 2221/2302 is a chance between 2100Z and 0200Z', () => {
    const rows = call('TAF_READ', 'TAF ABCD 221730Z 2218/2318 27008KT P6SM SKC PROB40 2221/2302 1/2SM +TSRA') as unknown[][];
    expect(rows[1]?.slice(0, 9)).toEqual(['PROB40', '222100Z', '230200Z', '', '', '', 804, '', 'thunderstorm with heavy rain (+TSRA)']);
  });

  it.each(['AMD NOT SKED', 'AMD NOT SKED AFT 120200', 'AMD NOT SKED TIL 171200Z', 'AMD NOT SKED 2502/2512', 'AMD LTD TO CLD VIS AND WIND'])(
    'TAF: passes over %s at its end',
    (ending) => expect((call('TAF_READ', `TAF ABCD 221730Z 2218/2318 27008KT P6SM SKC ${ending}`) as unknown[][])[0]?.[11]).toBe(''),
  );

  it('TAF: passes over no more than that', () => {
    expect((call('TAF_READ', 'TAF ABCD 221730Z 2218/2318 27008KT P6SM SKC AMD NOT SKED OVC002') as unknown[][])[0]?.[11]).toBe('AMD NOT SKED');
  });
});

describe('reports as printed on public pages that explain the code', () => {
  // Status R for the texts; the pages do not decode them, so it is only asked that nothing of them is left unread.
  it.each([
    'KMEM 230853Z AUTO 18014G18KT 10SM CLR 16/M02 A3008 RMK AO2 SLP117 T01561022 TSNO $',
    'KLAX 161550Z COR 11004KT 2 1/2SM HZ BKN011 BKN015 19/16 A2993 RMK AO2 SLP134 VIS SW-NW 1 1/2 FG BNK SW-NW T01890156',
    'KEWR 160128Z 18008KT 2 1/2SM R04R/4500VP6000FT RA BR SCT008 BKN022 OVC038 22/21 A3001 RMK AO2 RAB20E51 SCT008 V BKN P0008',
    'KGTF 170322Z 33014KT 1 3/4SM -SN BR OVC005 A2991 RMK AO2 RAE17SNB17 P0004',
    'KABQ 100156Z 32010KT 280V340 10SM TS FEW033 BKN075CB OVC100 19/14 A2999 RMK AO2 TSB09RAB09E56 SLP085',
    'SVVA 171100Z 00000KT 9999 FEW016 BKN250 21/19 Q1013 NOSIG',
    'EBAW 021220Z 07008KT 7000 SCT011 BKN035 M06/M09 Q1008 R11/490294 TEMPO 2500 -SN BR BKN010=',
    'EHAM 021225Z 10007KT 4500 -SN FEW010 SCT012 BKN018 M06/M08 Q1010 R36R/1///95 NOSIG=',
  ])('%s is read whole', (text) => {
    const { observed, trends = [] } = readMetar(text);
    expect([...observed.unread, ...trends.flatMap(({ conditions }) => conditions.unread)]).toEqual([]);
  });
});
