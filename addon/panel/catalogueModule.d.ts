// The module that addon/build/catalogue.ts makes while bundling.
declare module 'rampwright:catalogue' {
  const catalogue: import('./catalogue').Catalogue;
  export default catalogue;
}
