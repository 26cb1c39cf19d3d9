// The invented table and corrections by which the examples of the runway functions are worked by hand.
export const inventedTable = [
  ['weight', 'pressure altitude', 'temperature', 'over 50 ft'],
  [900, 0, 0, 300],
  [900, 0, 30, 360],
  [900, 2000, 0, 360],
  [900, 2000, 30, 430],
  [1100, 0, 0, 420],
  [1100, 0, 30, 500],
  [1100, 2000, 0, 500],
  [1100, 2000, 30, 600],
];
export const inventedCorrections = [
  ['headwind', -10, 9, ''],
  ['tailwind', 10, 2, ''],
  ['dry grass', 20, 1, 1],
];
