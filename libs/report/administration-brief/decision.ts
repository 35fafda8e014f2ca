import type { HireRow, NextYear, PlanOverview } from '#explain/overview/plan-overview.js';
import { dollarsInWords, firstInWords, wholeInWords } from '#units/in-words.js';
import { callout } from '../document/boxes.js';
import { bold } from '../document/inline.js';
import type { Block } from '../document/plan-document.js';
import { list } from '../document/text-blocks.js';
import { bandInWords } from '../parts/words.js';

/** The ask in one sentence, then the plan in short. */
export function decisionBlocks(overview: PlanOverview): readonly Block[] {
  const { headline } = overview;
  return [
    callout('decision', 'Decision sought', [ask(overview)]),
    list('bullet', [
      [bold('First limit. '), { text: headline.firstLimit }],
      [bold('Promise. '), { text: headline.promise }],
    ]),
  ];
}

function ask({ next, hires }: PlanOverview): string {
  const note = firstAsk(hires);
  if (next.sites.length === 0) return `Agree to prepare no site in ${next.year}${note}.`;
  const sites = next.sites.map(
    (s) => `${s.site} ${s.name} (likely ${dollarsInWords(s.cost.likely)}; ${bandInWords(s.cost)})`,
  );
  const named = firstInWords(sites, MOST_NAMED, 'site');
  const all = sites.length > MOST_NAMED ? ` ${allInWords(next)}` : '';
  return `Approve preparing ${named} in ${next.year}, for planting in ${next.planting}${note}.${all}`;
}

/** Most sites that the ask tells one by one. */
const MOST_NAMED = 4;

function allInWords({ sites }: NextYear): string {
  const [first] = sites;
  if (first === undefined) return '';
  const sum = (of: 'low' | 'likely' | 'high') => sites.reduce((all, { cost }) => all + cost[of], 0);
  const cost = { ...first.cost, low: sum('low'), likely: sum('likely'), high: sum('high') };
  return `All ${wholeInWords(sites.length)} are likely to cost ${dollarsInWords(cost.likely)} (${bandInWords(cost)}); the long-range plan lists them.`;
}

function firstAsk([first]: readonly HireRow[]): string {
  if (!first) return '';
  const name = first.count === 1 ? first.position : `${first.count} of ${first.position}`;
  return `, and note that the first new position (${name}) must be asked for by ${first.askBy}`;
}
