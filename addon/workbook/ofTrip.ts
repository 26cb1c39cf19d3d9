// The sheets of which each belongs to one trip: copied together, they read one another. The others serve every trip.
import type { SheetKey } from '../../sheets-templates/template';

export const ofTrip: ReadonlySet<SheetKey> = new Set(['trip', 'working', 'route', 'card', 'balance']);
