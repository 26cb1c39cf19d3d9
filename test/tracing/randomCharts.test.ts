// Charts drawn at random, spoilt at random: whatever is followed lies on its curve. RANDOM_CHARTS=400 draws more of them.
import { expect, it } from 'vitest';
import { randomFrom, type Drawing, type DrawnCurve, type Spoilt } from './support/drawnChart';
import { readyChart, traced } from './support/traced';

const [charts, firstSeed] = [Number(process.env['RANDOM_CHARTS'] ?? 12), Number(process.env['FIRST_CHART'] ?? 1)];

interface RandomChart {
  readonly drawing: Drawing;
  readonly spoilt: Spoilt;
}

function chartAt(seed: number): RandomChart {
  const random = randomFrom(seed * 7919);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const one = <Item>(...items: readonly Item[]): Item => items[Math.floor(random() * items.length)] as Item;
  const ink = between(0.55, 0.95);
  const width = between(1.4, 4);
  const dash: DrawnCurve['dash'] = random() < 0.3 ? [between(8, 16), between(3, 7)] : undefined;
  const [slope, bend, wave] = [between(-25, 25), between(-0.35, 0.35), between(0, 60)];
  // Neighbours at least ten pixels and three breadths apart, of six and a quarter feet a pixel.
  const apart = between(Math.max(70, 22 * width), 400);
  const count = Math.max(1, Math.min(6, Math.floor(1800 / apart)));
  const formulaOf =
    (place: number) =>
    (across: number): number =>
      1500 +
      (place - (count - 1) / 2) * apart * (1 + 0.004 * (across - 10)) +
      slope * (across - 10) +
      bend * (across - 10) ** 2 +
      wave * Math.sin(across / 9);
  const curves = Array.from({ length: count }, (_, place): DrawnCurve => ({
    formula: formulaOf(place),
    from: -20 + between(0, 8),
    to: 40 - between(0, 8),
    width,
    ink,
    ...(dash && { dash }),
  }));
  const guide: DrawnCurve = { formula: (across) => 200 + 45 * (across + 20), from: -20, to: 40, width, ink };
  return {
    drawing: {
      across: [-20, 40],
      up: [0, 3000],
      size: [600, 480],
      minor: { across: 5, up: one(100, 150, 200) },
      grid: { ink: between(0.15, 0.9), width: between(0.7, 1.6) },
      curves: random() < 0.3 ? [...curves, guide] : curves,
    },
    spoilt: {
      turned: between(-20, 20),
      skewed: between(0, 0.25),
      ...(random() < 0.5 && { blurred: between(0.5, 1.6) }),
      noise: between(0, 18),
      spots: Math.round(between(0, 120)),
      ...(random() < 0.5 && { blocks: between(4, 14) }),
      shadow: between(0, 0.4),
      seed,
    },
  };
}

it(`follows no other line, in ${charts} charts`, { timeout: 60_000 + charts * 10_000 }, () => {
  const wrong: string[] = [];
  let [followed, whole] = [0, 0];
  for (let seed = firstSeed; seed < firstSeed + charts; seed += 1) {
    const { drawing, spoilt } = chartAt(seed);
    const ready = readyChart(drawing, spoilt);
    for (const [place, curve] of drawing.curves.entries())
      for (const at of [-3.7, 22.3]) {
        const height = curve.formula(at);
        if (height < 60 || height > 2940) continue;
        const found = traced(ready, curve, at);
        whole += (curve.to - curve.from) / 60;
        if (found === undefined) continue;
        followed += (found.to - found.from) / 60;
        // A click where two lines meet may mean either; all of what was followed must lie on one of them.
        const meant = drawing.curves.filter(({ formula }) => Math.abs(formula(at) - height) < 12 * 6.25);
        const error = Math.min(
          ...meant.map(({ formula }) => Math.max(...found.points.map(({ input, figure }) => Math.abs(figure - formula(input)) / drawing.minor.up))),
        );
        if (error >= 0.5) wrong.push(`chart ${seed}, curve ${place + 1} from ${at}: ${error.toFixed(2)} steps`);
      }
  }
  expect(wrong).toEqual([]);
  // Told for whoever changes the tracer; it is no promise.
  expect(followed / whole).toBeGreaterThan(0.4);
  console.log(`followed ${((100 * followed) / whole).toFixed(0)} per cent of the curves`);
});
