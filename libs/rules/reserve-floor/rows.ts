import type { Campus } from '#domain/campus.js';
import type { ModelDraft } from '#mip/model-draft.js';

/**
 * The floor of a fund is money that is never spent: `pursesOf` locks it into the earliest inflows.
 * What remains to say is that it must be there from the first year.
 *
 *     floor[f]  <=  sum of inflows of f that have arrived by the first year     for each fund f
 *
 * A fund that cannot show its floor admits no plan, so the row 0 >= 1 is written.
 */
export function addReserveFloorRows(draft: ModelDraft, campus: Campus): void {
  for (const fund of campus.funds.filter((f) => f.counted && f.floor > 0)) {
    const first = fund.inflows
      .filter((f) => f.year <= campus.calendar.firstYear)
      .reduce((sum, f) => sum + f.amount, 0);
    if (first < fund.floor)
      draft.addRow({ label: `reserve-floor ${fund.id}`, terms: [], atLeast: 1 });
  }
}
