import { plugin } from './shape-rules.js';

/** Sizes past which a file or a function hides what it does. */
export const shape = [
  {
    plugins: { shape: plugin },
    rules: {
      'max-lines': ['error', { max: 300 }],
      'max-lines-per-function': ['error', { max: 60 }],
      'shape/few-parameters': ['error', { max: 3 }],
      'shape/no-boolean-parameter': 'error',
    },
  },
  {
    files: ['**/*.data.ts', '**/seeds/**', '**/migrations/**'],
    rules: {
      'max-lines': 'off',
      'max-lines-per-function': 'off',
      'shape/few-parameters': 'off',
    },
  },
];
