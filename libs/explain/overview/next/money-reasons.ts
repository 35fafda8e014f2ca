import type { Fund, Inflow } from '#domain/money.js';
import { finalPayer, type Placement, type SpendEntry } from '#domain/plan.js';
import { cents, centsToDollars } from '#units/cents.js';
import { dayInWords } from '#units/dates-in-words.js';
import { counted, dollarsInWords } from '#units/in-words.js';
import type { Ground } from '../ground.js';
import { lastDayOf } from '../site-words.js';
import type { Weighed } from './weighed.js';

/** Restricted money that the plan spends on building this site, and when it would lapse. */
export function moneyReasons(ground: Ground, placement: Placement): Weighed[] {
  return ground.campus.funds.flatMap((fund) => {
    const entries = ground.plan.spending.filter(
      (s) => finalPayer(s).fund === fund.id && s.site === placement.site && s.line === 'build',
    );
    const uses = entries.flatMap((entry) => useOf(fund, entry));
    const spent = centsToDollars(cents(entries.reduce((sum, { amount }) => sum + amount, 0)));
    const [first] = uses;
    if (!first || spent === 0) return [];
    return [weighed(ground, { fund, spent, inflow: first })];
  });
}

/** The inflow behind an entry, where it is restricted to some sites or types. */
function useOf(fund: Fund, entry: SpendEntry): Inflow[] {
  const inflow = fund.inflows[finalPayer(entry).inflow];
  if (!inflow) return [];
  const { sites, buildTypes } = inflow.restriction;
  return sites === 'any' && buildTypes === 'any' ? [] : [inflow];
}

function weighed(
  ground: Ground,
  use: { readonly fund: Fund; readonly spent: number; readonly inflow: Inflow },
): Weighed {
  const { fund, spent, inflow } = use;
  const { calendar } = ground.campus;
  const lapses = ground.years.includes(inflow.lastYear)
    ? [{ what: 'lapses on', value: lastDayOf(calendar, inflow.lastYear), unit: 'date' }]
    : [];
  const expires = lapses.map(({ value }) => ` before it lapses on ${dayInWords(value)}`).join('');
  const sites = inflow.restriction.sites;
  const few = sites === 'any' ? '' : ` Only ${counted(sites.length, 'candidate')} may use it.`;
  const status = fund.status === 'pledged' ? ' It is pledged and not yet received.' : '';
  return {
    side: 'for',
    rank: 'money',
    size: spent,
    reason: {
      sentence: `Uses ${dollarsInWords(spent)} of “${fund.name}”${expires}.${few}${status}`,
      value: spent,
      unit: 'dollars',
      figures: [
        ...lapses,
        ...(sites === 'any'
          ? []
          : [{ what: 'may use it', value: sites.length, unit: 'candidates' }]),
      ],
      source: 'funds of the campus file',
    },
  };
}
