// The module that addon/build/catalogue.ts makes while bundling: every sheet by key and name, without the sheets.
declare module 'rampwright:sheet-names' {
  // The declaration of a module by name may not import from a relative path in any other way.
  // eslint-disable-next-line @typescript-eslint/consistent-type-imports
  const sheetNames: readonly { readonly key: import('../../sheets-templates/template').SheetKey; readonly name: string }[];
  export default sheetNames;
}
