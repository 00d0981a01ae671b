/** The rules of the house (DEVELOPERS.md), as a tool checks them. */
const lib = (name) => `^libs/${name}/`;
const mayImport = {
  measure: [],
  body: ['measure'],
  garment: ['measure'],
  fabric: ['measure'],
  fit: ['measure', 'body', 'garment', 'fabric'],
  'advice-text': ['measure', 'body', 'garment', 'fabric', 'fit'],
  'target-sheet': ['measure', 'body', 'garment', 'fabric', 'fit', 'advice-text'],
  'hand-off': ['measure', 'target-sheet', 'advice-text'],
};

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
