// The few elements of the page outside the grid.

export function elementNamed(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no element "${id}"`);
  return found;
}
