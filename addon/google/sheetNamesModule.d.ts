// The module that addon/build/catalogue.ts makes while bundling: every sheet by key and name, without the sheets.
declare module 'rampwright:sheet-names' {
  const sheetNames: readonly { readonly key: import('../../sheets-templates/template').SheetKey; readonly name: string }[];
  export default sheetNames;
}
