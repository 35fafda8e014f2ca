/**
 * Who may import whom, and why: the one table behind the import fence. Whatever is not listed is
 * forbidden, also to a folder that is not in the table yet.
 *
 * libs      other libs it may import
 * apps      other apps it may import
 * typesOf   other libs of which it may import types (erased when built), but nothing that runs
 * ports     whether it may import the ports of libs/planning and the values that these pass
 * packages  npm packages it may import; a name that ends in / stands for the whole scope
 * builtins  which of Node's own modules it may import: true for all, or their names without node:
 * why       the reason that a breach is answered with
 */

const PURE = { packages: [], builtins: [] };
/** What use cases return and the api sends on as JSON. */
const RESULTS = ['units', 'domain', 'explain', 'futures', 'report'];
const ADAPTERS = ['exchange', 'persistence', 'report-pdf', 'solving'];

exports.libs = {
  units: { ...PURE, libs: [], why: 'Units are the ground that all else stands on.' },
  mip: { ...PURE, libs: [], why: 'The mathematical model knows no campus word.' },
  domain: {
    ...PURE,
    libs: ['units'],
    why: 'The campus is described with no solver or store in mind.',
  },
  estimating: {
    libs: ['units', 'domain'],
    packages: ['geographiclib-geodesic', 'polygon-clipping'],
    builtins: [],
    why: 'Trade formulas are pure; only small, pure reference libraries may help them.',
  },
  rules: {
    ...PURE,
    libs: ['units', 'domain', 'estimating', 'mip'],
    why: 'A rule is judged and told to the solver from the campus alone.',
  },
  optimizer: {
    ...PURE,
    libs: ['units', 'domain', 'estimating', 'mip', 'rules'],
    why: 'The optimizer gets its solver, clock and seed as arguments.',
  },
  explain: {
    ...PURE,
    libs: ['units', 'domain', 'estimating', 'mip', 'rules', 'optimizer'],
    why: 'An explanation is computed from values, so that it can be repeated.',
  },
  futures: {
    ...PURE,
    libs: ['units', 'domain', 'estimating', 'mip', 'rules', 'optimizer'],
    why: 'Sampled futures are computed from values and a seed, so that they can be repeated.',
  },
  report: {
    libs: ['units', 'domain', 'estimating'],
    typesOf: ['explain', 'futures'],
    packages: ['d3-scale', 'd3-shape'],
    builtins: [],
    why: 'A document is data made from results that were computed before; it computes none.',
  },
  planning: {
    ...PURE,
    libs: [
      'contracts',
      'units',
      'domain',
      'estimating',
      'mip',
      'rules',
      'optimizer',
      'explain',
      'futures',
      'report',
    ],
    why: 'Use cases reach the outside through their ports only.',
  },
  contracts: {
    libs: ['units', 'domain'],
    packages: ['zod'],
    builtins: ['crypto'],
    why: 'The edge is parsed once, here, into the domain; a checksum of its text is all it may add.',
  },
  exchange: {
    libs: ['units', 'domain', 'contracts'],
    packages: [
      'csv-parse',
      'csv-stringify',
      'fflate',
      'ical-generator',
      'read-excel-file',
      'write-excel-file',
    ],
    builtins: true,
    why: 'A file format is translated to and from the contracts, and knows no plan logic.',
  },
  'solver-highs': {
    libs: ['mip'],
    packages: ['highs'],
    builtins: true,
    why: 'The solver can be replaced, so it sees the mathematical model only.',
  },
  'report-pdf': {
    libs: ['report', 'units'],
    packages: ['pdfkit', '@expo-google-fonts/'],
    builtins: true,
    why: 'It draws the document it is given and decides nothing in it.',
  },
  persistence: {
    libs: ['units', 'domain', 'contracts'],
    ports: true,
    packages: ['typeorm', 'pg', '@electric-sql/', 'reflect-metadata', 'pg-boss'],
    builtins: true,
    why: 'The store answers the ports of the use cases; a use case never sees it.',
  },
  solving: {
    libs: ['optimizer', 'futures', 'solver-highs', 'contracts'],
    typesOf: ['units', 'domain'],
    ports: true,
    packages: [],
    builtins: true,
    why: 'It runs the optimizer and the futures in threads and adds nothing to them.',
  },
};

exports.apps = {
  adapters: {
    libs: ['planning', 'contracts', ...ADAPTERS],
    typesOf: RESULTS,
    packages: [],
    builtins: true,
    why: 'It joins the ports to the libs that answer them, once for all programs that need it.',
  },
  api: {
    apps: ['adapters'],
    libs: ['planning', 'contracts', 'exchange', 'persistence', 'report-pdf'],
    typesOf: RESULTS,
    packages: [
      '@nestjs/',
      '@fastify/',
      'fastify',
      'rxjs',
      'reflect-metadata',
      'zod',
      'pg-boss',
      '@standard-schema/',
    ],
    builtins: true,
    why: 'It answers requests and never solves: a solve would block every request.',
  },
  solver: {
    apps: ['adapters'],
    libs: ['planning', 'contracts', ...ADAPTERS],
    typesOf: RESULTS,
    packages: ['pg-boss', 'reflect-metadata'],
    builtins: true,
    why: 'It wires the queue, the store and the solving threads together.',
  },
  cli: {
    apps: ['adapters'],
    libs: ['planning', 'contracts', ...ADAPTERS],
    typesOf: RESULTS,
    packages: ['commander'],
    builtins: true,
    why: 'It turns arguments into use cases and outcomes into text and exit codes.',
  },
  start: {
    apps: ['adapters'],
    libs: ['planning', 'contracts', ...ADAPTERS],
    typesOf: RESULTS,
    packages: [],
    builtins: true,
    why: 'It starts the other programs and talks to them as anyone would.',
  },
  web: {
    libs: ['contracts'],
    typesOf: RESULTS,
    packages: ['react', 'react-dom', 'openapi-fetch', 'vite', '@vitejs/'],
    builtins: true,
    why: 'The page knows the api and nothing behind it.',
  },
};

/** Packages that one lib owns, so that they can be replaced in one place. */
exports.owners = {
  highs: 'solver-highs',
  pdfkit: 'report-pdf',
  typeorm: 'persistence',
  pg: 'persistence',
  '@electric-sql/': 'persistence',
};
