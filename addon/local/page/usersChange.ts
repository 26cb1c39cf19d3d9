const mutation = 2;

/** By it everything in the page knows that a change was entered in another window and comes from what is kept. */
export const fromOthers = { fromCollab: true };

/** A change of the user's, in this window or another: not what the grid works out by itself (local only), nor the letters of a cell still being typed. */
export const isUsersChange = (id: string, type: number, options: { readonly onlyLocal?: boolean } | undefined): boolean =>
  type === mutation && options?.onlyLocal !== true && !id.startsWith('doc.');
