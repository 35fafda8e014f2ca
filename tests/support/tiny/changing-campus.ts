import type { Campus } from '#domain/campus.js';
import type { LaterChange } from '#domain/later-change.js';
import type { ConstructionConflict } from '#domain/site.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { tinyCampus, tinySite } from './tiny-campus.js';

const INVENTED = { basis: 'judgement', source: 'invented for a test' } as const;

export const TO_BEDS: LaterChange = {
  id: 'to-beds',
  name: 'Beds in place of fruit',
  buildType: 'beds',
  from: ['fruit'],
  ages: [5, 8],
  costPerSqFt: cents(1_50),
  hoursPer1000SqFt: 12,
  provenance: INVENTED,
};

export const TO_LAWN: LaterChange = {
  id: 'to-lawn',
  name: 'Back to lawn',
  from: 'any',
  ages: [5],
  costPerSqFt: cents(80),
  hoursPer1000SqFt: 6,
  provenance: INVENTED,
};

/** Works on site A whose certainty lies below the campus's threshold. */
export const UNSURE_WORKS: ConstructionConflict = {
  id: 'w',
  name: 'Tunnel',
  kind: 'footprint',
  sites: ['A'],
  from: fiscalYear(2032),
  to: fiscalYear(2033),
  certaintyPercent: 40,
  source: 'a test',
};

/** One site of the tiny campus that may be built in halves, changed later, and taken by unsure works. */
export function changingCampus(change: Partial<Campus> = {}): Campus {
  const base = tinyCampus();
  return tinyCampus({
    candidates: [
      tinySite('A', { phasing: { mostYearsApart: 1 }, laterChanges: ['to-beds', 'to-lawn'] }),
    ],
    laterChanges: [TO_BEDS, TO_LAWN],
    benefit: { ...base.benefit, pointsPer1000Stranded: 1 },
    ...change,
  });
}
