/** A store that an earlier program wrote: what it kept of a plan lacks what is shown of one today. */
import { expect, test } from 'vitest';
import type { JsonDocument } from '#planning/json-document.js';
import { onSmallDesk } from '../../support/page/on-small-desk.js';

const at = onSmallDesk();

/** Fields that overviews came to hold one after the other. */
const LATER = new Set(['form', 'floor', 'season', 'paidBack', 'paybacks', 'grades']);

function asKeptEarlier(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(asKeptEarlier);
  if (typeof value !== 'object' || value === null) return value;
  const kept = Object.entries(value).filter(([name]) => !LATER.has(name));
  return Object.fromEntries(kept.map(([name, field]) => [name, asKeptEarlier(field)]));
}

test('its plan is shown in full, and its documents are written', async () => {
  const { plans } = at.desk.store;
  const load = plans.load.bind(plans);
  plans.load = async (id) => {
    const plan = await load(id);
    return plan && { ...plan, overview: asKeptEarlier(plan.overview) as JsonDocument };
  };
  const kept = (await plans.load(at.desk.planId))?.overview;
  expect(Object.keys(kept ?? {})).not.toContain('paybacks');

  await at.open('/?view=plan');
  const errors: string[] = [];
  at.page.on('pageerror', ({ message }) => errors.push(message));
  await at.page.getByRole('heading', { name: 'Compost', exact: true }).waitFor();
  await at.page.locator('#compost').getByRole('radio', { name: 'Fall' }).check();
  await at.page.getByText('Compost of fall as a table').click();
  const table = at.page.getByRole('table', { name: /^Fall: compost/ });
  expect(await table.locator('tbody tr').count()).toBeGreaterThan(0);
  expect(await at.page.locator('main').innerText()).not.toMatch(/NaN|undefined/);
  expect(errors).toEqual([]);
  const brief = `${at.desk.url}/api/plans/${at.desk.planId}/documents/administration-brief.pdf`;
  expect((await fetch(brief)).status).toBe(200);
});
