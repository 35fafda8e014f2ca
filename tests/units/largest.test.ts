import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Largest } from '#units/largest.js';

test('of any offers, those of the largest keys are kept in order, the earlier of two alike first', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(9)), fc.integer({ min: 1, max: 6 }), (keys, most) => {
      const largest = new Largest<number>(most);
      keys.forEach((key, place) => largest.offer(place, key));
      const places = [...keys.keys()].sort((a, b) => (keys[b] ?? 0) - (keys[a] ?? 0));
      expect(largest.items).toEqual(places.slice(0, most));
    }),
  );
});

test('the bar is the least key that is kept, once there is no more room', () => {
  const largest = new Largest<string>(2);
  expect(largest.bar).toBe(-Infinity);
  largest.offer('a', 5);
  expect(largest.bar).toBe(-Infinity);
  largest.offer('b', 3);
  expect(largest.bar).toBe(3);
  largest.offer('c', 4);
  expect(largest.bar).toBe(4);
});
