import { describe, expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Campus } from '#domain/campus.js';
import { areaSqFt, ringMeasures } from '#estimating/geometry/area.js';
import { overlapSqFt, remainderSqFt } from '#estimating/geometry/overlap.js';
import { siteCharges } from '#estimating/site-charges/site-charges.js';
import { demo, DEMO_NAMES, type Demo } from '../support/seeds/demos.js';

function sites(): CampusFile['candidateSites'] {
  return demo('strained').file.candidateSites;
}

function tally<T>(of: (site: CampusFile['candidateSites'][number]) => T): Map<T, number> {
  const counts = new Map<T, number>();
  for (const site of sites()) counts.set(of(site), (counts.get(of(site)) ?? 0) + 1);
  return counts;
}

function idsWhere(holds: (site: CampusFile['candidateSites'][number]) => boolean): string[] {
  return sites()
    .filter(holds)
    .map(({ id }) => id);
}

describe('the three files', () => {
  test.each(DEMO_NAMES)('%s: the only warnings are three densely planted build types and a steep site that passes', (name) => {
    const told = demo(name).warnings.map(({ code, record }) => `${code} ${record}`);
    expect(told).toEqual([
      'BUILD-BED-SHARE-HIGH build type edible-mixed',
      'BUILD-BED-SHARE-HIGH build type pollinator',
      'BUILD-BED-SHARE-HIGH build type teaching-plots',
      'GATE-CONTRADICTED site TVU-26',
    ]);
  });

  test('share calendar, zones, sites, build types and care to the letter', () => {
    const shared = ({ file }: Demo): unknown => [
      file.calendar,
      file.zones,
      file.candidateSites,
      file.existingSites,
      file.buildTypes,
      file.care,
      file.workDays,
      file.benefit,
    ];
    expect(shared(demo('healthy'))).toEqual(shared(demo('strained')));
    expect(shared(demo('impossible'))).toEqual(shared(demo('strained')));
  });

  test('plan FY28 to FY62 from prices of FY28', () => {
    const { calendar } = demo('strained').campus;
    expect(calendar).toMatchObject({ firstYear: 2028, horizonYears: 35, priceYear: 2028 });
    expect(calendar).toMatchObject({ prepareSeason: 'fall', plantSeason: 'spring' });
  });
});

describe('the sites', () => {
  test('32 candidates TVU-01 to TVU-32, in six zones that each have four or more', () => {
    const numbered = Array.from({ length: 32 }, (_, i) => `TVU-${String(i + 1).padStart(2, '0')}`);
    expect(idsWhere(() => true)).toEqual(numbered);
    const zones = demo('strained').file.zones.map(({ id }) => id);
    const byZone = tally(({ zone }) => zone);
    expect(zones).toHaveLength(6);
    for (const zone of zones) expect(byZone.get(zone) ?? 0).toBeGreaterThanOrEqual(4);
  });

  test('areas run from 2,600 to 17,500 sf with median 7,800 and total 265,000', () => {
    const areas = sites()
      .map((site) => site.areaSqFt)
      .sort((a, b) => a - b);
    expect([areas[0], areas.at(-1)]).toEqual([2600, 17_500]);
    expect((areas[15]! + areas[16]!) / 2).toBe(7800);
    expect(areas.reduce((a, b) => a + b, 0)).toBe(265_000);
  });

  test('cover is 22 mown, 4 rough or worn, 3 shrub beds, 2 bare, 1 gravel', () => {
    const kind = (cover: string): string =>
      /mown/.test(cover) ? 'mown' : /rough|worn/.test(cover) ? 'rough' : cover;
    expect(Object.fromEntries(tally(({ facts }) => kind(facts.cover)))).toEqual({
      mown: 22,
      rough: 4,
      'tired shrub bed': 3,
      'bare ground': 2,
      gravel: 1,
    });
  });

  test('soils are 12 clay loam or clay, 9 loam, 6 silt loam, 3 urban fill, 2 sandy', () => {
    const kind = (soil: string): string => (soil.startsWith('clay') ? 'clay loam' : soil);
    expect(Object.fromEntries(tally(({ facts }) => kind(facts.soil)))).toEqual({
      'clay loam': 12,
      loam: 9,
      'silt loam': 6,
      'urban fill': 3,
      'sandy loam': 2,
    });
  });

  test('slopes run from 0 to 14 %, lead from 12 to 640 mg/kg with 5 unknown', () => {
    const slopes = sites().map(({ facts }) => Number(facts.slopePercent));
    expect([Math.min(...slopes), Math.max(...slopes)]).toEqual([0, 14]);
    const lead = sites().flatMap(({ facts: { leadMgPerKg } }) =>
      leadMgPerKg === 'unknown' ? [] : [leadMgPerKg],
    );
    expect([lead.length, Math.min(...lead), Math.max(...lead)]).toEqual([27, 12, 640]);
  });

  test('7 utility corridors, 6 works, 4 over a quarter in root zones, 3 without a truck', () => {
    const works = new Set(demo('strained').file.construction.flatMap((w) => w.sites));
    expect(idsWhere(({ gates }) => gates.some((g) => g.kind === 'utilities'))).toHaveLength(7);
    expect(idsWhere(({ id }) => works.has(id))).toHaveLength(6);
    expect(idsWhere(({ facts }) => Number(facts.rootProtectedShare) > 0.25)).toHaveLength(4);
    expect(idsWhere(({ facts }) => facts.truckAccess === false)).toHaveLength(3);
  });

  test('four are promised by name', () => {
    const named = demo('strained').campus.commitments.flatMap(({ test: of }) =>
      of.kind === 'named-site' ? [of.site] : [],
    );
    expect(named.sort()).toEqual(['TVU-03', 'TVU-14', 'TVU-19', 'TVU-30']);
  });

  test('each has two to four build types, but for the one that may only be covered', () => {
    for (const { id, buildTypes } of sites()) {
      const least = id === 'TVU-22' ? 1 : 2;
      expect(buildTypes.length, id).toBeGreaterThanOrEqual(least);
      expect(buildTypes.length, id).toBeLessThanOrEqual(4);
    }
  });

  test('nothing was observed after the planning date', () => {
    const { calendar, candidateSites, existingSites } = demo('strained').file;
    for (const { id, evidence } of [...candidateSites, ...existingSites]) {
      expect(evidence.length, id).toBeGreaterThanOrEqual(2);
      for (const { date } of evidence) expect(date <= calendar.planningDate, id).toBe(true);
    }
  });
});

