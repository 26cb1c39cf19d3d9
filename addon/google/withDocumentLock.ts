// One change of the document at a time: two people, or the menu and the panel of one, would else take the same free names.

/** Milliseconds to wait for another run; the panel's own wait shows that something is going on. */
const patience = 20_000;
const busy = 'The add-on is changing sheets of this document already, perhaps for somebody else. Wait until that is done, then ask again.';

/** Whatever the work writes must be flushed when it ends, or another run begins too soon. */
export function withDocumentLock<Result>(work: () => Result): Result {
  const lock = LockService.getDocumentLock();
  if (!lock.tryLock(patience)) throw new Error(busy);
  try {
    return work();
  } finally {
    lock.releaseLock();
  }
}
