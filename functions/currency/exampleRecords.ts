// A log and a fleet, invented, that the examples of the pilot's two lists begin with.

export const exampleLog = [
  ['date', 'aircraft', 'day landings', 'day full stop', 'night landings', 'night full stop'],
  ['2025-01-01', 'North', 1, 1, '', ''],
  ['2025-01-20', 'North', 2, '', '', ''],
  ['2025-02-01', 'South', 5, 5, '', ''],
];

export const exampleFleet = [
  ['aircraft', 'category', 'class'],
  ['North', 'airplane', 'single-engine land'],
  ['South', 'airplane', 'multi-engine land'],
];
