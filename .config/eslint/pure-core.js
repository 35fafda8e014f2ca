const CLOCK = 'The pure core takes the date, the elapsed time or the year as an argument.';
const CHANCE = 'The pure core takes its seed as an argument, so that a plan can be repeated.';
const MACHINE = 'The pure core takes settings as arguments and leaves the machine alone.';

/** Libs whose outcome depends on their arguments alone. */
const PURE_LIBS =
  'libs/{units,domain,estimating,mip,rules,optimizer,explain,futures,report}/**/*.{ts,tsx}';

const global = (name, message) => ({ name, message });
const property = (object, name, message) => ({ object, property: name, message });

export const pureCore = {
  files: [PURE_LIBS],
  rules: {
    'no-restricted-globals': [
      'error',
      global('process', MACHINE),
      global('performance', CLOCK),
      global('fetch', MACHINE),
      global('crypto', CHANCE),
      global('setTimeout', CLOCK),
      global('setInterval', CLOCK),
      global('globalThis', MACHINE),
    ],
    'no-restricted-properties': [
      'error',
      property('Date', 'now', CLOCK),
      property('Math', 'random', CHANCE),
    ],
    'no-restricted-syntax': [
      'error',
      { selector: 'NewExpression[callee.name="Date"][arguments.length=0]', message: CLOCK },
      { selector: 'CallExpression[callee.name="Date"]', message: CLOCK },
    ],
  },
};