describe('the map', () => {
  const all = (): Campus['candidates'][number][] => {
    const { candidates, existing } = demo('strained').campus;
    return [...candidates, ...existing] as Campus['candidates'][number][];
  };

  test('lies in open ocean near 47.7 N, 38 W, in closed rings that wind to the right', () => {
    for (const { id, boundary } of all()) {
      const [outer = []] = boundary;
      expect(boundary, id).toHaveLength(1);
      expect(outer.at(-1), id).toEqual(outer[0]);
      expect(ringMeasures(outer).squareMeters, id).toBeGreaterThan(0);
      for (const [longitude, latitude] of outer) {
        expect(Math.abs(longitude + 38)).toBeLessThan(0.02);
        expect(Math.abs(latitude - 47.7)).toBeLessThan(0.02);
      }
    }
  });

  test('draws every site within 1 % of its stated area', () => {
    for (const { id, areaSqFt: stated } of [...sites(), ...demo('strained').file.existingSites]) {
      const drawn = areaSqFt(all().find((s) => s.id === id)!.boundary);
      expect(Math.abs(drawn - stated) / stated, id).toBeLessThan(0.01);
    }
  });

  test('lets no two sites share ground, and keeps each inside its zone', () => {
    const drawn = all();
    drawn.forEach(({ id, boundary, zone }, index) => {
      const others = drawn.slice(index + 1).map((other) => other.boundary);
      expect(overlapSqFt([boundary], others), id).toBe(0);
      const ground = demo('strained').campus.zones.find((z) => z.id === zone)?.boundary;
      expect(remainderSqFt([boundary], [ground!]), id).toBeLessThan(0.01);
    });
  });

  test('is not all rectangles', () => {
    expect(all().filter(({ boundary }) => boundary[0]!.length > 5).length).toBeGreaterThan(12);
  });
});

describe('the strained case, as stated', () => {
  test.each([
    ['TVU-03', 'edible-mixed', 126],
    ['TVU-07', 'rain-garden-perennial', 80],
    ['TVU-11', 'pollinator', 34],
    ['TVU-14', 'edible-mixed-paths', 170],
    ['TVU-19', 'fruit-and-berry', 115],
    ['TVU-22', 'native-planting', 0],
    ['TVU-30', 'teaching-plots', 56],
  ])('%s as %s takes %d cubic yards of compost', (site, type, cubicYards) => {
    const { campus } = demo('strained');
    const found = campus.candidates.find(({ id }) => id === site)!;
    expect(found.buildTypes).toContain(type);
    expect(Math.round(siteCharges(campus, found, type).buildCompost / 100)).toBe(cubicYards);
  });

  test('has 1,357 h to care with in summer, before any position is added', () => {
    const { campus } = demo('strained');
    const care = campus.pools.filter(({ tasks }) => tasks.some((t) => t !== 'supervise'));
    const staffed = care.reduce((sum, { hours }) => sum + (hours.summer ?? 0), 0);
    const evenings = campus.workDays
      .filter(({ season }) => season === 'summer')
      .reduce((sum, { hoursEach, mostPerSeason }) => sum + hoursEach * mostPerSeason, 0);
    expect(Math.round((staffed + evenings) / 100)).toBe(1357);
  });

  test('has its money of FY28 to the dollar', () => {
    const { campus } = demo('strained');
    const firstYear = (id: string): number =>
      campus.funds
        .find((fund) => fund.id === id)!
        .inflows.filter(({ year }) => year === 2028)
        .reduce((sum, { amount }) => sum + amount / 100, 0);
    expect(firstYear('capital-allotment')).toBe(75_000);
    expect(firstYear('operating')).toBe(168_000);
    expect(firstYear('student-fee')).toBe(14_000);
    expect(firstYear('reserve')).toBe(60_000);
    expect(firstYear('reunion-gift-2028')).toBe(38_000);
    expect(firstYear('gift-c')).toBe(18_000);
    expect(firstYear('gift-a') + firstYear('gift-a-care')).toBe(40_000);
    expect(firstYear('gift-a-care')).toBe(4000);
    expect(campus.standingCosts.reduce((sum, { annual }) => sum + annual / 100, 0)).toBe(152_400);
  });

  test('pays its standing people from the operating allotment in every year', () => {
    const { campus } = demo('strained');
    const standing = campus.standingCosts.reduce((sum, { annual }) => sum + annual, 0);
    const operating = campus.funds.find(({ id }) => id === 'operating')!;
    expect(operating.inflows).toHaveLength(40);
    for (const { year, amount } of operating.inflows) {
      const wages = standing * (1 + campus.escalation.wages) ** (year - 2028);
      expect(amount, `FY${year}`).toBeGreaterThan(wages);
    }
  });

  test('makes 196 cubic yards of compost a year and holds 240', () => {
    const { made, yard } = demo('strained').campus.compost;
    expect(Object.values(made).reduce((a, b) => a + b, 0)).toBe(196_00);
    expect(yard).toBe(240_00);
  });
});
