import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';

const project = process.cwd();
const program = join(project, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
const config = join(project, '.config/dependency-cruiser.cjs');

interface Cruise {
  readonly summary: {
    readonly violations: readonly { readonly from: string; readonly rule: { name: string } }[];
  };
}

const SHARED = {
  'libs/units/cents.ts': 'export const one = 1;',
  'libs/domain/site.ts': "import { one } from '#units/cents.js';\nexport const site = one;",
  'libs/mip/term.ts': 'export const term = 1;',
  'libs/explain/next.ts': 'export interface Next { year: number }\nexport const next = 1;',
  'libs/planning/ports/store.ts': 'export const port = 1;',
  'libs/planning/use-cases/solve.ts': 'export const useCase = 1;',
  'libs/rules/owned/rows.ts': 'export const rows = 1;',
  'libs/rules/owned/words.ts': "import { rows } from './rows.js';\nexport const words = rows;",
  'libs/solving/run.ts': 'export const run = 1;',
  'apps/adapters/wire.ts': "import { run } from '#solving/run.js';\nexport const wire = run;",
  'apps/start/main.ts': 'export const start = 1;',
};

/** Breaches in a project made of the shared files and these, as `file: rule`. */
function breachesOf(planted: Readonly<Record<string, string>>): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'fence-'));
  try {
    symlinkSync(join(project, 'node_modules'), join(folder, 'node_modules'));
    cpSync(join(project, 'tsconfig.json'), join(folder, 'tsconfig.json'));
    cpSync(join(project, 'package.json'), join(folder, 'package.json'));
    for (const [path, text] of Object.entries({ ...SHARED, ...planted })) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    return cruise(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function cruise(folder: string): string[] {
  const args = [program, '--config', config, '--output-type', 'json', 'libs', 'apps'];
  const { stdout, stderr } = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' });
  if (stdout === '') throw new Error(stderr);
  const { violations } = (JSON.parse(stdout) as Cruise).summary;
  return [...new Set(violations.map(({ from, rule }) => `${from}: ${rule.name}`))];
}

const using = (name: string, from: string): string =>
  `import { ${name} } from '${from}';\n${name};`;

test('imports that the table allows pass the fence', () => {
  const found = breachesOf({
    'libs/rules/owned/check.ts': using('site', '#domain/site.js'),
    'libs/persistence/store.ts': using('port', '#planning/ports/store.js'),
    'libs/persistence/entity.ts': using('Entity', 'typeorm'),
    'libs/solver-highs/solve.ts': using('term', '#mip/term.js'),
    'libs/report/inline.ts': "import { type Next } from '#explain/next.js';\nexport type Z = Next;",
    'libs/report/brief.ts': "import type { Next } from '#explain/next.js';\nexport type Y = Next;",
    'libs/contracts/digest.ts': using('createHash', 'node:crypto'),
    'apps/api/main.ts': using('Injectable', '@nestjs/common'),
    'apps/cli/solve.ts': using('wire', '../adapters/wire.js'),
    'apps/cli/main.ts': using('run', '#solving/run.js'),
  });
  expect(found).toEqual([]);
});

const FORBIDDEN: readonly [path: string, text: string, rule: string][] = [
  ['libs/units/a.ts', using('site', '#domain/site.js'), 'libs/units-files'],
  ['libs/mip/a.ts', using('one', '#units/cents.js'), 'libs/mip-files'],
  [
    'libs/domain/a.ts',
    "import type { x } from '#mip/term.js';\nexport type y = x;",
    'libs/domain-files',
  ],
  ['libs/domain/b.ts', using('z', 'zod'), 'libs/domain-packages'],
  ['libs/estimating/a.ts', using('readFileSync', 'node:fs'), 'libs/estimating-builtins'],
  ['libs/contracts/a.ts', using('readFileSync', 'node:fs'), 'libs/contracts-builtins'],
  ['libs/planning/a.ts', using('run', '#solving/run.js'), 'libs/planning-files'],
  ['libs/solving/a.ts', using('useCase', '#planning/use-cases/solve.js'), 'libs/solving-files'],
  ['libs/solving/b.ts', using('highs', 'highs'), 'highs-only-in-solver-highs'],
  ['libs/report/a.ts', using('PDFDocument', 'pdfkit'), 'pdfkit-only-in-report-pdf'],
  ['libs/report/b.ts', using('next', '#explain/next.js'), 'libs/report-types'],
  ['apps/api/a.ts', using('Client', 'pg'), 'pg-only-in-persistence'],
  ['apps/api/b.ts', using('PGlite', '@electric-sql/pglite'), 'electricsql-only-in-persistence'],
  ['apps/api/c.ts', using('run', '#solving/run.js'), 'apps/api-files'],
  ['apps/api/d.ts', using('wire', '../adapters/wire.js'), 'api-never-solves'],
  ['apps/api/e.ts', using('start', '../start/main.js'), 'apps/api-files'],
  ['apps/web/a.tsx', using('useCase', '#planning/use-cases/solve.js'), 'apps/web-files'],
  ['apps/cli/a.ts', using('x', '#apps/api/main.js'), 'import-leads-nowhere'],
  ['apps/cli/b.ts', using('z', 'zod'), 'apps/cli-packages'],
  ['libs/novel/a.ts', using('one', '#units/cents.js'), 'folder-not-in-the-table'],
  ['libs/rules/owned/check.ts', using('term', '#mip/term.js'), 'checker-stays-independent'],
  ['libs/rules/other/check.ts', using('words', '../owned/words.js'), 'checker-stays-independent'],
  ['libs/units/cents.ts', using('two', './two.js'), 'no-circular-imports'],
];

test('every forbidden import is caught, each by its own rule', () => {
  const planted = FORBIDDEN.map(([path, text]) => [path, text] as const);
  const found = breachesOf({
    ...Object.fromEntries(planted),
    'libs/units/two.ts': "import './cents.js';\nexport const two = 2;",
  });
  expect(found).toEqual(
    expect.arrayContaining(FORBIDDEN.map(([path, , rule]) => `${path}: ${rule}`)),
  );
});
