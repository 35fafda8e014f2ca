import { ESLint } from 'eslint';
import tseslint from 'typescript-eslint';
import { beforeAll, expect, test } from 'vitest';

let eslint: ESLint;

beforeAll(() => {
  // Planted code is in no project, so the type-aware rules are left to `npm run lint`.
  const overrideConfig = tseslint.configs.disableTypeChecked;
  eslint = new ESLint({ overrideConfigFile: '.config/eslint.config.js', overrideConfig });
});

/** Rules that untyped linting of a planted file breaks. */
async function broken(filePath: string, code: string): Promise<(string | null)[]> {
  const [result] = await eslint.lintText(code, { filePath });
  return [...new Set(result!.messages.map(({ ruleId }) => ruleId))];
}

const lines = (count: number): string => 'void 0;\n'.repeat(count);

test.each([
  ['libs/rules/a.ts', 'export const now = Date.now();', 'no-restricted-properties'],
  ['libs/units/a.ts', 'export const now = new Date();', 'no-restricted-syntax'],
  ['libs/futures/a.ts', 'export const chance = Math.random();', 'no-restricted-properties'],
  ['libs/optimizer/a.ts', "export const home = process.env['HOME'];", 'no-restricted-globals'],
  ['libs/persistence/a.ts', "console.log('saved');", 'no-console'],
  ['libs/units/a.ts', lines(301), 'max-lines'],
  ['libs/units/a.ts', `export function long(): void {\n${lines(60)}}`, 'max-lines-per-function'],
  [
    'libs/units/a.ts',
    'export const f = (a = 1, b = 2, c = 3, d = 4) => a + b + c + d;',
    'shape/few-parameters',
  ],
  [
    'apps/cli/a.ts',
    'export function save(over: boolean) { return over; }',
    'shape/no-boolean-parameter',
  ],
  ['tests/units/a.test.ts', "test.only('x', () => {});", 'no-restricted-syntax'],
  ['tests/units/a.test.ts', "describe.skip.each([1])('x', () => {});", 'no-restricted-syntax'],
  ['tests/units/a.test.ts', "it.todo('x');", 'no-restricted-syntax'],
])('the lint refuses what it should in %s', async (path, code, rule) => {
  expect(await broken(path, code)).toContain(rule);
});

test.each([
  ['libs/units/a.ts', "export const day = new Date('2035-07-01');"],
  ['libs/estimating/a.data.ts', lines(301)],
  ['apps/api/a.ts', 'export const now = Date.now();'],
  [
    'apps/api/a.ts',
    '@Injectable()\nexport class A { constructor(a: B, b: C, c: D, d: E) { void [a, b, c, d]; } }',
  ],
  ['tests/units/a.test.ts', "test.each([[1, 2, 3, 4]])('x', (a, b, c, d) => [a, b, c, d]);"],
])('the lint lets pass what it should in %s', async (path, code) => {
  const sized = ['no-restricted', 'max-lines', 'shape/', 'no-console'];
  const found = await broken(path, code);
  expect(found.filter((rule) => sized.some((head) => rule?.startsWith(head)))).toEqual([]);
});
