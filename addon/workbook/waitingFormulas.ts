/** The sentence of a host that cannot be read yet, by which the panel knows that asking again will help. */
export const stillWorking = 'Some formulas are still being worked out. Wait until no cell shows Loading, then ask again.';
