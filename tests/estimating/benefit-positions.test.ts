/** Weights of positions; the expected points are worked out by hand from the tiny campus. */
import { describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { pointsPerYear } from '#estimating/benefit-points/benefit-points.js';
import { positionsOf, takePosition } from '#estimating/benefit-points/positions.js';
import { tinyCampus } from '../support/tiny/tiny-campus.js';

const campus = tinyCampus();
const [site] = campus.candidates;
const [beds, fruit] = campus.buildTypes;

function taken(id: string, of: Campus = campus): Campus {
  const found = takePosition(of, id);
  if ('reason' in found) throw new Error(found.reason);
  return found;
}

const weights = (of: Campus) =>
  Object.fromEntries(of.benefit.criteria.map((c) => [c.id, c.weight]));

describe('Positions on benefit', () => {
  test('kitchen first gives food half of the points, and the rest the other half', () => {
    expect(weights(taken('kitchen-first'))).toEqual({ food: 50, area: 50 });
  });

  test('least care counts the hours avoided against the type with most care', () => {
    const light = taken('least-care');
    // half of 100 points, the other half shared 60 : 40
    expect(weights(light)).toEqual({ 'care-avoided': 50, area: 30, food: 20 });
    // beds: 15 h settled per 1,000 sf; fruit: 15 h and 5 h of harvest. On 5,000 sf beds avoid 25 h;
    // the reference is 10,000 sf of fruit, 200 h; the whole 5,000 sf is the reference of area.
    const points = pointsPerYear(light, site!, beds!);
    expect(points).toBeCloseTo(50 * (25 / 200) + 30, 2);
    expect(pointsPerYear(light, site!, fruit!)).toBeCloseTo(30 + 20, 2);
  });

  test('taken after another one, a position starts from the weights of the file', () => {
    expect(weights(taken('kitchen-first', taken('least-care')))).toEqual({ food: 50, area: 50 });
  });

  test('what no criterion of the campus measures cannot come first', () => {
    expect(positionsOf(campus)).toEqual(['kitchen-first', 'least-care']);
    expect(takePosition(campus, 'teaching-first')).toHaveProperty('reason');
    expect(takePosition(campus, 'beauty-first')).toHaveProperty('reason');
  });

  test('a position of the campus itself has the weights that it states, none where it states none', () => {
    const positions = [{ id: 'lawn', name: 'Lawn', weights: { area: 100 } }];
    const own = { ...campus, benefit: { ...campus.benefit, positions } };
    expect(weights(taken('lawn', own))).toEqual({ area: 100, food: 0 });
    expect(positionsOf(own)[0]).toBe('lawn');
  });

  test('what it puts first shares half of the points, evenly where the file gives it none', () => {
    const [area] = campus.benefit.criteria;
    const criteria = [
      { ...area!, id: 'lessons', measure: 'teaching' as const, weight: 0 },
      { ...area!, id: 'walkers', measure: 'walkers-per-day' as const, weight: 0 },
      { ...area!, id: 'area', weight: 100 },
      { ...area!, id: 'spare', weight: 0 },
    ];
    const of = { ...campus, benefit: { ...campus.benefit, criteria } };
    const first = { lessons: 25, walkers: 25 };
    expect(weights(taken('teaching-first', of))).toEqual({ ...first, area: 50, spare: 0 });
    const rest = criteria.map((c) => ({ ...c, weight: c.id === 'lessons' ? 100 : 0 }));
    const alone = { ...campus, benefit: { ...campus.benefit, criteria: rest } };
    expect(weights(taken('teaching-first', alone))).toEqual({
      lessons: 100,
      walkers: 0,
      area: 0,
      spare: 0,
    });
  });

  test('care avoided is measured as the campus states it, or else where there is care at all', () => {
    const [area] = campus.benefit.criteria;
    const criteria = [
      area!,
      { ...area!, id: 'ease', measure: 'care-avoided' as const, weight: 40 },
    ];
    const of = { ...campus, benefit: { ...campus.benefit, criteria } };
    expect(weights(taken('least-care', of))).toEqual({ ease: 50, area: 50 });
    const bare = tinyCampus({ buildTypes: [] });
    expect(positionsOf(bare)).toEqual(['kitchen-first']);
    expect(takePosition(bare, 'least-care')).toHaveProperty('reason');
    const made = taken('least-care').benefit.criteria.find(({ id }) => id === 'care-avoided');
    expect(made).toMatchObject({ whenUnknown: 0, provenance: { basis: 'judgement' } });
  });

  test('each position of the campus has its own weights', () => {
    const positions = [
      { id: 'lawn', name: 'Lawn', weights: { area: 100 } },
      { id: 'pantry', name: 'Pantry', weights: { food: 100 } },
    ];
    const own = { ...campus, benefit: { ...campus.benefit, positions } };
    expect(weights(taken('pantry', own))).toEqual({ area: 0, food: 100 });
    expect(weights(taken('kitchen-first', own))).toEqual({ area: 50, food: 50 });
  });
});
