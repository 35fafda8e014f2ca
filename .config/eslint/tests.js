const AWAY = 'A test runs or is removed; what a machine lacks is listed in tests/support/needs.ts.';

/** `test.only`, `describe.skip.each`, `it.todo` and the like, at any depth of the chain. */
const FOCUSED = [
  'MemberExpression[object.name=/^(it|test|describe)$/]',
  '[property.name=/^(only|skip|todo|skipIf|runIf|fails)$/]',
].join('');

export const noFocusedTests = {
  rules: {
    'no-restricted-syntax': [
      'error',
      { selector: FOCUSED, message: AWAY },
      {
        selector: 'CallExpression[callee.name=/^(xit|xtest|xdescribe|fit|fdescribe)$/]',
        message: AWAY,
      },
    ],
    // Titles and cases of one story belong in one describe, however many there are.
    'max-lines-per-function': 'off',
  },
};
