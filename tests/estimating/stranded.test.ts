/** Capital that works are expected to waste, worked out by hand from $40,000 and seven payback years. */
import { describe, expect, test } from 'vitest';
import type { LaterChange } from '#domain/later-change.js';
import type { Placement } from '#domain/plan.js';
import type { ConstructionConflict } from '#domain/site.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { strandedCost, strandedOf } from '#estimating/site-charges/stranded.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { works } from '../support/tiny/works.js';
import { tinyCampus } from '../support/tiny/tiny-campus.js';

const campus = tinyCampus();
const placed: Placement = { site: 'A', buildType: 'beds', year: fiscalYear(2028) };

describe('Capital that works waste', () => {
  const capital = 5000 * 8_00;
  const stranding = (
    construction: ConstructionConflict[],
    placement: Placement = placed,
    laterChanges: LaterChange[] = [],
  ) => {
    const of = tinyCampus({ construction, laterChanges });
    return strandedCost(of, campusCharges(of).parts(placement));
  };

  test('is the unused share of seven payback years, as far as the works are sure', () => {
    expect(stranding([works('hall', 2029)])).toBe(Math.round((capital * 6) / 7));
    expect(stranding([works('hall', 2034, { certaintyPercent: 40 })])).toBe(
      Math.round((capital / 7) * 0.4),
    );
    expect(stranding([works('hall', 2035)])).toBe(0);
    expect(stranding([works('hall', 2036)])).toBe(0);
    expect(stranding([])).toBe(0);
    const paid = tinyCampus({ construction: [works('hall', 2035)] });
    expect(strandedOf(paid, campusCharges(paid).parts(placed))).toEqual([]);
  });

  test('names the works', () => {
    const of = tinyCampus({ construction: [works('hall', 2030)] });
    expect(strandedOf(of, campusCharges(of).parts(placed))).toEqual([
      { works: works('hall', 2030), amount: Math.round((capital * 5) / 7) },
    ]);
  });

  test('of two halves adds up, each by the years that it stood', () => {
    const halves = { ...placed, secondHalf: fiscalYear(2030) };
    const half = capital / 2;
    expect(
      campusCharges(campus)
        .parts(halves)
        .map(({ share }) => share),
    ).toEqual([0.5, 0.5]);
    expect(stranding([works('hall', 2031)], halves)).toBe(
      Math.round((half * 4) / 7) + Math.round((half * 6) / 7),
    );
  });

  test('is none where the site was returned to lawn before the works, or had stood already', () => {
    const lawn: LaterChange = {
      id: 'lawn',
      name: 'Lawn',
      from: 'any',
      ages: [5],
      costPerSqFt: cents(0),
      hoursPer1000SqFt: 0,
      provenance: { basis: 'judgement', source: 'invented for a test' },
    };
    // Returned in spring FY33, index 23; works of FY34 begin after it, of FY33 before it.
    const returned: Placement = { ...placed, change: { id: 'lawn', age: 5 } };
    expect(stranding([works('hall', 2034)], returned, [lawn])).toBe(0);
    expect(stranding([works('hall', 2033)], returned, [lawn])).toBe(Math.round((capital * 2) / 7));
    const of = tinyCampus({ construction: [works('hall', 2029)] });
    const [part] = campusCharges(of).parts(placed);
    const { prepared: _, ...life } = part!.life;
    expect(strandedCost(of, [{ ...part!, life }])).toBe(0);
  });
});
