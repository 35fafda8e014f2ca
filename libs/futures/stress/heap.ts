import { ageAt } from '#domain/calendar.js';
import { hundredthsFor } from '#estimating/site-charges/type-profile.js';
import type { World } from '../sampling/world.js';
import type { Piece } from './pieces.js';
import type { Ground } from './season-work.js';
import type { Setting } from './setting.js';
import type { Wallet } from './wallet.js';

/** What takes compost in one future, and what pays for it. */
export interface HeapOf {
  readonly setting: Setting;
  readonly world: World;
  readonly wallet: Wallet;
  /** All ground; some may be added while time goes on. */
  readonly grounds: readonly Ground[];
  readonly isSkipped: (piece: Piece) => boolean;
}

/** The compost of one future: what is made, bought, and used, season by season. */
export class Heap {
  /** Hundredths of a cubic yard. */
  stock: number;
  /** Cubic yards that were missing so far. */
  short = 0;

  constructor(private readonly of: HeapOf) {
    this.stock = of.setting.campus.compost.openingStock;
  }

  /** Compost of builds and top-dressing: from stock, bought as planned, and more where it is lacking. */
  spread(s: number, year: number): void {
    const { setting, world, wallet } = this.of;
    const { campus, purchases, compostPrice, seasons } = setting;
    const { compost } = campus;
    const season = seasons[s]?.season.id ?? '';
    const made = (compost.made[season] ?? 0) * (world.compost[year] ?? 1);
    const left = this.stock + made - this.wanted(s, season);
    const lacking = Math.max(purchases[s] ?? 0, Math.ceil(-left / 100 - 1e-9));
    const yards = Math.max(0, Math.min(compost.mostBoughtPerSeason, lacking));
    const amount = yards * (compostPrice[year] ?? 0) * (world.prices.supplies[year] ?? 1);
    const bought =
      amount > 0 && wallet.payWhole({ line: 'compost', yearIndex: year, amount }) ? yards : 0;
    const after = left + bought * 100;
    if (after < -1 && year < campus.calendar.horizonYears) this.short += -after / 100;
    this.stock = Math.max(0, Math.min(compost.yard, after));
  }

  private wanted(s: number, season: string): number {
    const { setting, grounds, isSkipped } = this.of;
    const { campus } = setting;
    const { topDressSeason, topDressFromAge } = campus.compost;
    let builds = 0;
    let dressed = 0;
    for (const { piece, ends, open } of grounds) {
      const { life, charges } = piece;
      if (isSkipped(piece)) continue;
      if (life.prepared === s && open) builds += charges.buildCompost;
      const age = s < life.planted || s >= ends ? 0 : ageAt(campus.calendar, life.planted, s);
      if (season === topDressSeason && age >= topDressFromAge) {
        dressed += charges.areaSqFt * charges.profile.topDress;
      }
    }
    return builds + hundredthsFor(dressed);
  }
}
