import { priceGrowth } from '#estimating/site-charges/price-growth.js';
import type { HeapOf } from './heap.js';
import type { Ground, SeasonWork } from './season-work.js';
import type { Worker } from './setting.js';

/** Who and what is paid for year by year in one future, and from what. */
export interface RunningCostsOf extends HeapOf {
  /** Some may be added while time goes on. */
  readonly workers: readonly Worker[];
  /** Is told who is paid. */
  readonly work: SeasonWork;
}

/** The bills of one future that come each year, and those that no money is left for. */
export class RunningCosts {
  /** Dollars that nothing paid so far. */
  unpaid = 0;

  constructor(private readonly of: RunningCostsOf) {}

  /** Standing costs, then positions by the year of their start, then supplies of the ground that is cared for. */
  pay(year: number): void {
    const { standing } = this.of.setting;
    const { prices } = this.of.world;
    for (const kind of ['wages', 'supplies', 'construction'] as const) {
      const amount = (standing[kind][year] ?? 0) * (prices[kind][year] ?? 1);
      if (amount > 0) this.owe(this.of.wallet.pay({ line: 'standing', yearIndex: year, amount }));
    }
    this.of.workers.forEach(({ cost }, i) => {
      const amount = (cost?.[year] ?? 0) * (prices.wages[year] ?? 1);
      this.of.work.working[i] =
        amount <= 0 || this.of.wallet.payWhole({ line: 'positions', yearIndex: year, amount });
    });
    for (const ground of this.of.grounds) this.paySupplies(ground, year);
  }

  paySupplies({ piece, supplies, open }: Ground, year: number): void {
    const { campus } = this.of.setting;
    const { life, site, buildType, changeCost } = piece;
    if (!open && this.of.isSkipped(piece)) return;
    const base = supplies[year] ?? 0;
    if (base === 0 && changeCost === 0) return;
    const perYear = campus.calendar.seasons.length;
    const changes = changeCost > 0 && Math.floor(life.planted / perYear) === year;
    const growth = (kind: 'supplies' | 'construction') =>
      priceGrowth(campus, kind, year) * (this.of.world.prices[kind][year] ?? 1);
    const amount = base * growth('supplies') + (changes ? changeCost * growth('construction') : 0);
    if (amount > 0) {
      this.owe(this.of.wallet.pay({ line: 'care', site, buildType, yearIndex: year, amount }));
    }
  }

  private owe(amount: number): void {
    // A cent or two are the rounding of a plan's own payments.
    if (amount > 100) this.unpaid += amount / 100;
  }
}
