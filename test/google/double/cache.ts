// The cache of one user of the script, which every run of that user sees.
import { Doubled } from './recorder';

export class FakeCache extends Doubled {
  readonly service = 'Cache';
  override readonly kind = 'other';
  readonly entries = new Map<string, string>();
  /** Keeps nothing, as the platform may do: "You must be prepared to get back null from all reads." */
  forgets = false;

  get = (key: string): string | null => this.entries.get(key) ?? null;

  put(key: string, value: string, seconds?: number): void {
    if (key.length > 250 || value.length > 100_000) throw new Error('Argument too large: key or value');
    if (seconds === undefined || seconds < 1 || seconds > 21_600) throw new Error('the cache keeps for 1 to 21600 seconds');
    if (!this.forgets) this.entries.set(key, value);
  }
}

export class FakeCacheService extends Doubled {
  readonly service = 'CacheService';
  override readonly kind = 'other';
  private readonly cache: FakeCache;

  constructor(cache: FakeCache) {
    super();
    this.cache = cache;
  }

  getUserCache = (): FakeCache => this.cache;
}
