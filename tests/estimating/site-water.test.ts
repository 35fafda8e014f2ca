/** Water that a site asks for and what a tank gives, from the weather that the file records. */
import { describe, expect, test } from 'vitest';
import type { RainTank, Weather } from '#domain/weather.js';
import type { ExplainedNode } from '#estimating/explained.js';
import { type WaterNodes, waterNodes } from '#estimating/site/water-nodes.js';
import { GALLONS_PER_CUBIC_FOOT } from '#estimating/water/rain.js';

const areas = {
  'annual-bed': 1000,
  'perennial-bed': 500,
  woody: 0,
  'rain-garden': 0,
  meadow: 0,
  path: 700,
};

/** Dry but for July, which takes 5 inches and gives 2. */
const july: Weather = {
  source: 'station 12, 1991 to 2020',
  months: Array.from({ length: 12 }, (_, month) =>
    month === 6 ? { referenceInches: 5, rainInches: 2 } : { referenceInches: 0, rainInches: 0 },
  ),
};

const nodes = (weather: Weather | undefined, rainTank?: RainTank): ExplainedNode[] => {
  const of: WaterNodes = {
    campus: weather ? { weather } : {},
    site: rainTank ? { rainTank } : {},
    areas,
    overrides: {},
  };
  return waterNodes(of);
};

const valueOf = (of: readonly ExplainedNode[], name: string) =>
  of.find((node) => node.name === name)?.value;

/** An inch on a square foot. */
const INCH = GALLONS_PER_CUBIC_FOOT / 12;

/** By hand: plant factors 0.8 and 0.5, 70 % of the rain kept, 80 % of the water at the roots. */
const BEDS = (1000 * (5 * 0.8 - 2 * 0.7) * INCH) / 0.8;
const PERENNIALS = (500 * (5 * 0.5 - 2 * 0.7) * INCH) / 0.8;

describe('irrigation', () => {
  test('is unknown, and not nothing, where no weather is recorded', () => {
    const [need, ...more] = nodes(undefined);
    expect(more).toEqual([]);
    expect(need).toMatchObject({ name: 'irrigation in a year', value: null, unit: 'gal/yr' });
    expect(need?.inputs[0]?.source).toMatch(/give the weather/);
  });

  test('is what evapotranspiration asks for beyond the rain that is kept, by planting', () => {
    const [year] = nodes(july);
    expect(year?.value).toBeCloseTo(BEDS + PERENNIALS, 6);
    expect(year?.unit).toBe('gal/yr');
    expect(year?.inputs.map(({ name }) => name)).toHaveLength(12);
    const inJuly = year!.inputs[6]!;
    expect(inJuly).toMatchObject({ name: 'irrigation in July', unit: 'gal' });
    expect(inJuly.inputs.map(({ value }) => value)).toEqual([
      expect.closeTo(BEDS, 6),
      expect.closeTo(PERENNIALS, 6),
    ]);
    expect(inJuly.inputs[0]!.inputs.map(({ name, value }) => [name, value])).toEqual([
      ['area', 1000],
      ['evapotranspiration', 5],
      ['rain', 2],
      ['water.plant-factor.annual-bed', 0.8],
      ['water.effective-rain', 0.7],
      ['water.application-efficiency', 0.8],
    ]);
  });
});

describe('a rain tank', () => {
  const tank: RainTank = {
    gallons: 900,
    openingGallons: 100,
    roofSqFt: 1200,
    firstFlushInches: 0.1,
  };
  const daily = {
    firstDay: '2026-06-30',
    inches: [1.1, 0, ...Array.from({ length: 26 }, () => 0)],
  };

  test('is left out where there is none, and unknown without daily rain', () => {
    expect(nodes(july)).toHaveLength(1);
    const without = nodes(july, tank);
    expect(without).toHaveLength(5);
    for (const node of without.slice(1)) expect(node.value).toBeNull();
    expect(without[1]!.inputs.at(-1)).toMatchObject({ value: null });
  });

  test('gives to what is not eaten, day by day, as much as it holds', () => {
    const told = nodes({ ...july, daily }, tank);
    // On the last of June nothing is asked for: 1.0 in x 1,200 sf x 0.9 comes in.
    const caught = 1200 * INCH * 0.9;
    // The brim is 900 gallons; the 27 days of July then draw a 31st of the month each.
    const drawn = Math.min(900, (PERENNIALS * 27) / 31);
    expect(valueOf(told, 'rain caught by the tank')).toBeCloseTo(caught, 6);
    expect(valueOf(told, 'overflow of the tank')).toBeCloseTo(Math.max(0, 100 + caught - 900), 6);
    expect(valueOf(told, 'tank water used on what is not eaten')).toBeCloseTo(drawn, 6);
    const share = drawn / ((PERENNIALS * 27) / 31);
    expect(valueOf(told, 'share of that need met')).toBeCloseTo(share, 9);
    expect(told[1]!.source).toMatch(/not for food plants without treatment/);
    expect(told[1]!.inputs.map(({ value }) => value)).toEqual([900, 100, 1200, 0.1, 0.9, 28]);
  });
});
