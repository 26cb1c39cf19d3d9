// Puts the double in the place of the platform's globals for tests that import the host's code directly.
import { Double } from './double/services';

export function withDouble(zone?: string): Double {
  const double = new Double(zone);
  Object.assign(globalThis, double.globals());
  return double;
}

export function withoutPlatform(): void {
  for (const name of ['SpreadsheetApp', 'HtmlService', 'LockService', 'CacheService', 'Utilities']) Reflect.deleteProperty(globalThis, name);
}
