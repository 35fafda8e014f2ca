import { describe, expect, test } from 'vitest';
import type { MeasuredValue } from '#domain/measured.js';
import {
  coefficient,
  coefficientNode,
  defaultRow,
  overrideFindings,
  typical,
} from '#estimating/defaults/coefficients.js';
import { type DefaultKey, DEFAULTS } from '#estimating/defaults/defaults.data.js';
import { inputFindings } from '#estimating/defaults/input-findings.js';
import { INPUT_RANGES } from '#estimating/defaults/input-ranges.data.js';
import type { DefaultRow } from '#estimating/defaults/row.js';
import { overridesAt } from '#estimating/defaults/overrides-at.js';
import { tinySite } from '../support/tiny/tiny-campus.js';
import { LOCKED_DEFAULTS } from './defaults.locked.data.js';

const ROWS = Object.entries(DEFAULTS) as [DefaultKey, DefaultRow][];

describe('defaults table', () => {
  test('changes only where its locked copy is changed too', () => {
    const lines = ROWS.map(
      ([key, r]) =>
        `${key} | ${r.unit} | ${r.low} ${r.typical} ${r.high} | ${r.possible.join(' ')} | ${r.basis} ${r.year}`,
    );
    expect(lines.join('\n')).toBe(LOCKED_DEFAULTS.trim());
  });

  test.each(ROWS)('%s is in order and names its source', (_, row) => {
    const [least, most] = row.possible;
    expect([least, row.low, row.typical, row.high, most]).toEqual(
      [least, row.low, row.typical, row.high, most].sort((a, b) => a - b),
    );
    expect(row.source.length).toBeGreaterThan(10);
    expect(row.unit).not.toBe('');
    expect(row.year).toBeLessThanOrEqual(2026);
    expect(/no published/.test(row.source)).toBe(row.basis !== 'published');
  });

  test('season shares of a year total 1', () => {
    const total = (prefix: string): number =>
      (['summer', 'fall', 'winter', 'spring'] as const)
        .map((season) => typical(`${prefix}${season}` as DefaultKey))
        .reduce((a, b) => a + b, 0);
    expect(total('season.')).toBeCloseTo(1, 12);
    expect(total('season.annual-bed.')).toBeCloseTo(1, 12);
  });

  test('sources that were not read again say so', () => {
    for (const key of [
      'money.real-discount',
      'cost.class-5-low',
      'mowing.carbon',
      'money.prudent-payout',
    ] as const) {
      expect(defaultRow(key).source).toContain('from memory');
    }
    expect(defaultRow('gate.lead-screening').source).toBe(
      'EPA Residential Lead Directive, 16 October 2025',
    );
  });
});

describe('a campus value', () => {
  const own = {
    'density.compost': { value: 1150, basis: 'measured', source: 'scale ticket 14' },
  } as const;

  test('goes before the default', () => {
    expect(coefficient('density.compost')).toBe(1000);
    expect(coefficient('density.compost', own)).toBe(1150);
    expect(coefficient('density.wood-chips', own)).toBe(500);
  });

  test('is named with its basis, as the default is with its source', () => {
    expect(coefficientNode('density.compost', own)).toEqual({
      name: 'density.compost',
      value: 1150,
      unit: 'lb/cu yd',
      formula: 'campus value',
      source: 'measured: scale ticket 14',
      inputs: [],
    });
    expect(coefficientNode('density.compost')).toMatchObject({
      value: 1000,
      formula: 'default, 800 to 1400',
      source: 'published: Deschutes Recycling: finished compost 1,000-1,200 lb/cu yd (2026)',
    });
  });

  test('is warned about outside low to high and rejected where it cannot be', () => {
    const judge = (value: number): string =>
      overrideFindings({ 'density.compost': { ...own['density.compost'], value } })
        .map((f) => `${f.severity} ${f.field}: ${f.problem}. ${f.remedy}`)
        .join();
    expect(judge(1150)).toBe('');
    expect(judge(1500)).toBe(
      'warn density.compost: 1500 lb/cu yd is unusual: expected 800 to 1400 lb/cu yd. Check the value and its unit (lb/cu yd); the default is 1000.',
    );
    expect(judge(2300)).toContain(
      'reject density.compost: 2300 lb/cu yd cannot be right: expected 300 to 2200',
    );
    expect(overrideFindings({})).toEqual([]);
  });
});

