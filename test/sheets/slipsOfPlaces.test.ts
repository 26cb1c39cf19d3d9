// Bad days and slips of typing in the weather, the fields, the tables and the lists.
import { slipsOfPlaces } from './slips/all';
import { trySlips } from './slips/trySlips';

trySlips(slipsOfPlaces);
