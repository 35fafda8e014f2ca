/** The import fence: rules built from the table in imports.data.cjs, and the few that cut across it. */
const { resolve } = require('node:path');
const { apps, libs, owners } = require('./imports.data.cjs');

/** The ports of the use cases and the values that these pass; the use cases themselves stay out. */
const PORTS = '^libs/planning/(?!use-cases/)';

/** A pattern for packages by name; `@scope/` stands for every package of the scope. */
function packagePattern(names) {
  const heads = names.map((name) => (name.endsWith('/') ? name : `${name}/`));
  return `node_modules/(?:@types/)?(?:${heads.join('|')})`;
}

/** The rules of one folder: files of the project, packages, Node's own modules. */
function fenceFor(home, row) {
  const { apps = [], typesOf = [] } = row;
  const allowed = [
    ...[...row.libs, ...typesOf].map((lib) => `^libs/${lib}/`),
    ...apps.map((app) => `^apps/${app}/`),
  ];
  const rule = (kind, to) => ({
    name: `${home}-${kind}`,
    comment: row.why,
    severity: 'error',
    from: { path: `^${home}/`, pathNot: 'vite\\.config\\.ts$' },
    to,
  });
  return [
    rule('files', {
      path: '^(?:libs|apps|tests)/',
      pathNot: [`^${home}/`, ...allowed, ...(row.ports ? [PORTS] : [])],
    }),
    ...(typesOf.length === 0 ? [] : [rule('types', valuesOf(typesOf))]),
    rule('packages', {
      path: 'node_modules/',
      ...(row.packages.length > 0 && { pathNot: packagePattern(row.packages) }),
    }),
    ...(row.builtins === true ? [] : [rule('builtins', builtinsBut(row.builtins))]),
  ];
}

function valuesOf(libs) {
  return { path: `^libs/(?:${libs.join('|')})/`, dependencyTypesNot: ['type-only'] };
}

function builtinsBut(allowed) {
  if (allowed.length === 0) return { dependencyTypes: ['core'] };
  return { dependencyTypes: ['core'], pathNot: `^(?:${allowed.join('|')})$` };
}

function ownerRule([name, lib]) {
  return {
    name: `${name.replace(/\W/g, '')}-only-in-${lib}`,
    comment: 'One lib owns this package, so that it can be replaced in one place.',
    severity: 'error',
    from: { path: '^(?:libs|apps)/', pathNot: `^libs/${lib}/` },
    to: { path: packagePattern([name]) },
  };
}

const known = [...Object.keys(libs).map((lib) => `libs/${lib}`)].concat(
  Object.keys(apps).map((app) => `apps/${app}`),
);

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...Object.entries(libs).flatMap(([lib, row]) => fenceFor(`libs/${lib}`, row)),
    ...Object.entries(apps).flatMap(([app, row]) => fenceFor(`apps/${app}`, row)),
    ...Object.entries(owners).map(ownerRule),
    {
      name: 'folder-not-in-the-table',
      comment: 'A new lib or app gets a row in .config/imports.data.cjs first, with its reason.',
      severity: 'error',
      from: { path: '^(?:libs|apps)/', pathNot: known.map((home) => `^${home}/`) },
      to: {},
    },
    {
      name: 'checker-stays-independent',
      comment:
        'A checker judges what the solver rows produced, so it may not share code with them.',
      severity: 'error',
      from: { path: '^libs/rules/.+/check\\.ts$' },
      to: { path: '^libs/(?:mip/|rules/.+/rows\\.ts$)', reachable: true },
    },
    {
      name: 'api-never-solves',
      comment: 'A solve blocks its thread, and with it every request; the api only queues it.',
      severity: 'error',
      from: { path: '^apps/api/' },
      to: { path: '^libs/(?:solving|solver-highs)/', reachable: true },
    },
    {
      name: 'no-circular-imports',
      comment: 'In a circle no file can be read, tested or replaced on its own.',
      severity: 'error',
      from: { path: '^(?:libs|apps)/' },
      to: { circular: true },
    },
    {
      name: 'import-leads-nowhere',
      comment: 'An import that cannot be found would slip past every other rule.',
      severity: 'error',
      from: { path: '^(?:libs|apps|tests)/' },
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    webpackConfig: { fileName: resolve(__dirname, 'resolve.cjs') },
    enhancedResolveOptions: {
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
      exportsFields: ['exports'],
    },
  },
};
