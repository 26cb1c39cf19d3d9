// The module that addon/build/dataModules.ts makes while bundling.
declare module 'rampwright:catalogue' {
  // The declaration of a module by name may not import from a relative path in any other way.
  // eslint-disable-next-line @typescript-eslint/consistent-type-imports
  const catalogue: import('./catalogue').Catalogue;
  export default catalogue;
}
