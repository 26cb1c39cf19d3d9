// Things that are honestly so: the trip must stay OK with them, or it cries wolf.
import { dataCard, field, inspection, metar, onCard, paper, plane, runway, seat, start, taf, tank, trip } from '../../support/tripCells';
import { forecast, forecastAlternate, reported, under, type Honest } from './slip';

const date = (iso: string) => ({ date: iso });
// Its two cards differ as they come.
const brindle = [
  ...start({ aircraftInUse: 'Brindle Two', keepsLedger: 'no' }),
  ...trip({ 'groundspeed.departure': 95, 'groundspeed.alternate': 92 }),
];
const noLog = [
  ...start({ keepsLog: 'no' }),
  ...trip({ landingsRecent: date('2027-01-20'), review: date('2027-06-30'), medical: date('2027-06-30'), inspections: date('2027-03-31') }),
];

export const honest: readonly Honest[] = [
  ['as it comes', []],
  [
    'the other runway in a wind for it',
    [...trip({ 'runwayName.departure': '03' }), ...reported('02008KT'), ...taf('departure', 'TAF ZZXA 251100Z 2512/2612 02008KT 9999 FEW040')],
  ],
  ['calm wind', reported('00000KT')],
  ['a light variable wind', [...reported('VRB03KT'), ...start({ takeoffFactor: 1.33 })]],
  ['a wind from behind within the limit', [...reported('04004KT'), ...start({ takeoffFactor: 1.33 })]],
  ['gusts within the limits', reported('21012G20KT')],
  ['a variable direction within the limits', reported('22010KT 190V250')],
  ['the alternate left out', trip({ 'field.alternate': '', 'runwayName.alternate': '' })],
  ['the hold switched off', trip({ judgeHold: 'no' })],
  ['the descent switched off', trip({ judgeDescent: 'no' })],
  ['both switched off, the card emptied', [...trip({ judgeHold: 'no', judgeDescent: 'no' }), ...onCard({ altitudeNow: '', 'hold.side': '' })]],
  ['the log not kept, with days typed', noLog],
  ['the log not kept, no days typed', start({ keepsLog: 'no' })],
  ['the ledger not kept, a day typed', [...start({ keepsLedger: 'no' }), ...trip({ data: date('2026-12-23') })]],
  ['the ledger not kept, no day typed', start({ keepsLedger: 'no' })],
  [
    'log and ledger not kept, hold and descent off',
    [...start({ keepsLog: 'no', keepsLedger: 'no' }), ...trip({ judgeHold: 'no', judgeDescent: 'no' })],
  ],
  ['a setting in inches typed as reported', trip({ 'altimeter.departure': 29.8 })],
  ['a report in inches', reported('22012KT', undefined, undefined, 'A2980')],
  ['values typed as reported', trip({ 'temperature.departure': 18, 'altimeter.departure': 1009, 'temperature.destination': 21 })],
  ['a temperature typed a degree from the report', trip({ 'temperature.departure': 19 })],
  ['a report of an automatic station', metar('departure', 'METAR ZZXA 251350Z AUTO 22012KT 9999 FEW040 18/09 Q1009')],
  ['a corrected report', metar('departure', 'METAR COR ZZXA 251350Z 22012KT 9999 FEW040 18/09 Q1009')],
  ['a special report', metar('departure', 'SPECI ZZXA 251405Z 22012KT 9999 FEW040 18/09 Q1009')],
  ['a report with its end mark', reported('22012KT', undefined, undefined, undefined, '=')],
  ['a report with NOSIG', reported('22012KT', undefined, undefined, undefined, ' NOSIG')],
  ['ten statute miles', under('10SM FEW040')],
  ['more than six statute miles', under('P6SM SCT040')],
  ['clear sky', under('CAVOK')],
  ['light rain', under('9999 -RA SCT040')],
  ['metres a second', reported('22006MPS')],
  ['cold', reported('22012KT', undefined, '02/M04')],
  ['thunderstorms long after the arrival', forecast('TEMPO 2520/2524 TSRA BKN008CB')],
  ['fog in the night after', forecast('FM252200 00000KT 0300 FG VV001')],
  ['a shower at the alternate the next morning', forecastAlternate('BECMG 2604/2606 -SHRA SCT035')],
  ['an amended forecast', taf('destination', 'TAF AMD ZZXB 251200Z 2512/2612 09008KT CAVOK')],
  ['at night, with landings at night', trip({ night: 'yes' })],
  ['instrument flight, with its approaches', trip({ instrument: 'yes' })],
  ['no passengers', trip({ passengers: 'no' })],
  ['more reserve', trip({ reserve: 60 })],
  ['a flow of 11', trip({ fuelFlow: 11 })],
  ['a little holding', trip({ holding: 15 })],
  ['minutes typed as the distance says', trip({ 'minutesTyped.departure': 60 })],
  [
    'a local flight with its minutes',
    [
      ...trip({
        'field.destination': 'Marrowfield',
        'runwayName.destination': '21',
        'groundspeed.departure': '',
        'minutesTyped.departure': 60,
        'minutesTyped.alternate': 60,
      }),
      ...metar('destination', 'METAR ZZXA 251350Z 22012KT 9999 FEW040 18/09 Q1009'),
      ...taf('destination', 'TAF ZZXA 251100Z 2512/2612 21012KT 9999 FEW040'),
    ],
  ],
  ['a time with a colon', trip({ takeoffTime: '14:30' })],
  ['a time with Z', trip({ takeoffTime: '1430Z' })],
  ['nobody behind', seat('rear seats', { weight: 0 })],
  ['the pilot alone', [...seat('front seats', { weight: 180 }), ...seat('rear seats', { weight: 0 }), ...seat('baggage', { weight: 0 })]],
  ['no baggage', seat('baggage', { weight: 0 })],
  [
    'full tanks within the limits',
    [...seat('rear seats', { weight: 0 }), ...tank('left wing', { onBoard: 30 }), ...tank('right wing', { onBoard: 30 })],
  ],
  ['a paved runway', [...runway('Marrowfield', '21', { surface: 'paved, dry' }), ...runway('Marrowfield', '03', { surface: 'paved, dry' })]],
  [
    'a longer runway in metres',
    [
      ...runway('Tansy Ridge', '08', { takeoffAvailable: 1100, landingAvailable: 1100, lengthIn: 'm' }),
      ...runway('Tansy Ridge', '26', { takeoffAvailable: 1100, landingAvailable: 1100, lengthIn: 'm' }),
    ],
  ],
  [
    'a field that goes by the reports of a station nearby',
    [
      ...field('Marrowfield', { station: 'ZZXQ' }),
      ...metar('departure', 'METAR ZZXQ 251350Z 22012KT 9999 FEW040 18/09 Q1009'),
      ...taf('departure', 'TAF ZZXQ 251100Z 2512/2612 21012KT 9999 FEW040'),
    ],
  ],
  ['a direction left to the name', runway('Marrowfield', '21', { direction: '' })],
  ['lower limits on weight', plane({ mostLandingWeight: 2550 })],
  ['an inspection of this month', inspection('annual inspection', { doneOn: date('2026-11-20') })],
  ['a review of this month', paper('flight review', { date: date('2026-11-20') })],
  ['a card verified again', dataCard('panel, box 1', 'navigation', { verified: date('2026-11-20') })],
  ['a higher reserve of fuel and no contingency', trip({ contingency: 0, reserve: 90 })],
  ['another factor', start({ takeoffFactor: 1.33, landingFactor: 1.43 })],
  ['the other aircraft with its own units', brindle],
];
