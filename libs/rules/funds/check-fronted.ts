import type { Breach } from '#domain/breach.js';
import type { Campus } from '#domain/campus.js';
import type { Fund } from '#domain/money.js';
import type { Plan, SpendEntry } from '#domain/plan.js';
import { paybackOf } from '#estimating/purses/paybacks.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { allows, breach, dollars, total, typeOf } from './entries.js';

/**
 * What a reimbursable grant pays back: to the fund that it names, for builds that it may pay, spent in
 * the years of the award, never more than the award, and before the money's own last year is over.
 */
export function checkFronted(campus: Campus, plan: Plan): Breach[] {
  const repaid = plan.spending.filter((entry) => entry.repaidBy !== undefined);
  return [
    ...repaid.flatMap((entry) => entryBreaches(campus, plan, entry)),
    ...campus.funds.flatMap((grant) => beyondAward(grant, repaid)),
  ];
}

function entryBreaches(campus: Campus, plan: Plan, entry: SpendEntry): Breach[] {
  const grant = campus.funds.find((f) => f.id === entry.repaidBy?.fund);
  const award = grant?.inflows[entry.repaidBy?.inflow ?? -1];
  const payback = paybackOf(campus, entry);
  if (!grant || !award || !payback) {
    const { fund, inflow } = entry.repaidBy ?? {};
    return [breach(fund ?? '', `${fund} has no award numbered ${inflow} that pays anything back`)];
  }
  const year = fiscalYearLabel(entry.year);
  const what = `${dollars(entry.amount)} in ${year}`;
  const found: string[] = [];
  if (grant.reimbursement?.frontedBy !== entry.fund)
    found.push(`${grant.name} pays nothing back to ${entry.fund} (${what})`);
  if (entry.line !== 'build' || !allows(award, typeOf(campus, plan, entry), entry))
    found.push(
      `${grant.name} may not pay back ${entry.line} of ${entry.site ?? 'no site'} (${what})`,
    );
  if (entry.year < award.year || entry.year > award.lastYear) {
    const years = `${fiscalYearLabel(award.year)} to ${fiscalYearLabel(award.lastYear)}`;
    found.push(`${grant.name} pays back what is spent in ${years}, not ${what}`);
  }
  const front = campus.funds.find((f) => f.id === entry.fund)?.inflows[entry.inflow];
  if (front && payback.year > front.lastYear) {
    const back = fiscalYearLabel(payback.year);
    const last = fiscalYearLabel(front.lastYear);
    found.push(
      `${grant.name} pays back in ${back} money that may be spent until ${last} (${what})`,
    );
  }
  return found.map((message) => breach(grant.id, message));
}

function beyondAward(grant: Fund, repaid: readonly SpendEntry[]): Breach[] {
  return grant.inflows.flatMap(({ amount, year }, inflow) => {
    const paid = total(
      repaid.filter(({ repaidBy }) => repaidBy?.fund === grant.id && repaidBy.inflow === inflow),
    );
    if (paid <= amount) return [];
    const award = `the ${dollars(amount)} awarded in ${fiscalYearLabel(year)}`;
    return [breach(grant.id, `${grant.name} pays back ${dollars(paid)} of ${award}`)];
  });
}
