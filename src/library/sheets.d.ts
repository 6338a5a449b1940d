// The trade library's sheets are imported as text: esbuild's text loader in the bundles, test/support/sheets-as-text.js in the tests.
declare module '*.ampwright.md' {
  const text: string;
  export default text;
}
