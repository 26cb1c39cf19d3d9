const mutation = 2;

/** A change of the user's: not what the grid works out by itself (local only), nor the letters of a cell still being typed. */
export const isUsersChange = (id: string, type: number, options: { readonly onlyLocal?: boolean } | undefined): boolean =>
  type === mutation && options?.onlyLocal !== true && !id.startsWith('doc.');
