import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { buildType, candidate } from '#domain/campus.js';
import { parseCampusFile } from '#contracts/parse-campus-file.js';
import type { ExplainedNode } from '#estimating/explained.js';
import { estimateSite, type SiteEstimate } from '#estimating/site/site-estimate.js';
import { siteCharges, type SiteCharges } from '#estimating/site-charges/site-charges.js';
import { type CareClass, FINE_PARTS } from '#estimating/site-charges/type-profile.js';
import { known, UNKNOWN } from '#units/known.js';

const file: unknown = JSON.parse(readFileSync('seeds/demo-strained.json', 'utf8'));
const parsed = parseCampusFile(file);
if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems, null, 2));
const campus = parsed.campus;
const site = candidate(campus, 'TVU-03');
const type = site.buildTypes[0]!;

function estimate(changes: Partial<typeof site> = {}, yearsFromPriceYear = 0): SiteEstimate {
  return estimateSite({
    campus,
    site: { ...site, ...changes },
    buildTypeId: type,
    yearsFromPriceYear,
  });
}

function node(of: SiteEstimate, name: string): ExplainedNode {
  const found = Object.values(of.sections)
    .flat()
    .find((n) => n.name === name);
  if (!found)
    throw new Error(
      `no ${name} among ${Object.values(of.sections)
        .flat()
        .map((n) => n.name)
        .join(', ')}`,
    );
  return found;
}

function everyNode(nodes: readonly ExplainedNode[]): ExplainedNode[] {
  return nodes.flatMap((n) => [n, ...everyNode(n.inputs)]);
}

