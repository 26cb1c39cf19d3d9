// Slips of typing in the loading, the fuel, the days and the card. In a file of their own, so that two cores share the work.
import { slipsOfFlight } from './slips/all';
import { trySlips } from './slips/trySlips';

trySlips(slipsOfFlight);
