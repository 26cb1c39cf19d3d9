// The profile of a descent as SVG: altitude over distance, the bands of the plan, its start, and the crossing restrictions.
import { scaleLinear } from 'd3-scale';
import { axes } from './axes';
import { colours, element, label, polyline, svgDocument, textSize, widthOfText, type Sheet } from './svg';
import { area, bandPlaces, type DescentProfile, describe, maxNameRows, namePlaces, pathOf, rowsOf } from './descentProfile';
import { crossingMarks, fixMark, markKey, nameRow, startMark, type Scales } from './descentMarks';

/** Every second band is shaded; the groundspeed stands at its foot where it fits. */
function bandShades(profile: DescentProfile, { x, y }: Scales, bottom: number): string {
  return bandPlaces(profile)
    .map(({ startsAt, endsAt, fromFeet, toFeet, groundspeedKnots }, index) => {
      const [left, right] = [x(startsAt), x(endsAt)];
      const corners = [
        { x: left, y: bottom },
        { x: left, y: y(fromFeet) },
        { x: right, y: y(toFeet) },
        { x: right, y: bottom },
        { x: left, y: bottom },
      ];
      const speed = `${Math.round(groundspeedKnots)} kt`;
      const fits = right - left > widthOfText(speed) + 6 && bottom - y(toFeet) > textSize + 8;
      const edge = element('path', {
        d: `M${right.toFixed(1)},${y(toFeet).toFixed(1)}V${bottom}`,
        stroke: colours.faint,
        'stroke-width': 0.8,
        'stroke-dasharray': '2 3',
      });
      return (
        polyline(corners, { fill: index % 2 === 0 ? colours.band : colours.paper }) +
        edge +
        (fits ? label(speed, { x: (left + right) / 2, y: bottom - 6 }, { anchor: 'middle', color: colours.faint }) : '')
      );
    })
    .join('');
}

function scalesOf(profile: DescentProfile, { width, height }: Sheet, top: number): Scales {
  const path = pathOf(profile);
  const miles = [
    ...path.map((point) => point.miles),
    ...profile.crossings.map(({ atNauticalMiles }) => atNauticalMiles),
    0,
    profile.fixNauticalMiles ?? 0,
  ];
  const feet = [...path.map((point) => point.feet), ...profile.crossings.map(({ altitudeFeet }) => altitudeFeet)];
  const [low, high] = [Math.min(...feet), Math.max(...feet)];
  const room = Math.max(500, (high - low) * 0.2);
  return {
    x: scaleLinear([Math.min(...miles), Math.max(...miles)], [area.left, width - area.right]),
    y: scaleLinear([Math.max(Math.min(0, low), low - room), high + room], [height - area.bottom, top]),
  };
}

export function descentPicture(profile: DescentProfile, size: Pick<Sheet, 'width' | 'height'>): string {
  const sheet = { ...size, title: 'Descent profile', description: describe(profile) };
  const { x } = scalesOf(profile, sheet, 0);
  const isCrowded = rowsOf(namePlaces(profile.crossings, x)) > maxNameRows;
  // Too many names side by side would leave no height to the profile: then their numbers stand there.
  const named = isCrowded ? profile.crossings.map((crossing, index) => ({ ...crossing, name: String(index + 1) })) : profile.crossings;
  const places = namePlaces(named, x);
  const top = 42 + rowsOf(places) * nameRow;
  const scales = scalesOf(profile, sheet, top);
  const path = pathOf(profile).map(({ miles, feet }) => ({ x: scales.x(miles), y: scales.y(feet) }));
  const bottom = size.height - area.bottom;
  return svgDocument(sheet, [
    label(isCrowded ? `${sheet.title}, crossings by their row` : sheet.title, { x: 12, y: 18 }, { bold: true }),
    bandShades(profile, scales, bottom),
    axes(scales, sheet, top, profile.fixNauticalMiles === undefined ? 'NM from here' : 'NM from the start'),
    polyline(path, { stroke: colours.path, 'stroke-width': 2.4 }),
    crossingMarks(places, scales, top),
    fixMark(profile, scales, top, bottom),
    startMark(profile, scales, size.width - area.right),
    markKey(profile.crossings, size.height - 8),
  ]);
}
