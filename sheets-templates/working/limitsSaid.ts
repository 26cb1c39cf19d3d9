// The pilot's own limits that no report could be held against.
import { limitCell, limitNames, visibilityUnitCell } from '../start/settings';
import { sheetNames } from '../places';

/** The greatest values that WEATHER_BRIEF takes: no report could be held against more. */
const mostOf = { 'minimum ceiling': 5000, 'maximum crosswind': 60, 'maximum gust spread': 60, 'maximum tailwind': 30, 'maximum wind': 100 } as const;
const visibilities = { SM: 12, km: 20, m: 20000 } as const;

/** Formula text: the limits on Start that nothing could be held against, each with what it must be. */
export function limitsSaid(): string {
  const visibility = limitCell('minimum visibility');
  const must = (place: string, name: string, most: string | number, unit: string): string =>
    `IF(${place}="","",IF(ISNUMBER(${place}),IF(OR(${place}<0,${place}>${most}),"your ${name} on ${sheetNames.start} must be 0 to "&${most}&" ${unit}",""),"your ${name} on ${sheetNames.start} must be a number, in ${unit}"))`;
  const unit = Object.entries(visibilities).reduce((rest, [name, most]) => `IF(${visibilityUnitCell}="${name}",${most},${rest})`, '20000');
  const known = `OR(${Object.keys(visibilities)
    .map((name) => `${visibilityUnitCell}="${name}"`)
    .join(',')})`;
  return `=TEXTJOIN("; ",TRUE,${[
    must(visibility, 'minimum visibility', unit, `"&${visibilityUnitCell}&"`),
    `IF(${known},"","the unit of your minimum visibility on ${sheetNames.start} must be ${Object.keys(visibilities).join(', ')}")`,
    ...limitNames.flatMap((name) =>
      name === 'minimum visibility' ? [] : [must(limitCell(name), name, mostOf[name], name === 'minimum ceiling' ? 'ft' : 'kt')],
    ),
  ].join(',')})`;
}
