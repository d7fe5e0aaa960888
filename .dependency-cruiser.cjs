const may = {
  engine: [],
  record: [],
  assessment: ['engine', 'record'],
  report: ['assessment', 'record', 'engine'],
  cli: ['assessment', 'record', 'engine', 'report'],
  app: ['assessment', 'record', 'engine', 'report'],
};

const packageArrows = Object.entries(may).map(([from, to]) => ({
  name: `arrows-of-${from}`,
  comment: `packages/${from} may import ${to.length ? to.join(', ') : 'nothing of ours'}`,
  severity: 'error',
  from: { path: `^packages/${from}/src` },
  to: { path: '^packages/', pathNot: `^packages/(${[from, ...to].join('|')})/src` },
}));

const groundFloor = ['units', 'numerics', 'geometry', 'sources'];

module.exports = {
  forbidden: [
    ...packageArrows,
    {
      name: 'no-cycles',
      severity: 'error',
      from: { path: '^packages/[^/]+/src' },
      to: { circular: true },
    },
    {
      name: 'engine-ground-floor',
      comment: 'units, numerics and geometry import nothing of ours but each other',
      severity: 'error',
      from: { path: `^packages/engine/src/(${groundFloor.join('|')})/` },
      to: { path: '^packages/engine/src/', pathNot: `^packages/engine/src/(${groundFloor.join('|')})/` },
    },
    {
      name: 'engine-is-pure',
      comment: 'the engine uses no Node module and no package',
      severity: 'error',
      from: { path: '^packages/engine/src' },
      to: { dependencyTypes: ['core', 'npm', 'npm-dev'] },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.tests.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['undercroft-source', 'import', 'node', 'default'],
    },
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '/dist/' },
  },
};
