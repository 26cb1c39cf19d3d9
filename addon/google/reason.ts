// Why something failed, in the words of whatever was thrown. Asked of the message and not of the class: what a service
// throws need not be an Error of the script's own realm.
export function reasonOf(thrown: unknown): string {
  const message = typeof thrown === 'object' && thrown !== null ? (thrown as { readonly message?: unknown }).message : undefined;
  return typeof message === 'string' ? message : String(thrown);
}
