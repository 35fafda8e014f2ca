import js from '@eslint/js';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';
import { pureCore } from './eslint/pure-core.js';
import { noFocusedTests } from './eslint/tests.js';
import { shape } from './eslint/shape.js';

const root = new URL('..', import.meta.url).pathname;

export default defineConfig(
  {
    ignores: [
      ...['dist/', 'node_modules/', '.data/', '.out/', 'coverage/'],
      // Generated, and held to the api by a test.
      'apps/web/client/openapi.data.ts',
    ],
  },
  {
    files: ['{apps,libs,tests}/**/*.{ts,tsx}', '.config/vitest.config.ts'],
    extends: [js.configs.recommended, ...tseslint.configs.recommendedTypeChecked, shape],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: root } },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      // An implementation of an asynchronous port need not wait for anything.
      '@typescript-eslint/require-await': 'off',
      // The readers of outside files must name control characters to refuse them.
      'no-control-regex': 'off',
      eqeqeq: 'error',
      'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx', 'hack'] }],
    },
  },
  {
    files: ['apps/api/**', 'libs/persistence/**'],
    rules: {
      // Injection and entities read the class from decorator metadata, which a type import erases.
      '@typescript-eslint/consistent-type-imports': 'off',
    },
  },
  {
    files: ['libs/**'],
    rules: { 'no-console': 'error' },
  },
  pureCore,
  {
    files: ['tests/**'],
    extends: [noFocusedTests],
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/unbound-method': 'off',
      // A test reads a reply or a file as it comes, and its expectation is what checks the shape.
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
    },
  },
  {
    files: ['{.config,.ci}/**/*.{js,mjs,cjs}'],
    extends: [js.configs.recommended, tseslint.configs.disableTypeChecked],
    languageOptions: {
      globals: {
        Buffer: 'readonly',
        URL: 'readonly',
        console: 'readonly',
        performance: 'readonly',
        process: 'readonly',
      },
    },
  },
  {
    files: ['.config/**/*.cjs'],
    languageOptions: {
      sourceType: 'commonjs',
      globals: { __dirname: 'readonly' },
    },
  },
);
