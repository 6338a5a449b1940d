// Which folder of src/ may import which: the one place where the direction of imports is written down. `npm run imports` checks it.

/** A folder of src/ and the folders that it may import. Nobody imports the rim: editor, renderer and cli. */
const MAY_IMPORT = {
  text: [],
  units: ['text'],
  language: ['text', 'units'],
  sheet: ['text', 'units', 'language'],
  library: ['text', 'units', 'language', 'sheet'],
  run: ['text', 'units', 'language', 'sheet', 'library'],
  review: ['text', 'units', 'language', 'sheet', 'run'],
  assist: ['text', 'units', 'language', 'sheet', 'library', 'run'],
  view: ['text', 'units', 'language', 'sheet', 'run'],
  report: ['text', 'units', 'language', 'sheet', 'library', 'run', 'review', 'view'],
  node: ['text', 'units', 'language', 'sheet', 'run', 'review', 'report'],
  renderer: ['view'],
  cli: ['text', 'units', 'language', 'sheet', 'library', 'run', 'review', 'view', 'report', 'node'],
  editor: ['text', 'units', 'language', 'sheet', 'library', 'run', 'review', 'assist', 'view', 'report', 'node'],
};

/** `vscode` exists inside the editor alone; here its types stand for it. */
const VSCODE = '^(vscode$|node_modules/@types/vscode/)';

const folder = (...names) => `^src/(${names.join('|')})/`;

const direction = Object.entries(MAY_IMPORT).map(([name, allowed]) => ({
  name: `${name}-imports`,
  comment: `src/${name}/ may import ${allowed.length > 0 ? allowed.map((a) => `${a}/`).join(', ') : 'no other folder'}.`,
  severity: 'error',
  from: { path: folder(name) },
  to: { path: '^src/', pathNot: folder(name, ...allowed) },
}));

module.exports = {
  forbidden: [
    ...direction,
    {
      name: 'no-cycle',
      comment: 'Files whose code imports each other load in an order that nobody chose. Types of one folder may refer to each other.',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'vscode-in-editor-only',
      comment: 'The core, the command line and the renderer know no editor.',
      severity: 'error',
      from: { pathNot: folder('editor') },
      to: { path: VSCODE },
    },
    {
      name: 'node-modules-in-node-and-cli-only',
      comment: 'The core has no clock, disk, network or randomness of its own, and the browser host has no node: modules.',
      severity: 'error',
      from: { path: '^src/', pathNot: folder('node', 'cli') },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'terminal-packages-in-cli-only',
      comment: 'Arguments and terminal columns are the business of the command line.',
      severity: 'error',
      from: { path: '^src/', pathNot: folder('cli') },
      to: { path: '^node_modules/(commander|string-width)/' },
    },
    {
      name: 'what-is-shipped-is-a-dependency',
      comment: 'What src/ imports is listed under dependencies, not under devDependencies.',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'], dependencyTypesNot: ['type-only'], pathNot: VSCODE },
    },
    {
      name: 'resolvable',
      comment: 'Every import leads to a file.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: VSCODE },
    },
  ],
  options: {
    doNotFollow: { path: '^node_modules/' },
    // Types count: a type that is imported against the direction drags the meaning of a folder with it.
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.d.ts', '.js', '.json'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
    },
  },
};
