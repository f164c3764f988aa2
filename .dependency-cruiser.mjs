/** The arrows between the stages: each folder, and what it may import besides itself and packages. */
const STAGES = {
  words: ['compare/change'],
  language: ['words'],
  sound: ['words', 'language'],
  shot: ['words', 'language', 'sound'],
  solve: ['words', 'language', 'shot', 'sound'],
  count: ['words', 'language', 'shot', 'solve'],
  layout: [],
  sheet: ['words', 'language', 'shot', 'sound', 'solve', 'count', 'layout'],
  print: ['sheet/display-list'],
  export: ['words', 'language', 'shot', 'solve', 'count', 'sheet/row-texts', 'sheet/sheet-geometry'],
  compare: ['words', 'language', 'shot', 'solve'],
  picture: ['shot', 'solve'],
  draft: ['words', 'language', 'shot', 'solve'],
  reference: ['words', 'language', 'shot', 'solve', 'layout', 'sheet'],
  host: [],
  preview: ['words', 'language', 'shot/time-notation', 'sheet/display-list', 'print/svg', 'picture'],
  lsp: [
    'words',
    'language',
    'shot',
    'solve',
    'draft',
    'episode',
    'host',
    'reference',
    'build',
    'print/svg',
    'sheet/display-list',
  ],
  episode: [
    'words',
    'language',
    'shot',
    'sound',
    'solve',
    'count/count-stages',
    'count/stage-states',
    'count/stage-rates',
    'host',
    'print/glyph-coverage',
    'sheet/sheet-geometry',
    'sheet/page-look',
  ],
  build: [
    'words',
    'language',
    'shot',
    'solve',
    'count',
    'layout',
    'sheet',
    'print',
    'compare',
    'episode',
    'host',
  ],
  shoot: ['words', 'language', 'shot', 'solve', 'export', 'picture', 'sound', 'episode', 'host', 'build'],
  watch: [
    'words',
    'language',
    'shot',
    'solve',
    'export',
    'picture',
    'shoot/film-sound',
    'print',
    'episode',
    'host',
    'preview',
    'build',
  ],
};

/** Packages that one folder, or one file, has to itself: everything else goes through it. */
const PACKAGES = {
  yaml: 'episode/',
  commander: 'command/',
  'csv-parse': 'language/csv-rows',
  'fft.js': 'sound/',
  picocolors: 'language/report/',
  chokidar: 'watch/file-watcher',
  'vscode-languageserver': 'lsp/',
  '@napi-rs/canvas': 'host/canvas-package',
};

/** Stages that are functions of what they are given, and know nothing of the machine they run on. */
const PURE = [
  'words',
  'language',
  'shot',
  'sound',
  'solve',
  'count',
  'layout',
  'sheet',
  'export',
  'compare',
  'picture',
];

/** Stages whose types may be used, and nothing else: there is a word for each kind of move. */
const NAMED = { words: ['language', 'shot'] };

function arrows(name, stage, allowed, named) {
  const outside = (known) => known.map((one) => `^src/${one}[/.]`);
  const rule = { severity: 'error', from: { path: `^src/${stage}/` } };
  return [
    { ...rule, name, to: { path: '^src/', pathNot: outside([stage, ...allowed, ...named]) } },
    ...named.map((one) => ({
      ...rule,
      name: `${name}-types-of-${one}-only`,
      to: { path: `^src/${one}/`, dependencyTypesNot: ['type-only'] },
    })),
  ];
}

const BUNDLED = [
  'chokidar',
  'commander',
  'csv-parse',
  'diff',
  'fft.js',
  'picocolors',
  'string-width',
  'vscode-languageserver',
  'yaml',
];

/** Installed where it can be, asked for when it is needed. */
const OPTIONAL = ['@napi-rs/canvas'];

export default {
  forbidden: [
    ...Object.entries(STAGES).flatMap(([stage, allowed]) =>
      arrows(`arrows-of-${stage}`, stage, allowed, NAMED[stage] ?? []),
    ),
    ...Object.entries(PACKAGES).map(([name, owner]) => ({
      name: `${name}-stands-behind-${owner}`,
      severity: 'error',
      from: { path: '^src/', pathNot: `^src/${owner}` },
      to: { path: `node_modules/${name}/`, dependencyTypesNot: ['type-only'] },
    })),
    {
      name: 'pure-stages-know-no-machine',
      severity: 'error',
      from: { path: `^src/(${PURE.join('|')})/` },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'words-take-types-only',
      severity: 'error',
      from: { path: '^src/words/' },
      to: { path: '^src/', pathNot: '^src/words/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'no-circle',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    { name: 'nothing-unresolved', severity: 'error', from: {}, to: { couldNotResolve: true } },
    {
      // All packages are development dependencies, as the bundle holds what it needs; these are meant to be in it.
      name: 'shipped-code-needs-bundled-packages',
      severity: 'error',
      from: { path: '^src/' },
      to: {
        path: 'node_modules/',
        pathNot: `node_modules/(${[...BUNDLED, ...OPTIONAL].join('|')})/`,
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'every-package-is-named',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown'], dependencyTypesNot: ['type-only'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    // Runs in a browser, with the player's bundle beside it.
    exclude: { path: '^src/preview/page/live[.]js$' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default'],
      extensions: ['.ts', '.js', '.mjs'],
    },
  },
};
