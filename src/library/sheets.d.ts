// The trade library's sheets and the notation's reference are imported as text: esbuild's text loader in the bundles, test/support/sheets-as-text.js in the tests.
declare module '*.md' {
  const text: string;
  export default text;
}
