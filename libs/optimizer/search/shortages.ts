import type { Amounts } from './life-charges.js';
import type { MoneyLayout } from './money-layout.js';

/** Costs that have together no more money than this, whatever is paid how. */
interface Shortage {
  readonly dues: Int32Array;
  /** 1 for each of its dues. */
  readonly isDue: Uint8Array;
  /** Cents in all purses that may pay any of them. */
  readonly money: number;
}

/** Shortages that are remembered: a search meets the same few again and again. */
const MOST_KEPT = 10;

const NOTHING_MORE: Amounts = { at: new Int32Array(), amounts: new Float64Array() };

/**
 * Shortages that a search has met: sets of costs that all purses which may pay any of them do not cover. That
 * all costs can be paid, no set may be short (Hall 1935; Gale 1957 with amounts), so one that is rules a plan
 * out before its money is looked at. Limits of matching money are left out, which errs towards "may be paid".
 */
export class Shortages {
  /** The one met last comes first. */
  private readonly kept: Shortage[] = [];

  constructor(
    private readonly arcs: MoneyLayout,
    private readonly amounts: Float64Array,
  ) {}

  /** Whether a shortage that is known rules these costs out, with more to pay. */
  has(costs: Float64Array, more: Amounts): boolean {
    const { kept } = this;
    for (let i = 0; i < kept.length; i++) {
      const shortage = kept[i];
      if (!shortage || !isShort(shortage, costs, more)) continue;
      kept.copyWithin(1, 0, i);
      kept[0] = shortage;
      return true;
    }
    return false;
  }

  /** Takes in costs that cannot all be paid, if that is for want of money alone. */
  learn(costs: Float64Array, dues: Int32Array): void {
    if (this.has(costs, NOTHING_MORE)) return;
    const isDue = new Uint8Array(costs.length);
    for (const due of dues) isDue[due] = 1;
    const shortage = { dues: Int32Array.from(dues), isDue, money: this.moneyFor(dues) };
    if (!isShort(shortage, costs, NOTHING_MORE)) return;
    this.kept.unshift(shortage);
    if (this.kept.length > MOST_KEPT) this.kept.pop();
  }

  private moneyFor(dues: Int32Array): number {
    const { dueStarts, purse } = this.arcs;
    const payers = new Set<number>();
    for (const due of dues) {
      const end = dueStarts[due + 1] ?? 0;
      for (let arc = dueStarts[due] ?? 0; arc < end; arc++) payers.add(purse[arc] ?? -1);
    }
    let money = 0;
    for (const payer of payers) money += this.amounts[payer] ?? 0;
    return money;
  }
}

function isShort({ dues, isDue, money }: Shortage, costs: Float64Array, more: Amounts): boolean {
  let owed = 0;
  for (const due of dues) owed += costs[due] ?? 0;
  const { at, amounts } = more;
  for (let i = 0; i < at.length; i++) if (isDue[at[i] ?? -1] === 1) owed += amounts[i] ?? 0;
  return owed > money;
}
