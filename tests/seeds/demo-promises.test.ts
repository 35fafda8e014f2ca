import { describe, expect, test } from 'vitest';
import type { Commitment } from '#domain/commitment.js';
import { demo, DEMO_NAMES, type DemoName } from '../support/seeds/demos.js';

describe('what is promised', () => {
  const strengths = (name: DemoName): Record<string, string> =>
    Object.fromEntries(demo(name).campus.commitments.map((c) => [c.id, c.strength]));
  const held = (name: DemoName, id: string): Commitment['test'] =>
    demo(name).campus.commitments.find((c) => c.id === id)!.test;

  test('strained: two sites and the position freeze bind, the yearly site is intended', () => {
    expect(strengths('strained')).toEqual({
      'reunion-site': 'binding',
      'faculty-plot': 'binding',
      'position-freeze': 'binding',
      'site-a-year': 'intended',
      'no-summer-gaps': 'intended',
      'kitchen-memo': 'intended',
      'student-poll': 'aspiration',
      'zone-balance': 'aspiration',
      'four-acres': 'aspiration',
    });
    expect(held('strained', 'four-acres')).toMatchObject({ sqFt: 174_240, by: 2050 });
  });

  test('impossible: a site a year, no positions before FY41, all food and no hour unserved bind', () => {
    expect(strengths('impossible')).toMatchObject({
      'site-a-year': 'binding',
      'position-freeze': 'binding',
      'all-food': 'binding',
      'no-summer-gaps': 'binding',
    });
    expect(held('impossible', 'position-freeze')).toMatchObject({ year: 2041 });
  });

  test('impossible: land alone does not decide it, more sites may grow food than are promised', () => {
    const { campus } = demo('impossible');
    const promise = held('impossible', 'site-a-year');
    const food = new Set(campus.buildTypes.filter((t) => t.edible).map((t) => t.id));
    if (promise.kind !== 'sites-each-year') throw new Error('not a promise of sites');
    const fitting = campus.candidates.filter(
      (site) =>
        site.areaSqFt >= promise.countsFromSqFt &&
        site.buildTypes.some((t) => food.has(t)) &&
        !site.gates.some((g) => g.status === 'fail' && g.bars !== 'all' && g.bars === 'edible'),
    );
    expect(fitting.length).toBeGreaterThan(promise.to - promise.from + 1);
  });

  test.each(DEMO_NAMES)('%s: the two binding sites have a year that is open and not too late', (name) => {
    const { campus } = demo(name);
    for (const id of ['reunion-site', 'faculty-plot']) {
      const promise = held(name, id);
      if (promise.kind !== 'named-site') throw new Error(`${id} names no site`);
      const site = campus.candidates.find((s) => s.id === promise.site)!;
      const open = site.gates.every(
        (g) => g.status === 'pass' || (g.plannedClearFrom ?? Infinity) <= promise.by,
      );
      expect(open, site.id).toBe(true);
      expect(site.buildTypes).toEqual(expect.arrayContaining([...promise.buildTypes]));
    }
  });
});
