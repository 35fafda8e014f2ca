import { describe, expect, test } from 'vitest';
import type { Ending, TierResult } from '#domain/tier.js';
import { solveSentence } from '#explain/overview/solve-sentence.js';
import { smallCampus } from '../support/small-campus.js';

const campus = smallCampus();
const PROVEN: TierResult = {
  name: 'unserved-peak',
  unit: 'hours',
  sense: 'min',
  value: 0,
  bound: 0,
  gap: 0,
  tolerance: 0.01,
  proven: true,
};
const BENEFIT: TierResult = {
  name: 'benefit',
  unit: 'points',
  sense: 'max',
  value: 2000,
  bound: 2042,
  gap: 0.021,
  tolerance: 0.0001,
  proven: false,
};

function sentence(ending: Ending, tiers: readonly TierResult[]): string {
  return solveSentence(campus, { ending, tiers, conflict: [] });
}

describe('how near to proven a plan is', () => {
  test('proven', () => {
    expect(sentence('proven', [PROVEN, { ...BENEFIT, bound: 2000, gap: 0, proven: true }])).toBe(
      'Proven: no plan does better on any aim, up to and with benefit.',
    );
  });

  test('within a share, where only benefit is open', () => {
    expect(sentence('time-limit', [PROVEN, BENEFIT])).toBe(
      'Stopped by its time limit within 2.1% of proven: all aims before benefit are proven.',
    );
  });

  test('never within a share, where an earlier aim is open', () => {
    const steady = { name: 'commitment:steady', unit: 'sites', value: 3, bound: 1, proven: false };
    expect(sentence('work-limit', [{ ...PROVEN, ...steady, gap: 2 / 3 }, BENEFIT])).toBe(
      'Stopped by its work limit; not proven: shortfall of “A site every year”, 3 sites here; at best 1 site.',
    );
  });

  test('a tiny gap is not called none', () => {
    expect(sentence('cancelled', [PROVEN, { ...BENEFIT, gap: 0.0004 }])).toContain(
      'Stopped by hand within less than 0.1% of proven',
    );
  });

  test('a missing bound is said', () => {
    expect(sentence('time-limit', [PROVEN, { ...BENEFIT, bound: null, gap: null }])).toContain(
      'is not known',
    );
    expect(sentence('time-limit', [])).toContain('is not known');
  });
});
