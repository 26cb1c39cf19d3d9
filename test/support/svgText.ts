// Reads pictures written as SVG text: the sizes of their text, and the places that their shapes and texts name outright.

export const textSizes = (svg: string): number[] => [...new Set([...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size)))];

/** Points of the absolute commands M and L of paths, and the x and y of texts and circles. */
export function numbersIn(svg: string): { readonly x: number; readonly y: number }[] {
  const paths = [...svg.matchAll(/ d="([^"]*)"(?! transform)/g)].flatMap(([, d = '']) => [...d.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)]);
  const texts = [...svg.matchAll(/<text x="(-?[\d.]+)" y="(-?[\d.]+)"/g), ...svg.matchAll(/<circle cx="(-?[\d.]+)" cy="(-?[\d.]+)"/g)];
  return [...paths, ...texts].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
}
