// The aircraft of the demonstration, in the order in which their rows stand in the tables.
import { brindle } from './brindle';
import type { InventedAircraft } from './inventedAircraft';
import { quillon } from './quillon';

export const inventedAircraft: readonly InventedAircraft[] = [quillon, brindle];
