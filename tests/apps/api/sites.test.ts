/** Changing one site or what was placed by hand, while others change theirs. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { campusReader } from '#apps/adapters/campus-reader.js';
import { partSavedReply, siteCheckReply } from '#contracts/http/sites.js';
import { problemReplySchema } from '#contracts/http/common.js';
import { testApi } from '../../support/api.js';
import { smallCampus } from '../../support/cli/small-campus.js';

const file = smallCampus();
const site = file.candidateSites[0]!;
const other = file.candidateSites[1]!;

let api: Awaited<ReturnType<typeof testApi>>;
let campus: string;
beforeEach(async () => {
  api = await testApi({ reader: campusReader });
  const added = await api.ask({ method: 'POST', url: '/api/campuses', body: file });
  campus = `/api/campuses/${added.body.campus.id}`;
});
afterEach(() => api.close());

const save = (id: string, body: object) =>
  api.ask({ method: 'PUT', url: `${campus}/sites/${id}`, body });
const place = (id: string, body: object) =>
  api.ask({ method: 'PUT', url: `${campus}/sites/${id}/hand-placements`, body });
const newest = async () => (await api.ask({ url: campus })).body.file;

test('a changed site is saved, and saving what was before undoes it', async () => {
  const renamed = { ...site, name: 'Renamed Court' };
  const saved = await save(site.id, { basedOn: 1, site: renamed });
  expect(saved).toMatchObject({ status: 200, body: { campus: { version: 2 }, before: site } });
  expect(partSavedReply.parse(saved.body)).toEqual(saved.body);
  expect((await newest()).candidateSites[0]).toEqual(renamed);
  await save(site.id, { basedOn: 2, site: saved.body.before });
  expect(await newest()).toEqual(file);
});

test('two who change different sites both keep their change', async () => {
  await save(site.id, { basedOn: 1, site: { ...site, name: 'One' } });
  const second = await save(other.id, { basedOn: 1, site: { ...other, name: 'Two' } });
  expect(second).toMatchObject({ status: 200, body: { campus: { version: 3 } } });
  const names = (await newest()).candidateSites.map(({ name }: { name: string }) => name);
  expect(names.slice(0, 2)).toEqual(['One', 'Two']);
});

test('two who change the same site: the second sees both versions, and nothing is lost', async () => {
  const theirs = { ...site, name: 'Theirs' };
  await save(site.id, { basedOn: 1, site: theirs });
  const refused = await save(site.id, { basedOn: 1, site: { ...site, name: 'Mine' } });
  expect(refused).toMatchObject({
    status: 409,
    body: {
      code: 'edit-conflict',
      currentVersion: 2,
      versions: { base: site, current: theirs },
    },
  });
  expect(problemReplySchema.parse(refused.body)).toEqual(refused.body);
  expect((await newest()).candidateSites[0]).toEqual(theirs);
  const merged = await save(site.id, { basedOn: 2, site: { ...theirs, name: 'Merged' } });
  expect(merged.status).toBe(200);
});

test('a site that breaks a rule of the file is refused with record, field, value and remedy', async () => {
  const refused = await save(site.id, { basedOn: 1, site: { ...site, areaSqFt: -5 } });
  expect(refused).toMatchObject({
    status: 422,
    body: {
      code: 'campus-refused',
      problems: [{ record: `site ${site.id}`, field: 'areaSqFt', value: -5 }, {}],
    },
  });
});

test('a site is added, and taken out again', async () => {
  const added = { ...site, id: 'NEW-1', name: 'New Lawn', boundary: moved(site.boundary) };
  const saved = await save('NEW-1', { basedOn: 1, site: added });
  expect(saved).toMatchObject({ status: 200, body: { before: null } });
  expect((await newest()).candidateSites.at(-1)).toEqual(added);
  await save('NEW-1', { basedOn: 2, site: null });
  expect(await newest()).toEqual(file);
});

test('a check tells what a change would bring in, and saves nothing', async () => {
  const check = (changed: object) =>
    api.ask({ method: 'POST', url: `${campus}/sites/${site.id}/check`, body: { site: changed } });
  const fine = await check(site);
  expect(siteCheckReply.parse(fine.body)).toEqual(fine.body);
  expect(fine.body.problems).toEqual([]);
  expect(fine.body.drawnAreaSqFt / site.areaSqFt).toBeGreaterThan(0.94);
  const tenth = await check({ ...site, areaSqFt: site.areaSqFt / 10 });
  expect(tenth.body.problems).toMatchObject([{ code: 'SITE-AREA-MISMATCH', severity: 'warning' }]);
  const open = { ...site.boundary, coordinates: [site.boundary.coordinates[0]!.slice(0, -1)] };
  const unclosed = await check({ ...site, boundary: open });
  expect(unclosed.body).toMatchObject({ drawnAreaSqFt: null });
  expect(unclosed.body.problems[0]).toMatchObject({ record: `site ${site.id}` });
  expect(await newest()).toEqual(file);
});

test('a site is barred from a year by hand, and the bar is undone', async () => {
  const barred = [{ kind: 'forbidden', year: file.calendar.firstYear, reason: 'Tents that year.' }];
  const saved = await place(other.id, { basedOn: 1, handPlacements: barred });
  expect(saved).toMatchObject({ status: 200, body: { before: [] } });
  expect((await newest()).handPlacements).toContainEqual({ site: other.id, ...barred[0] });
  await place(other.id, { basedOn: 2, handPlacements: [] });
  expect(await newest()).toEqual(file);
});

test('a hand placement that cannot be is refused by the rules of the file', async () => {
  const fixed = [{ kind: 'fixed', year: 'FY1999', reason: 'By mistake.' }];
  const refused = await place(site.id, { basedOn: 1, handPlacements: fixed });
  expect(refused).toMatchObject({ status: 422, body: { code: 'campus-refused' } });
  const odd = await place(site.id, { basedOn: 1, handPlacements: [{ kind: 'perhaps' }] });
  expect(odd).toMatchObject({ status: 400, body: { code: 'request-invalid' } });
});

/** The same shape a few hundred feet to the north. */
function moved<B extends { coordinates: [number, number][][] }>(boundary: B): B {
  const north = ([longitude, latitude]: [number, number]): [number, number] => [
    longitude,
    latitude + 0.004,
  ];
  return { ...boundary, coordinates: boundary.coordinates.map((ring) => ring.map(north)) };
}
