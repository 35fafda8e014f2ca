import type { Campus } from '#domain/campus.js';
import type { SpendEntry } from '#domain/plan.js';
import { reimbursement, type Payback } from '../cost/matching.js';
import { paysBackLater } from './purses.js';

/** What of an entry comes back to its fund and when; `undefined` where no counted grant pays it back. */
export function paybackOf(
  { funds }: Pick<Campus, 'funds'>,
  { amount, year, repaidBy }: SpendEntry,
): Payback | undefined {
  const grant = repaidBy && funds.find(({ id }) => id === repaidBy.fund);
  if (!grant?.counted || !paysBackLater(grant)) return undefined;
  return reimbursement(amount, year, grant.reimbursement?.lagYears ?? 0);
}
