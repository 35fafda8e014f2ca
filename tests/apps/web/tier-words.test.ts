import { expect, test } from 'vitest';
import { tierInWords } from '#apps/web/format/tier-words.js';

test('an aim is told in words, a promise by its name and not its id', () => {
  const promises = [{ id: 'site-a-year', name: 'One new site each year' }];
  expect(tierInWords('commitment:site-a-year', promises)).toBe(
    'Shortfall of the promise “One new site each year”',
  );
  expect(tierInWords('unserved-peak', promises)).toBe('Care left undone in the worst season');
});
