// Modules that addon/build/dataModules.ts makes while bundling. The declaration of a module by name may not import from a
// relative path in any other way than this.
/* eslint-disable @typescript-eslint/consistent-type-imports */

/** Every sheet by key and name, without the sheets themselves. */
declare module 'rampwright:sheet-names' {
  const sheetNames: readonly { readonly key: import('../../sheets-templates/template').SheetKey; readonly name: string }[];
  export default sheetNames;
}

/** Every sheet function by name; its subject's code starts when it is asked for. */
declare module 'rampwright:functions' {
  const declarations: Readonly<Record<string, () => import('../../functions/registry/declaration').FunctionDeclaration>>;
  export default declarations;
}