describe('typed values', () => {
  const word = (findings: readonly { severity: string }[]): string =>
    findings[0]?.severity ?? 'pass';

  /** field: least possible, least plausible, most plausible, most possible. */
  const BOUNDS = {
    areaSqFt: [1, 500, 60_000, 5_000_000],
    depthInches: [0, 0.5, 12, 36],
    haulFeet: [0, 0, 600, 10_000],
    slopePercent: [0, 0, 25, 200],
    ph: [2, 4.5, 8.5, 12],
    organicMatterPercent: [0, 1, 10, 100],
    leadMgPerKg: [0, 5, 2_000, 200_000],
    penetrometerPsi: [0, 100, 500, 2_000],
    infiltrationInchesPerHour: [0, 0.05, 6, 60],
    sunHours: [0, 2, 12, 24],
    walkersPerDay: [0, 0, 10_000, 200_000],
    trunkInches: [0.5, 2, 60, 300],
    rainInches: [0, 0, 10, 80],
    signUps: [0, 0, 200, 5_000],
  };

  test('every field has its bounds, and each bound is included', () => {
    expect(Object.keys(INPUT_RANGES)).toEqual(Object.keys(BOUNDS));
    for (const [field, [least, low, high, most]] of Object.entries(BOUNDS)) {
      const at = (value: number): string => word(inputFindings({ [field]: value }));
      expect([at(low!), at(high!)], field).toEqual(['pass', 'pass']);
      expect(at(high! + 1e-6), field).toBe('warn');
      expect(at(most!), field).toBe('warn');
      expect(at(most! + 1e-6), field).toBe('reject');
      expect(at(least! - 1e-6), field).toBe('reject');
      if (least !== low) expect([at(low! - 1e-6), at(least!)], field).toEqual(['warn', 'warn']);
    }
  });

  test('a depth in feet or a pH of 14.2 is answered with the unit to use', () => {
    expect(inputFindings({ ph: 14.2 })).toEqual([
      {
        field: 'ph',
        value: 14.2,
        severity: 'reject',
        problem: '14.2 pH cannot be right: expected 2 to 12 pH',
        remedy: 'Check the laboratory report.',
      },
    ]);
    expect(inputFindings({ depthInches: 0.33 })[0]).toMatchObject({
      severity: 'warn',
      remedy: 'Give the depth in inches, not in feet or centimeters.',
    });
    expect(inputFindings({ areaSqFt: 0.4 })[0]?.remedy).toContain('not in acres');
  });

  test('remedies and units are all there', () => {
    for (const { remedy, unit } of Object.values(INPUT_RANGES)) {
      expect(remedy).toMatch(/^(Give|Check) .+\.$/);
      expect(unit).not.toBe('');
    }
  });

  test('what is left out is unknown, not wrong; what is no number is rejected', () => {
    expect(inputFindings({})).toEqual([]);
    expect(word(inputFindings({ ph: Number.NaN }))).toBe('reject');
    expect(inputFindings({ ph: Number.NaN })[0]?.problem).toBe('is not a number');
    expect(inputFindings({ ph: 14, depthInches: 50 }).map((f) => f.field)).toEqual([
      'ph',
      'depthInches',
    ]);
  });
});

describe('what is left out', () => {
  const measured = (coefficient: string, value: number): MeasuredValue => ({
    coefficient,
    value,
    unit: 'lb/cu yd',
    source: 'scale tickets',
    date: '2026-10-02',
  });

  test('is no finding', () => {
    expect(inputFindings({ ph: undefined } as never)).toEqual([]);
    expect(overrideFindings({ 'density.compost': undefined } as never)).toEqual([]);
  });

  test('leaves the defaults, for a campus and for a site of it', () => {
    expect(overridesAt({})).toEqual({});
    expect(overridesAt({}, tinySite('A'))).toEqual({});
    const campus = { overrides: [measured('density.compost', 1150), measured('no.such', 3)] };
    expect(Object.keys(overridesAt(campus))).toEqual(['density.compost']);
    expect(coefficient('density.compost', overridesAt(campus))).toBe(1150);
    const site = tinySite('A', { overrides: [measured('density.compost', 900)] });
    expect(coefficient('density.compost', overridesAt(campus, site))).toBe(900);
  });
});
