/** What the page works out by itself: differences of plans, of two editors' texts, order and drawing. */
import { describe, expect, test } from 'vitest';
import type { CampusFile } from '#apps/web/api.js';
import { planChanges } from '#apps/web/views/plan/plan-changes.js';
import { placementsWith, type Wish } from '#apps/web/views/plan/wish.js';
import {
  differences,
  fieldsOf,
  siteWith,
  usualChoice,
} from '#apps/web/views/sites/edit/site-fields.js';
import { projectionOf, scaleBarFeet, type Position } from '#apps/web/views/sites/map/projection.js';
import { filtered, noFilter, siteRows, sorted } from '#apps/web/views/sites/site-rows.js';
import { dueIn } from '#apps/web/views/home/due.js';
import { overviewFixture } from '../../support/page/overview-fixture.js';
import { smallFile } from '../../support/small-campus.js';

const file = smallFile() as unknown as CampusFile;
const site = file.candidateSites[0]!;
const overview = overviewFixture();

describe('two plans', () => {
  test('that are the same have no difference', () => {
    expect(planChanges(overview, overviewFixture())).toEqual([]);
  });

  test('are told by the site that moved, the promise and the limit that changed, and nothing else', () => {
    const [first, ...years] = overview.years;
    const [moved] = first!.sites;
    const after = {
      ...overview,
      years: [
        { ...first!, sites: [] },
        { ...years[0]!, sites: [...years[0]!.sites, moved!] },
        ...years.slice(1),
      ],
      promises: overview.promises.map((promise, at) =>
        at === 0 ? { ...promise, status: 'missed' as const, missedYears: ['FY28'] } : promise,
      ),
    };
    const changes = planChanges(overview, after);
    expect(changes[0]?.after).toBe('missed; missed in FY28');
    expect(changes[1]).toMatchObject({
      what: `${moved!.site} ${moved!.name}`,
      before: `FY28, ${moved!.buildType}`,
      after: `FY29, ${moved!.buildType}`,
    });
    expect(changes).toHaveLength(2);
  });
});

describe('the form of a site', () => {
  test('read and put back unchanged is the same site, whatever is unknown in it', () => {
    for (const one of [...file.candidateSites, ...file.existingSites]) {
      expect(siteWith(one, fieldsOf(one))).toEqual(one);
    }
  });

  test('keeps empty facts unknown, numbers as numbers, and what is no number as it was typed', () => {
    const facts = (fields: Record<string, string>) =>
      siteWith(site, { ...fieldsOf(site), ...fields }).facts;
    expect(facts({ 'facts.ph': '' }).ph).toBe('unknown');
    expect(facts({ 'facts.walkersPerDay': '1,200' }).walkersPerDay).toBe(1200);
    expect(facts({ 'facts.waterFeet': 'near' }).waterFeet).toBe('near');
    expect(facts({ 'facts.truckAccess': 'yes' }).truckAccess).toBe(true);
  });

  test('of two editors, a field that only one of them changed keeps that change', () => {
    const base = fieldsOf(site);
    const theirs = { ...base, name: 'Theirs', zone: 'other' };
    const mine = { ...base, name: 'Mine', areaSqFt: '9000' };
    const rows = differences(base, theirs, mine);
    expect(rows.map((row) => [row.field, usualChoice(row)])).toEqual([
      ['name', 'theirs'],
      ['zone', 'theirs'],
      ['areaSqFt', 'mine'],
    ]);
  });

  test('takes the geometry out of a feature that is pasted', () => {
    const feature = { type: 'Feature', properties: {}, geometry: site.boundary };
    const typed = { ...fieldsOf(site), boundary: JSON.stringify(feature) };
    expect(siteWith(site, typed)).toEqual(site);
  });
});

describe('a change by hand', () => {
  const wish: Wish = { site: 'S-1', kind: 'fixed', year: 'FY2030', reason: 'Why.' };
  test('takes the place of what was fixed, and bars add up', () => {
    expect(placementsWith(wish, file)).toEqual([{ kind: 'fixed', year: 'FY2030', reason: 'Why.' }]);
    expect(placementsWith({ ...wish, kind: 'free' }, file)).toEqual([]);
    const barred = { site: 'S-2', kind: 'forbidden' as const, year: 'FY2029', reason: 'Tents.' };
    const withBar = { ...file, handPlacements: [barred] };
    const more = placementsWith({ ...wish, site: 'S-2', kind: 'forbidden' }, withBar);
    expect(more.map(({ year }) => year)).toEqual(['FY2029', 'FY2030']);
  });
});

describe('the list of sites', () => {
  const rows = siteRows(file, null);
  test('puts what has no value last in either order', () => {
    for (const order of ['ascending', 'descending'] as const) {
      expect(sorted(rows, { key: 'year', order })[0]?.stage).toBe('planted');
    }
    expect(sorted(rows, { key: 'areaSqFt', order: 'descending' })[0]?.areaSqFt).toBe(
      Math.max(...rows.map(({ areaSqFt }) => areaSqFt)),
    );
  });

  test('finds a site by part of its name, and those with an open gate', () => {
    expect(filtered(rows, { ...noFilter, text: ' MILL' }).map(({ id }) => id)).toEqual(['S-2']);
    expect(filtered(rows, { ...noFilter, show: 'open' }).map(({ id }) => id)).toEqual(['S-4']);
  });
});

describe('the map', () => {
  test('is true to scale, and finds the place on the ground again', () => {
    const { toFeet, toPosition } = projectionOf(file);
    const [corner, ...others] = site.boundary.coordinates[0] as unknown as Position[];
    const [x, y] = toFeet(corner!);
    const [longitude, latitude] = toPosition([x, y]);
    expect(longitude).toBeCloseTo(corner![0], 9);
    expect(latitude).toBeCloseTo(corner![1], 9);
    const points = [corner!, ...others].map(toFeet);
    const twice = points.reduce((sum, [ax, ay], at) => {
      const [bx, by] = points[(at + 1) % points.length]!;
      return sum + ax * by - bx * ay;
    }, 0);
    // The stated area of the file; a sphere and a plane are near enough for a drawing.
    expect(Math.abs(twice) / 2 / site.areaSqFt).toBeCloseTo(1, 1);
  });

  test.each([
    [2600, 500],
    [900, 100],
    [11_000, 2000],
  ])('of %d feet has a scale bar of %d feet', (width, bar) => {
    expect(scaleBarFeet(width)).toBe(bar);
  });
});

test('a position is due in the month by which to ask, and not forgotten after it', () => {
  const hires = overview.hires;
  const on = (day: string) => dueIn(new Date(day), hires);
  expect(on('2034-10-15')).toMatchObject({ hires: [], nextHire: hires[0] });
  expect(on('2034-11-15')).toMatchObject({ hires, nextHire: null });
  expect(on('2035-02-15')).toMatchObject({ hires, nextHire: null });
  expect(on('2034-11-15').usual).toContain('Grounds staffing request');
});
