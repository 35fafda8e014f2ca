import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { defaultsReply, siteEstimatesReply } from '#contracts/http/estimates.js';
import { testApi } from '../../support/api.js';
import { smallCampus } from '../../support/cli/small-campus.js';

const file = smallCampus();
const [site] = file.candidateSites;

let api: Awaited<ReturnType<typeof testApi>>;
let campus: string;
beforeAll(async () => {
  api = await testApi();
  const added = await api.ask({ method: 'POST', url: '/api/campuses', body: file });
  campus = `/api/campuses/${added.body.campus.id}`;
});
afterAll(() => api.close());

describe('an estimate', () => {
  test('is of every build type that the site may become, as described', async () => {
    const { status, body } = await api.ask({ url: `${campus}/sites/${site!.id}/estimate` });
    expect(status).toBe(200);
    expect(siteEstimatesReply.parse(body)).toEqual(body);
    expect(body.estimates.map((e: { buildType: string }) => e.buildType)).toEqual(site!.buildTypes);
    expect(body.units).toBe('us');
  });

  test('is of one build type in metric, when asked so', async () => {
    const [type] = site!.buildTypes;
    const query = `type=${type}&units=metric`;
    const { body } = await api.ask({ url: `${campus}/sites/${site!.id}/estimate?${query}` });
    expect(body).toMatchObject({ units: 'metric', estimates: [{ buildType: type }] });
    const units = body.estimates[0].sections.takeoff.map((n: { unit: string }) => n.unit);
    expect(units).toEqual(['loads', 'kg', 'm³', 'm³', 'm³/yr']);
  });

  test.each([
    ['sites/nowhere/estimate', 404, 'unknown-site', 'SITE-UNKNOWN'],
    [`sites/${site!.id}/estimate?type=pond`, 404, 'unknown-type', 'SITE-TYPE-NOT-ALLOWED'],
    [`sites/${site!.id}/estimate?units=cubits`, 400, 'request-invalid', 'REQUEST-FIELD'],
  ])('of %s is a problem that says what can be given', async (url, status, code, problem) => {
    const reply = await api.ask({ url: `${campus}/${url}` });
    expect(reply).toMatchObject({ status, body: { code, problems: [{ code: problem }] } });
  });

  test('of a campus that is not there is told so', async () => {
    const url = '/api/campuses/00000000-0000-4000-8000-000000000000/sites/x/estimate';
    expect(await api.ask({ url })).toMatchObject({ status: 404, body: { code: 'unknown-campus' } });
  });
});

test('a stored campus that no longer passes the checks is told with its problems', async () => {
  const outdated = { ...file, paybackYears: -1 };
  const { id } = await api.campuses.add({ name: file.name, document: outdated });
  for (const path of [`sites/${site!.id}/estimate`, 'defaults']) {
    const reply = await api.ask({ url: `/api/campuses/${id}/${path}` });
    expect(reply).toMatchObject({
      status: 409,
      body: { code: 'campus-outdated', problems: [{ field: 'paybackYears', value: -1 }] },
    });
    expect(reply.body.problems[0].remedy).not.toBe('');
  }
});

test('the defaults of a campus are listed with what it measured instead', async () => {
  const own = { coefficient: 'truck.box', value: 14, unit: 'cu yd', date: file.dataDate };
  const body = { ...file, overrides: [{ ...own, source: 'tape measure' }] };
  const added = await api.ask({ method: 'POST', url: '/api/campuses', body });
  const reply = await api.ask({ url: `/api/campuses/${added.body.campus.id}/defaults` });
  expect(defaultsReply.parse(reply.body)).toEqual(reply.body);
  const rows = reply.body.groups.flatMap((g: { defaults: object[] }) => g.defaults);
  expect(rows.find((row: { key: string }) => row.key === 'truck.box').measured).toEqual([
    { site: null, value: 14, source: `tape measure (${file.dataDate})` },
  ]);
});

test('the defaults are listed as described, in either system of units', async () => {
  const us = await api.ask({ url: '/api/defaults' });
  const metric = await api.ask({ url: '/api/defaults?units=metric' });
  expect([us.status, metric.status]).toEqual([200, 200]);
  expect(defaultsReply.parse(us.body)).toEqual(us.body);
  expect(metric.body.units).toBe('metric');
  expect(metric.body.groups).toHaveLength(us.body.groups.length);
});
