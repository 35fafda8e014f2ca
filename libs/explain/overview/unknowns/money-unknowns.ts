import type { Fund } from '#domain/money.js';
import { finalPayer } from '#domain/plan.js';
import { cents, centsToDollars } from '#units/cents.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { dollarsInWords } from '#units/in-words.js';
import type { Ground } from '../ground.js';
import type { UnknownRow } from '../plan-overview.js';

/** Money that is pledged or hoped for: whether it comes is not known. */
export function moneyUnknowns(ground: Ground): UnknownRow[] {
  return ground.campus.funds
    .filter((fund) => fund.status !== 'received' && fund.inflows.length > 0)
    .map((fund) => ({
      site: '',
      name: fund.name,
      what: `Whether the money comes: ${fund.status === 'pledged' ? 'pledged and not yet received' : 'hoped for, with no pledge'}.`,
      clearedBy: CLEARED_BY[fund.kind],
      consequence: fund.counted ? countedOn(ground, fund) : notCountedOn(ground, fund),
    }));
}

const CLEARED_BY: Readonly<Record<Fund['kind'], string>> = {
  capital: 'The budget office',
  operating: 'The budget office',
  reserve: 'The budget office',
  gift: 'Advancement',
  'reunion-gift': 'Advancement',
  'endowment-payout': 'Advancement',
  'student-fee': 'Student government',
  grant: 'The grant’s program officer',
};

function countedOn({ plan }: Ground, fund: Fund): string {
  const spent = sum(plan.spending.filter((entry) => finalPayer(entry).fund === fund.id));
  return spent === 0
    ? 'The plan spends none of it.'
    : `The plan spends ${dollarsInWords(spent)} of it; without it, sites wait or other money must be found.`;
}

function notCountedOn({ years }: Ground, fund: Fund): string {
  const within = fund.inflows.filter(({ year }) => years.includes(year));
  const first = within[0];
  if (!first) return 'The plan does not count on it.';
  return `The plan does not count on it: ${dollarsInWords(sum(within))} in all, from ${fiscalYearLabel(first.year)} on.`;
}

function sum(entries: readonly { readonly amount: number }[]): number {
  return centsToDollars(cents(entries.reduce((total, { amount }) => total + amount, 0)));
}