describe('a site’s whole build-up', () => {
  let whole: SiteEstimate;
  let charges: SiteCharges;
  beforeEach(() => {
    whole = estimate();
    charges = siteCharges(campus, site, type);
  });
  const fine = (perThousand: number): number => (perThousand * charges.areaSqFt) / FINE_PARTS;

  test('agrees with what plans are charged, from hundredths rounded', () => {
    expect(node(whole, 'compost').value).toBeCloseTo(charges.buildCompost / 100, 2);
    expect(node(whole, 'top-dress').value).toBeCloseTo(fine(charges.profile.topDress), 2);
    expect(node(whole, 'prepare').value).toBeCloseTo(charges.prepareHours / 100, 2);
    expect(node(whole, 'plant').value).toBeCloseTo(charges.plantHours / 100, 2);
    expect(node(whole, 'likely build cost').value).toBeCloseTo(charges.buildCost / 100, 2);
  });

  test.each([1, 2, 5, 10])(
    'care and harvest of year %i agree with what plans are charged',
    (age) => {
      const orders = campus.calendar.seasons.map((_, order) => order);
      const sum = (classes: readonly CareClass[]): number =>
        orders
          .flatMap((order) => classes.map((c) => fine(charges.profile.care(c, age, order))))
          .reduce((a, b) => a + b, 0);
      expect(node(whole, `care in year ${age}`).value).toBeCloseTo(
        sum(['care-food', 'care-other']),
        1,
      );
      expect(node(whole, `harvest in year ${age}`).value).toBeCloseTo(sum(['harvest']), 1);
    },
  );

  test('opens every number to given values or defaults, each with a source and a unit', () => {
    const all = everyNode(Object.values(whole.sections).flat());
    expect(all.length).toBeGreaterThan(200);
    for (const each of all) {
      expect(each.source, each.name).not.toBe('');
      expect(each.unit, each.name).not.toBe('');
      expect(each.formula, each.name).not.toBe('');
      expect(each.value, each.name).not.toBeUndefined();
      if (each.inputs.length === 0 && each.value !== 0) {
        expect(each.formula, each.name).toMatch(/^(given|campus value|default, .*)$/);
      }
    }
  });

  test('numbers whose formula is a sum are the sum of their parts', () => {
    for (const each of everyNode(Object.values(whole.sections).flat())) {
      if (!/^sum( of the parts)?$/.test(each.formula)) continue;
      const parts = each.inputs.reduce((total, part) => total + (part.value ?? 0), 0);
      expect(each.value).toBeCloseTo(parts, 9);
    }
  });

  test('loads and weight come from yards, density and truck', () => {
    const loads = node(whole, 'truck loads');
    const [compost, chips] = loads.inputs;
    expect(compost?.value).toBe(
      Math.ceil(
        Math.max(
          node(whole, 'compost').value! / 16,
          (node(whole, 'compost').value! * 1000) / 22_000,
        ),
      ),
    );
    expect(chips?.value).toBe(
      Math.ceil(
        Math.max(
          node(whole, 'wood chips').value! / 16,
          (node(whole, 'wood chips').value! * 500) / 22_000,
        ),
      ),
    );
    // The campus measured 1,120 lb/cu yd of its compost.
    const weight = node(whole, 'compost').value! * 1120 + node(whole, 'wood chips').value! * 500;
    expect(node(whole, 'weight of layers').value).toBeCloseTo(weight, 6);
  });

  test('cost is shown as a band in dollars of the year of the build', () => {
    const later = estimate({}, 3);
    const likely = node(whole, 'likely build cost').value!;
    expect(node(whole, 'low build cost').value).toBeCloseTo(likely * 0.7, 6);
    expect(node(whole, 'high build cost').value).toBeCloseTo(likely * 1.5, 6);
    expect(node(later, 'likely build cost').value).toBeCloseTo(
      likely * (1 + campus.escalation.construction) ** 3,
      6,
    );
    expect(node(estimate({ costFactor: 2 }), 'likely build cost').value).toBeCloseTo(2 * likely, 6);
  });

  test('ten years of care cost more in nominal than in constant dollars', () => {
    const constant = node(whole, '10 years of care, prices held');
    const nominal = node(whole, '10 years of care, prices as they grow');
    const hours = (age: number): number =>
      node(whole, `care in year ${age}`).value! + node(whole, `harvest in year ${age}`).value!;
    const supplies = constant.inputs.at(-1)!.value!;
    const years = Array.from({ length: 10 }, (_, i) => hours(i + 1) * 39.1 + supplies);
    expect(constant.value).toBeCloseTo(
      years.reduce((a, b) => a + b, 0),
      4,
    );
    const grown = years.map((dollars, i) => dollars * (1 + campus.escalation.wages) ** i);
    expect(nominal.value).toBeCloseTo(
      grown.reduce((a, b) => a + b, 0),
      4,
    );
    expect([constant.unit, nominal.unit]).toEqual(['$ of FY28', '$ of each year']);
  });

  test('supplies are those of the components', () => {
    const { shares } = buildType(campus, type);
    const dollars = Object.entries(shares).reduce(
      (sum, [c, share]) =>
        sum +
        (site.areaSqFt / 1000) * share * campus.care[c as keyof typeof shares].suppliesDollars,
      0,
    );
    expect(node(whole, '10 years of care, prices held').inputs.at(-1)!.value).toBeCloseTo(
      dollars,
      6,
    );
  });

  test('mowing avoided is a small part of the care that begins', () => {
    const mowing = node(whole, 'mowing avoided');
    expect(mowing.value).toBeCloseTo((site.areaSqFt / 1000) * 26 * 0.035, 9);
    expect(mowing.value!).toBeLessThan(node(whole, 'care in year 10').value! / 4);
    expect(
      node(estimate({ facts: { ...site.facts, cover: known('gravel') } }), 'mowing avoided').value,
    ).toBe(0);
  });

  test('an unknown fact is unknown in the result, not zero', () => {
    const blind = estimate({
      facts: { ...site.facts, cover: UNKNOWN, soil: UNKNOWN, rootProtectedShare: UNKNOWN },
    });
    expect(node(blind, 'mowing avoided').value).toBeNull();
    expect(node(blind, 'runoff saved in the storm shown').value).toBeNull();
    const share = everyNode([node(blind, 'compost')]).find(
      (n) => n.name === 'share in root protection',
    );
    expect(share?.value).toBeNull();
    expect(share?.source).toContain('gate stays open');
    const onlySoil = estimate({ facts: { ...site.facts, cover: UNKNOWN } });
    expect(node(onlySoil, 'runoff saved in the storm shown').value).toBeNull();
  });

  test('runoff saved follows cover and soil', () => {
    const turf = { ...site.facts, cover: known('mown turf'), soil: known('clay loam') };
    const saved = node(estimate({ facts: turf }), 'runoff saved in the storm shown');
    expect(saved.value).not.toBeNull();
    expect(saved.inputs.map((n) => n.value)[2]).toBe(80);
    const doubled = node(
      estimate({ facts: turf, areaSqFt: 2 * site.areaSqFt }),
      'runoff saved in the storm shown',
    );
    expect(doubled.value).toBeCloseTo(2 * saved.value!, 9);
  });

  test('root protection takes compost off, down to the depth that roots may carry', () => {
    const rooted = estimate({ facts: { ...site.facts, rootProtectedShare: known(0.5) } });
    const free = estimate({ facts: { ...site.facts, rootProtectedShare: known(0) } });
    expect(node(rooted, 'compost').value!).toBeLessThan(node(free, 'compost').value!);
    const chargesRooted = siteCharges(
      campus,
      { ...site, facts: { ...site.facts, rootProtectedShare: known(0.5) } },
      type,
    );
    expect(node(rooted, 'compost').value).toBeCloseTo(chargesRooted.buildCompost / 100, 2);
  });

  test('food is bed, yield, bearing and losses', () => {
    const { shares } = buildType(campus, type);
    const food = node(whole, 'food from annual beds, year 10');
    const bearing = campus.care['annual-bed'].bearing.at(-1)!;
    expect(food.value).toBeCloseTo(
      site.areaSqFt * shares['annual-bed'] * 0.45 * bearing * 0.825,
      6,
    );
  });

  test('lists only the components that are on the site and ask for something', () => {
    const parts = [
      'compost',
      'wood chips',
      'top-dress',
      'care in year 1',
      'harvest in year 10',
    ].flatMap((name) => node(whole, name).inputs);
    expect(parts.length).toBeGreaterThan(8);
    for (const part of parts) expect(part.value, part.name).toBeGreaterThan(0);
    const hours = node(whole, '10 years of care, prices held').inputs.slice(0, 10);
    expect(hours.map(({ name }) => name)).toEqual(
      Array.from({ length: 10 }, (_, i) => `hours in year ${i + 1}`),
    );
    expect(hours[9]?.inputs.map(({ name }) => name)).toEqual([
      'care in year 10',
      'harvest in year 10',
    ]);
  });

  test('has no total of unlike things', () => {
    expect(Object.keys(whole.sections)).toEqual(['takeoff', 'hours', 'money', 'water', 'benefits']);
    expect(Object.keys(whole)).toEqual(['site', 'buildType', 'findings', 'sections']);
    expect([whole.site, whole.buildType]).toEqual(['TVU-03', type]);
  });

  test('a site of no usual size is warned about', () => {
    expect(whole.findings).toEqual([]);
    expect(estimate({ areaSqFt: 90_000 }).findings.map((f) => `${f.severity} ${f.field}`)).toEqual([
      'warn areaSqFt',
    ]);
  });
});
