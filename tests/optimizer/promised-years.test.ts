/** First plans put a site that counts into each promised year, not merely the lightest one. */
import { expect, test } from 'vitest';
import { groundOf } from '#optimizer/columns/ground-of.js';
import { construct, RECIPES } from '#optimizer/construct/construct.js';
import { decisionsOf } from '#optimizer/search/state.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { sitesCounted } from '#rules/sites-each-year/check.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { promise } from '../support/tiny/promises.js';
import { tinyCampus, tinyFund, tinyPool, tinySite } from '../support/tiny/tiny-campus.js';

const yearly = {
  kind: 'sites-each-year',
  count: 1,
  from: fiscalYear(2028),
  to: fiscalYear(2029),
  countsFromSqFt: 3000,
} as const;

test.each(RECIPES)('by recipe %#: small sites do not stand in for those that count', (recipe) => {
  const areas = { A: 1000, B: 1200, C: 4000, D: 4200 };
  const campus = tinyCampus({
    candidates: Object.entries(areas).map(([id, areaSqFt]) => tinySite(id, { areaSqFt })),
    funds: [tinyFund('capital', 1_000_000, { carry: 2 })],
    pools: [tinyPool('crew', 5000)],
    commitments: [promise('yearly', 'intended', yearly)],
  });
  const state = construct(tablesOf(groundOf(campus)), recipe)!;
  const plan = { labor: [], unserved: [], spending: [], compost: [] };
  const counted = [2028, 2029].map((year) =>
    sitesCounted(
      { campus, plan: { ...plan, decisions: decisionsOf(state) } },
      yearly,
      fiscalYear(year),
    ),
  );
  expect(Math.min(...counted)).toBeGreaterThanOrEqual(1);
});
