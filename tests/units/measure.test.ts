import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULTS } from '#estimating/defaults/defaults.data.js';
import { CONVERSIONS } from '#units/conversions.data.js';
import { fromMetric, measureIn, metricUnit, toMetric } from '#units/measure.js';

const value = fc.double({ min: -1e9, max: 1e9, noNaN: true });
const unit = fc.constantFrom(...Object.keys(CONVERSIONS), 'h', '$', 'share', 'constructor');

/** Largest error that a handful of roundings of a double can leave. */
function slack(...values: number[]): number {
  return 1e-14 * Math.max(100, ...values.map(Math.abs));
}

describe('customary units and metric', () => {
  test('a value told in metric comes back as it was', () => {
    fc.assert(
      fc.property(value, unit, (v, u) => {
        expect(Math.abs(fromMetric(toMetric(v, u), u) - v)).toBeLessThanOrEqual(slack(v));
      }),
    );
  });

  test('the larger of two values stays the larger', () => {
    fc.assert(
      fc.property(value, value, unit, (a, b, u) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(toMetric(less, u)).toBeLessThanOrEqual(toMetric(more, u));
      }),
    );
  });

  test('a price of an area is the same money for the same ground', () => {
    fc.assert(
      fc.property(value, value, (price, area) => {
        const money = toMetric(price, '$/sf') * toMetric(area, 'sf');
        expect(Math.abs(money - price * area)).toBeLessThanOrEqual(slack(price * area));
      }),
    );
  });

  // NIST Special Publication 811 (2008), appendix B.8, as printed to seven digits; quoted from memory.
  test.each([
    [1, 'ft', 0.3048, 'm'],
    [1, 'in', 2.54, 'cm'],
    [1, 'sf', 0.09290304, 'm²'],
    [1, 'cu ft', 0.02831685, 'm³'],
    [1, 'cu yd', 0.7645549, 'm³'],
    [1, 'lb', 0.4535924, 'kg'],
    [1, 'lb/sf', 4.882428, 'kg/m²'],
    [1, 'lb/cu yd', 0.5932764, 'kg/m³'],
    [1, 'gal', 3.785412, 'L'],
    [1, 'psi', 6.894757, 'kPa'],
    [131, '°F', 55, '°C'],
  ])('%d %s is %d %s', (customary, of, metric, told) => {
    expect(metricUnit(of)).toBe(told);
    expect(toMetric(customary, of) / metric).toBeCloseTo(1, 6);
  });

  // Arithmetic done by hand: 1,000 sf are 92.90304 m², so 10 h for each are 10.7639 h for 100 m².
  test('hours for 1,000 square feet become hours for 100 square meters', () => {
    expect(toMetric(10, 'h/1,000 sf')).toBeCloseTo(10.76391, 5);
  });

  test('what is unknown stays unknown, and what is not customary stays as it is', () => {
    expect(measureIn('metric', { value: null, unit: 'sf' })).toEqual({ value: null, unit: 'm²' });
    expect(measureIn('metric', { value: 3, unit: 'h/yr' })).toEqual({ value: 3, unit: 'h/yr' });
    expect(measureIn('us', { value: 3, unit: 'sf' })).toEqual({ value: 3, unit: 'sf' });
  });

  test('no default keeps a customary unit in metric', () => {
    const customary = /(^|[/ ])(sf|ft|in|cu yd|cu ft|lb|gal|psi|°F)\b|°F/;
    const units = new Set(Object.values(DEFAULTS).map((row) => row.unit));
    expect([...units].filter((u) => customary.test(u)).length).toBeGreaterThan(15);
    expect([...units].map(metricUnit).filter((u) => customary.test(u))).toEqual([]);
  });
});
