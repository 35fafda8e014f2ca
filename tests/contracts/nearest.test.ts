import { expect, test } from 'vitest';
import { nearestOf } from '#contracts/reading/nearest.js';

test('the nearest names come first, in whatever case, and ties as they came', () => {
  const names = ['Far away', 'LF-02', 'LF-12', 'LF-01'];
  expect(nearestOf('lf-1', names, 3)).toEqual(['LF-12', 'LF-01', 'LF-02']);
  expect(nearestOf('x', [], 3)).toEqual([]);
});
