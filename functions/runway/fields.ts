// The sheet function that looks over a list of fields and their runways before anything is read from it.
import { fieldStandings, usualLengthMetres, type FieldFinding, type FieldStanding } from '../../core/runway/fields';
import { laying, result, type ResultCell } from '../registry/declaration';
import { headingsAbove } from '../registry/headings';
import { limitInWords } from '../registry/readNumber';
import { fieldRows, fieldRunwayRows } from './readFields';

const whole = (value: number): string => limitInWords(Math.round(value));

function inSentence(finding: FieldFinding): string {
  switch (finding.kind) {
    case 'missing':
      return `${finding.what} is missing or cannot be read`;
    case 'twice':
      return 'the field stands in the list twice';
    case 'no-runway':
      return 'no runway is listed for it';
    case 'runway-missing':
      return `runway ${finding.runway}: ${finding.what} missing or not readable`;
    case 'elevation':
      return `elevation of ${whole(finding.feet)} ft: is it in feet?`;
    case 'far':
      return `${whole(finding.nauticalMiles)} NM from ${finding.nearest}, the nearest other field: a sign or a digit of the position?`;
    case 'direction':
      return `runway ${finding.runway}: direction ${whole(finding.degrees)} degrees, where its name says about ${whole(finding.named)}`;
    case 'length':
      return `runway ${finding.runway}: ${whole(finding.length)} ${finding.unit} is no usual length (${usualLengthMetres.least} to ${limitInWords(usualLengthMetres.most)} m): digits or unit?`;
    case 'landing-longer':
      return `runway ${finding.runway}: ${whole(finding.landing)} ${finding.unit} to land on, but only ${whole(finding.takeoff)} ${finding.unit} to take off`;
    case 'other-end':
      return `runway ${finding.runway}: ${whole(finding.length)} ${finding.unit}, its other end ${finding.other}: ${whole(finding.otherLength)} ${finding.unit}`;
    case 'slopes':
      return `runways ${finding.runway} and ${finding.other}, two ends of one strip, slope the same way: one of them has the wrong sign`;
    case 'slopes-apart':
      return `runways ${finding.runway} and ${finding.other}, two ends of one strip, differ in their slopes by more than 1 %`;
    case 'surfaces':
      return `runways ${finding.runway} and ${finding.other}, two ends of one strip, differ in their surfaces`;
    case 'same-place':
      return `the same position as ${finding.other}`;
  }
}

function rowOf(standing: FieldStanding | undefined): ResultCell[] {
  if (standing === undefined) return ['', ''];
  const { verdict, findings, runwayCount } = standing;
  return [
    verdict,
    findings.length === 0 ? `complete, ${runwayCount} runway ${runwayCount === 1 ? 'direction' : 'directions'}` : findings.map(inSentence).join('; '),
  ];
}

export const FIELD_ENTRIES = laying({
  name: 'FIELD_ENTRIES',
  subject: 'Runway',
  summary: 'A list of fields and their runways looked over: what is missing, and what looks like a typing error.',
  parameters: {
    fields: fieldRows(
      'Fields under one header row: field, latitude, longitude (south and west negative), elevation in feet; also station and remark.',
    ),
    runways: fieldRunwayRows(
      'Runways under one header row: field, runway (03, 21L), direction (magnetic; blank: ten times the number), take-off available, landing available, length in (ft or m), surface, slope in percent, up positive.',
    ),
    headings: headingsAbove,
  },
  results: {
    verdict: result('', 'For each row of fields: OK; CHECK where something looks wrong; UNKNOWN where something is missing.'),
    reason: result('', 'What is missing or looks wrong.'),
  },
  sources: ['aim', 'karney-2013', 'common-practice'],
  notes:
    'CHECK: an elevation below -1,300 or above 14,500 ft, a field more than 1,000 NM from every other one, a direction more than 15 degrees from the name of the runway, a length below 200 or above 5,500 m, more to land on than a quarter beyond what there is to take off, two ends of one strip that differ by half as much again, in their surfaces or by more than 1 % in their slopes, or slope the same way, two fields at one position. ' +
    'Common practice, no source, but for the naming of runways (AIM 2-3-3). It cannot see a slip that stays within these.',
  examples: [
    {
      arguments: [
        [
          ['field', 'latitude', 'longitude', 'elevation, ft'],
          ['North Field', 10, 20, 500],
          ['South Field', 9, 20.5, 500],
        ],
        [
          ['field', 'runway', 'direction', 'take-off available', 'landing available', 'length in', 'surface', 'slope, %'],
          ['North Field', '20', 20, 900, 900, 'm', 'grass, dry', 0],
        ],
      ],
      gives: [
        ['CHECK', 'runway 20: direction 20 degrees, where its name says about 200'],
        ['UNKNOWN', 'no runway is listed for it'],
      ],
      source: 'AIM 2-3-3: the runway number is the nearest tenth of its magnetic direction; invented fields',
      formula: '=FIELD_ENTRIES(A1:D3, F1:M2)',
    },
  ],
  compute: ({ fields, runways }) => {
    const listed = fields.filter((one) => one !== undefined);
    const standings = new Map(fieldStandings(listed, runways).map((standing, index) => [listed[index], standing]));
    return fields.map((one) => rowOf(one === undefined ? undefined : standings.get(one)));
  },
});
