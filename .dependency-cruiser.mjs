/** The rules of the house (DEVELOPERS.md), as a tool checks them. */
const lib = (name) => `^libs/${name}/`;
const mayImport = {
  measure: [],
  body: ['measure'],
  garment: ['measure'],
  fabric: ['measure'],
  fit: ['measure', 'body', 'garment', 'fabric'],
  counts: ['measure'],
  'advice-text': ['measure', 'body', 'garment', 'fabric', 'fit', 'counts'],
  'target-sheet': ['measure', 'body', 'garment', 'fabric', 'fit', 'advice-text'],
  'hand-off': ['measure', 'target-sheet', 'advice-text'],
};

/** The folders of the page, lowest first, each with the folders below it that it may import. */
const web = (name) => `^apps/web/src/${name}/`;
const webMayImport = {
  notebook: [],
  reading: ['notebook'],
  compute: ['notebook', 'reading'],
  records: ['notebook', 'reading', 'compute'],
  api: ['notebook', 'reading', 'compute', 'records'],
  state: ['notebook'],
  sync: ['notebook', 'records', 'api', 'state'],
  ui: ['state'],
  drawing: ['compute', 'ui'],
  field: ['notebook', 'reading', 'compute', 'ui'],
  collections: ['notebook', 'records', 'state', 'ui', 'field'],
  body: ['notebook', 'reading', 'compute', 'state', 'ui', 'drawing', 'field', 'collections'],
  garment: ['notebook', 'reading', 'compute', 'state', 'ui', 'drawing', 'field', 'collections'],
  yarn: ['notebook', 'reading', 'compute', 'state', 'ui', 'drawing', 'field', 'collections'],
  design: ['notebook', 'reading', 'compute', 'state', 'ui', 'drawing', 'field'],
  sheet: ['notebook', 'reading', 'compute', 'state', 'ui', 'drawing'],
  made: ['notebook', 'reading', 'compute', 'state', 'ui', 'drawing', 'field'],
  kept: ['notebook', 'reading', 'compute', 'records', 'api', 'state', 'ui', 'drawing', 'field'],
  send: ['notebook', 'reading', 'api', 'state', 'ui', 'field', 'kept'],
};

/** The folders of `libs/fit`, along the way of a request: each may import those before it. The engine's face is its index. */
const fitFolders = [
  'engine',
  'design',
  'messages',
  'evidence',
  'model',
  'constructions',
  'outline',
  'inputs',
  'checks',
  'tracing',
  'evaluation',
  'remedies',
  'judging',
  'advice',
];
const fit = (name) => `^libs/fit/src/${name}/`;

export default {
  forbidden: [
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'resolvable', severity: 'error', from: {}, to: { couldNotResolve: true } },
    {
      name: 'libs-are-pure',
      comment: 'A lib imports libs and nothing else, types included.',
      severity: 'error',
      from: { path: '^libs/', pathNot: '\\.spec\\.ts$' },
      to: { pathNot: '^libs/' },
    },
    {
      name: 'public-face-only',
      comment: 'Nobody imports past a lib’s index.ts.',
      severity: 'error',
      from: { path: '^(libs/[^/]+|apps/[^/]+|tests|seeds|bench)/' },
      to: { path: '^libs/[^/]+/src/(?!index\\.ts$)', pathNot: '^$1/' },
    },
    ...Object.entries(mayImport).map(([name, allowed]) => ({
      name: `one-way-${name}`,
      severity: 'error',
      from: { path: lib(name), pathNot: '\\.spec\\.ts$' },
      to: { path: '^libs/', pathNot: [name, ...allowed].map(lib) },
    })),
    ...fitFolders.map((name, at) => ({
      name: `fit-${name}`,
      severity: 'error',
      from: { path: fit(name), pathNot: '\\.spec\\.ts$' },
      to: { path: '^libs/fit/src/', pathNot: fitFolders.slice(0, at + 1).map(fit) },
    })),
    {
      name: 'fit-engine-is-private',
      comment: 'The rest of fit knows the engine by its index.',
      severity: 'error',
      from: { path: '^libs/fit/', pathNot: fit('engine') },
      to: { path: fit('engine'), pathNot: 'engine/index\\.ts$' },
    },
    ...Object.entries(webMayImport).map(([name, allowed]) => ({
      name: `web-${name}`,
      severity: 'error',
      from: { path: web(name) },
      to: { path: '^apps/web/src/[^/]+/', pathNot: [name, ...allowed].map(web) },
    })),
    {
      name: 'web-folders-have-rules',
      comment: 'A new folder of the page needs a line in webMayImport; only `page` may import every other.',
      severity: 'error',
      from: {
        path: '^apps/web/src/',
        pathNot: ['^apps/web/src/[^/]+$', ...[...Object.keys(webMayImport), 'page'].map(web)],
      },
      to: {},
    },
    {
      name: 'web-no-folder-circles',
      severity: 'error',
      scope: 'folder',
      from: { path: '^apps/web/src/.+' },
      to: { path: '^apps/web/src/.+', circular: true },
    },
    {
      name: 'page-talks-http',
      comment: 'The page knows the API by its address only.',
      severity: 'error',
      from: { path: '^apps/web/' },
      to: { path: '^apps/api/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['source', 'import', 'node', 'default', 'types'],
    },
  },
};
