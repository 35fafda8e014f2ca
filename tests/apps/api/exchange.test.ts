import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { importAppliedReply, importPreviewReply } from '#contracts/http/imports.js';
import { testApi } from '../../support/api.js';
import { smallCampus } from '../../support/cli/small-campus.js';

const file = smallCampus();

let api: Awaited<ReturnType<typeof testApi>>;
let campus: string;
beforeAll(async () => {
  api = await testApi();
  const added = await api.ask({ method: 'POST', url: '/api/campuses', body: file });
  campus = `/api/campuses/${added.body.campus.id}`;
});
afterAll(() => api.close());

async function send(url: string, bytes: Uint8Array | string, type = 'application/octet-stream') {
  const headers = { 'content-type': type };
  const reply = await api.app.inject({
    method: 'POST',
    url,
    headers,
    payload: Buffer.from(bytes),
  });
  return { status: reply.statusCode, body: JSON.parse(reply.body) };
}

describe('an import over the api', () => {
  test('is shown first, then saved with the token of what was shown, and can be given again', async () => {
    const csv = 'id,walkers_per_day\nS-1,4321\nS-2,unknown\n';
    const shown = await send(`${campus}/imports`, csv);
    expect(shown.status).toBe(200);
    expect(importPreviewReply.parse(shown.body)).toEqual(shown.body);
    expect(shown.body.report.counts).toMatchObject({ changed: 2, rejected: 0 });
    expect((await api.ask({ url: campus })).body.version).toBe(1);

    const saved = await send(`${campus}/imports/${shown.body.token}/apply`, csv);
    expect(saved.status).toBe(200);
    expect(importAppliedReply.parse(saved.body)).toEqual(saved.body);
    const now = (await api.ask({ url: campus })).body;
    expect(now.version).toBe(2);
    expect(now.file.candidateSites[0].facts.walkersPerDay).toBe(4321);
    expect(now.file.candidateSites[1].facts.walkersPerDay).toBe('unknown');

    const again = await send(`${campus}/imports`, csv);
    expect(again.body.report.counts).toMatchObject({ unchanged: 2, changed: 0 });
    const nothing = await send(`${campus}/imports/${again.body.token}/apply`, csv);
    expect(nothing.body.campusVersion).toBe(2);
  });

  test('is refused when the file or the campus is another than in the dry run', async () => {
    const { token } = (await send(`${campus}/imports`, 'id,name\nS-1,One\n')).body;
    const other = await send(`${campus}/imports/${token}/apply`, 'id,name\nS-1,Two\n');
    expect(other).toMatchObject({ status: 409, body: { code: 'import-stale' } });
  });

  test('with one rejected record saves nothing at all, and says why', async () => {
    const csv = 'id,name,ph\nS-1,Renamed,"6,8"\nS-2,Renamed too,\n';
    const { token, report } = (await send(`${campus}/imports`, csv)).body;
    expect(report).toMatchObject({ canApply: false, counts: { changed: 1, rejected: 1 } });
    const refused = await send(`${campus}/imports/${token}/apply`, csv);
    expect(refused).toMatchObject({
      status: 422,
      body: { code: 'import-rejected', problems: [{ code: 'CELL-DECIMAL-COMMA', field: 'ph' }] },
    });
    expect((await api.ask({ url: campus })).body.file.candidateSites[1].name).not.toBe(
      'Renamed too',
    );
  });

  test('takes a file as a file only, and files nowhere else', async () => {
    const asJson = await send(`${campus}/imports`, '{}', 'application/json');
    const elsewhere = await send('/api/campuses', '{}');
    for (const reply of [asJson, elsewhere]) {
      expect(reply).toMatchObject({ status: 415, body: { code: 'media-type' } });
    }
  });
});

describe('an export over the api', () => {
  test.each([
    ['geojson', 'application/geo+json', '{\n"type": "FeatureCollection"'],
    ['csv', 'text/csv; charset=utf-8; header=present', '\uFEFFid,stage,name'],
    ['bundle', 'application/zip', 'PK'],
  ])('of %s is a file with its media type and a name', async (format, type, start) => {
    const reply = await api.app.inject({ method: 'GET', url: `${campus}/exports/${format}` });
    expect(reply.statusCode).toBe(200);
    expect(reply.headers['content-type']).toBe(type);
    expect(reply.headers['content-disposition']).toMatch(/^attachment; filename="small-/);
    expect(reply.body.startsWith(start)).toBe(true);
  });

  test.each([
    ['exports/ics', 409, 'export-impossible'],
    ['exports/bundle?audience=public', 409, 'export-impossible'],
    ['exports/pdf', 400, 'request-invalid'],
    ['exports/csv?plan=00000000-0000-4000-8000-000000000000', 404, 'unknown-plan'],
  ])('of %s is refused with %i %s', async (url, status, code) => {
    expect(await api.ask({ url: `${campus}/${url}` })).toMatchObject({ status, body: { code } });
  });
});
