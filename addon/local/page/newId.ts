/** A word that nobody else has. Pages of the local network have no other source of chance. */
export const newId = (): string => [...crypto.getRandomValues(new Uint8Array(8))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
