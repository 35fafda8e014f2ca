/** A kept plan is judged and told in the position on benefit in which it was made, whatever the file takes now. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { campusOf } from '#apps/adapters/campus-document.js';
import { ruleChecker } from '#apps/adapters/rule-checker.js';
import { savedPlan } from '#apps/adapters/saved-plan.js';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { JsonDocument } from '#planning/json-document.js';
import { constructedPlanFile } from '../../support/cli/constructed-plan.js';
import { SMALL_CAMPUS } from '../../support/cli/small-campus.js';

const document = JSON.parse(readFileSync(SMALL_CAMPUS, 'utf8')) as CampusFile;
const kitchen = { ...document, benefit: { ...document.benefit, position: 'kitchen-first' } };
const file = constructedPlanFile(JSON.stringify(kitchen));
const json = (value: unknown) => JSON.parse(JSON.stringify(value)) as JsonDocument;

test('the plan keeps every claim in its own position, and not in another', async () => {
  expect(file.campus.position).toBe('kitchen-first');
  const own = await ruleChecker.check(json(document), json(file));
  expect(own).toEqual({ verified: true, breaches: [] });
  const { position: _, ...unplaced } = file.campus;
  const other = await ruleChecker.check(json(document), json({ ...file, campus: unplaced }));
  expect(other.verified).toBe(false);
  expect(other.breaches.map(({ record }) => record)).toContain('benefit');
});

test('the campus of a kept plan weighs benefit as the plan did', () => {
  const { campus } = savedPlan(file, campusOf(document));
  expect(campus.benefit.position).toBe('kitchen-first');
});

test('a position that the campus has not is told as a breach', async () => {
  const unknown = { ...file, campus: { ...file.campus, position: 'beauty-first' } };
  const { verified, breaches } = await ruleChecker.check(json(document), json(unknown));
  expect(verified).toBe(false);
  expect(breaches[0]?.message).toContain('beauty-first');
});
