/** The figure of all years where dozens of sites are prepared in one: invented marks, no outside source. */
import { expect, test } from 'vitest';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { timelineBlocks } from '#report/parts/timeline.js';
import { overviewOf } from '../support/overview-cases.js';

/** The plan's second year, in which one site is prepared, with that site many times over. */
function crowded(sites: number): PlanOverview {
  const { overview } = overviewOf();
  const years = overview.years.map((row, i) => {
    const [site] = row.sites;
    if (i !== 1 || !site) return row;
    const many = Array.from({ length: sites }, (_, n) => ({ ...site, site: `N${n + 1}` }));
    return { ...row, sites: many };
  });
  return { ...overview, years };
}

const textOf = (overview: PlanOverview) => JSON.stringify(timelineBlocks(overview));

test('eight sites of a year have a mark each, and nothing is said of more', () => {
  const text = textOf(crowded(8));
  expect(text).toContain('"N8"');
  expect(text).not.toContain('A mark with a plus');
});

test('of sixty-three sites seven have marks, and one more mark counts the other fifty-six', () => {
  const text = textOf(crowded(63));
  expect(text).toContain('"N7"');
  expect(text).toContain('"+56"');
  expect(text).not.toContain('"N8"');
  expect(text).toContain('A mark with a plus counts the other sites of its year.');
});
