/** A site in two halves: documents tell both, each in its year, and add up to what the plan is charged. */
import { describe, expect, test } from 'vitest';
import type { Decisions } from '#domain/plan.js';
import { COMPONENTS } from '#domain/component.js';
import { careHoursPer1000SqFt } from '#estimating/care-hours/decay.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { compostNeeds } from '#estimating/plan-needs/compost-needs.js';
import { giftPackages } from '#explain/documents/gifts/compute-gifts.js';
import { siteDossier } from '#explain/documents/dossier/compute-dossier.js';
import { workYear } from '#explain/documents/work-year/compute-work-year.js';
import { groundOf } from '#explain/overview/ground.js';
import { yearRows } from '#explain/overview/years/year-rows.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { smallCampus } from '../../support/small-campus.js';

const small = smallCampus();
const campus = { ...small, escalation: { ...small.escalation, wages: 0 } };
const site = campus.candidates.find(({ id }) => id === 'S-1')!;
const whole = Math.round(site.areaSqFt);
const charges = campusCharges(campus);
const planned = (secondHalf?: 2030): Decisions => ({
  placements: [
    {
      ...{ site: 'S-1', buildType: 'edible', year: fiscalYear(2028) },
      ...(secondHalf === undefined ? {} : { secondHalf: fiscalYear(secondHalf) }),
    },
  ],
  ...{ hires: [], workDays: [], purchases: [] },
});
const groundFor = (decisions: Decisions) =>
  groundOf(campus, completePlan(campus, decisions, charges).plan);
const halves = groundFor(planned(2030));
const atOnce = groundFor(planned());

describe('a site built in two halves, two years apart', () => {
  test('is told with both years, and its compost is what the plan is charged', () => {
    const { planned: told, takeoff } = siteDossier(halves, 'S-1');
    expect(told?.prepared).toMatch(/\(FY28\), its second half .*\(FY30\)$/);
    const yards = compostNeeds(campus, planned(2030), charges).reduce(
      (sum, { builds }) => sum + builds / 100,
      0,
    );
    expect(takeoff.compostCuYd).toBeCloseTo(yards, 6);
    const once = siteDossier(atOnce, 'S-1').takeoff;
    expect(takeoff.chipsCuYd).toBeCloseTo(once.chipsCuYd, 1);
    expect(takeoff.compostLoads).toBeGreaterThanOrEqual(once.compostLoads);
  });

  test('asks for the material and hours of one half in the first year of work', () => {
    const [half] = workYear(halves)!.sites;
    const [all] = workYear(atOnce)!.sites;
    expect(half?.name).toBe(`${site.name}, first half`);
    expect(half?.areaSqFt).toBeCloseTo(Math.floor(whole / 2), 0);
    expect(half!.takeoff.compostCuYd / all!.takeoff.compostCuYd).toBeCloseTo(0.5, 1);
    expect(half!.prepareHours / all!.prepareHours).toBeCloseTo(0.5, 1);
  });

  test('stands in the rows of both years, each with its half of ground and capital', () => {
    const rows = yearRows(halves).flatMap(({ year, sites }) => sites.map((s) => ({ year, ...s })));
    expect(rows.map(({ year, name }) => `${year} ${name}`)).toEqual([
      `FY28 ${site.name}, first half`,
      `FY30 ${site.name}, second half`,
    ]);
    expect(rows.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0)).toBeCloseTo(site.areaSqFt, 6);
    const [once] = yearRows(atOnce)[0]!.sites;
    expect(rows[0]!.cost.likely / once!.cost.likely).toBeCloseTo(0.5, 1);
    expect(rows[1]!.cost.likely).toBeCloseTo(
      (once!.cost.likely - rows[0]!.cost.likely) * (1 + campus.escalation.construction) ** 2,
      0,
    );
    expect(rows[1]!.cost.dollarsOf).toBe('FY30');
  });

  test('counts for a promise once, in the year in which enough of it is prepared', () => {
    const half = Math.floor(whole / 2);
    const counting = (countsFromSqFt: number) => {
      const promises = campus.commitments.map((c) =>
        c.test.kind === 'sites-each-year' ? { ...c, test: { ...c.test, countsFromSqFt } } : c,
      );
      const rows = yearRows({ ...halves, campus: { ...campus, commitments: promises } });
      return rows
        .slice(0, 3)
        .map(({ promiseKept, sites }) => [
          promiseKept,
          sites.filter((s) => s.countsTowardsPromise).length,
        ]);
    };
    expect(counting(half)).toEqual([
      [true, 1],
      [false, 0],
      [false, 0],
    ]);
    expect(counting(half + 1)).toEqual([
      [false, 0],
      [false, 0],
      [true, 1],
    ]);
  });

  test('is given two years less of care for the second half', () => {
    const exact = (ground: typeof halves) =>
      giftPackages(ground, 'S-1')
        .packages.find(({ title }) => title.startsWith('The place'))!
        .lines.find(({ label }) => label.includes('by hand'))!;
    const years = Number(/^\d+/.exec(exact(halves).label)?.[0]);
    const { shares } = campus.buildTypes.find(({ id }) => id === 'edible')!;
    const hoursAt = (age: number) =>
      COMPONENTS.reduce((sum, c) => {
        const care = campus.care[c];
        const crop = care.bearing[Math.min(age, care.bearing.length) - 1] ?? 0;
        const yearly = careHoursPer1000SqFt(care, age) + care.harvestHours * crop;
        return sum + ((whole - Math.floor(whole / 2)) / 1000) * shares[c] * yearly;
      }, 0);
    // $39.10 an hour: the planning default of cost.care-hour.
    const missing = (hoursAt(years - 1) + hoursAt(years)) * 39.1;
    expect(exact(atOnce).exact - exact(halves).exact).toBeCloseTo(missing, -1);
  });
});
