// The lock of the double's document.
import { Doubled } from './recorder';

export class FakeLock extends Doubled {
  readonly service = 'Lock';
  override readonly kind = 'other';
  /** Held by another run. */
  elsewhere = false;
  held = false;

  tryLock(milliseconds: number): boolean {
    if (!(milliseconds > 0)) throw new Error('tryLock takes milliseconds');
    this.held ||= !this.elsewhere;
    return this.held;
  }

  releaseLock(): void {
    this.held = false;
  }
}

export class FakeLockService extends Doubled {
  readonly service = 'LockService';
  override readonly kind = 'other';
  private readonly lock: FakeLock;

  constructor(lock: FakeLock) {
    super();
    this.lock = lock;
  }

  getDocumentLock = (): FakeLock => this.lock;
}
