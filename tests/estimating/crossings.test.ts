import { describe, expect, test } from 'vitest';
import type { Position } from '#domain/site.js';
import { crossingEdges } from '#estimating/geometry/crossings.js';

describe('edges that meet', () => {
  test('a corner laid on another edge', () => {
    const touching: Position[] = [
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 0],
      [0, 4],
      [0, 0],
    ];
    expect(crossingEdges(touching)).toEqual([0, 2]);
  });

  test('an edge that runs back over its neighbor', () => {
    expect(
      crossingEdges([
        [0, 0],
        [4, 0],
        [2, 0],
        [2, 4],
        [0, 0],
      ]),
    ).toEqual([0, 1]);
    expect(
      crossingEdges([
        [0, 0],
        [4, 0],
        [4, 4],
        [0, 4],
        [0, -2],
        [0, 0],
      ]),
    ).toEqual([0, 3]);
    expect(
      crossingEdges([
        [2, 0],
        [4, 0],
        [4, 4],
        [0, 0],
        [3, 0],
        [2, 0],
      ]),
    ).not.toBeUndefined();
  });

  test('a straight corner is no crossing', () => {
    expect(
      crossingEdges([
        [0, 0],
        [2, 0],
        [4, 0],
        [4, 4],
        [0, 4],
        [0, 2],
        [0, 0],
      ]),
    ).toBeUndefined();
  });

  test('an open ring is taken as closed, and repeated positions as one', () => {
    expect(
      crossingEdges([
        [0, 0],
        [4, 0],
        [4, 4],
        [0, 4],
      ]),
    ).toBeUndefined();
    expect(
      crossingEdges([
        [0, 0],
        [0, 0],
        [4, 0],
        [4, 4],
        [4, 4],
        [0, 4],
        [0, 0],
      ]),
    ).toBeUndefined();
    expect(
      crossingEdges([
        [0, 0],
        [4, 4],
        [4, 0],
        [0, 4],
      ]),
    ).toEqual([0, 2]);
  });

  test('edges in line but apart do not meet', () => {
    const comb: Position[] = [
      [0, 0],
      [2, 0],
      [2, 1],
      [4, 1],
      [4, 0],
      [6, 0],
      [6, 3],
      [0, 3],
      [0, 0],
    ];
    expect(crossingEdges(comb)).toBeUndefined();
  });

  test('the last edge may cross any other', () => {
    const ring: Position[] = [
      [0, 0],
      [6, 0],
      [6, 6],
      [-2, 3],
      [4, 6],
      [0, 0],
    ];
    expect(crossingEdges(ring)).toEqual([2, 4]);
  });

  test('two stretches along one line that overlap are told by the edge that leaves the line', () => {
    const along: Position[] = [
      [0, 0],
      [4, 0],
      [4, 3],
      [8, 3],
      [8, 0],
      [6, 0],
      [2, 0],
      [2, -3],
      [0, -3],
      [0, 0],
    ];
    expect(crossingEdges(along)).not.toBeUndefined();
  });

  test('corners that touch at a point', () => {
    const pinched: Position[] = [
      [0, 0],
      [4, 0],
      [2, 2],
      [4, 4],
      [0, 4],
      [2, 2],
      [0, 0],
    ];
    expect(crossingEdges(pinched)).not.toBeUndefined();
  });

  test('a shape that only nearly folds back is sound', () => {
    const thin: Position[] = [
      [0, 0],
      [4, 0],
      [4, 1],
      [0, 0.5],
      [0, 0],
    ];
    expect(crossingEdges(thin)).toBeUndefined();
    const upright = thin.map(([x, y]): Position => [y, x]);
    expect(crossingEdges(upright)).toBeUndefined();
  });
});
