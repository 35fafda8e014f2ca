import { ageAt, prepareIndex } from '#domain/calendar.js';
import { preparedYears, type Placement } from '#domain/plan.js';
import { buildBills, recurringSupplies } from '#estimating/plan-needs/money-needs.js';
import { priceGrowth } from '#estimating/site-charges/price-growth.js';
import { hundredthsFor } from '#estimating/site-charges/type-profile.js';
import type { World } from '../sampling/world.js';
import { brokenIn } from './kept.js';
import type { Outcome } from './outcome.js';
import { endsWith, isTaken, type Piece } from './pieces.js';
import { SeasonWork, type Ground } from './season-work.js';
import type { Setting } from './setting.js';
import { Wallet } from './wallet.js';

/**
 * A plan in one course of events. What is lacking is met in the plan's own order: care goes unserved
 * first; a build that cannot be prepared or paid is skipped, and made up for only where the setting has
 * later pieces; a position that cannot be paid gives no hours that year. Unserved care sets ground back in age.
 */
export function runFuture(setting: Setting, world: World, future: number): Outcome {
  return new Course(setting, world).run(future);
}

class Course {
  private readonly grounds: Ground[];
  private readonly wallet: Wallet;
  private readonly work: SeasonWork;
  private readonly skipped = new Set<string>();
  /** Places in the plan of sites skipped whole, and those that were built later. */
  private readonly missed = new Set<number>();
  private readonly madeUp = new Map<number, Placement>();
  private stock: number;
  private unpaid = 0;
  private compostShort = 0;

  constructor(
    private readonly setting: Setting,
    private readonly world: World,
  ) {
    const { campus, pieces, budget } = setting;
    this.grounds = pieces.map((piece) => this.groundOf(piece));
    this.wallet = new Wallet(budget, world.arrives);
    this.work = new SeasonWork({
      ...{ setting, world, grounds: this.grounds },
      isSkipped: (piece) => this.isSkipped(piece),
    });
    this.stock = campus.compost.openingStock;
  }

  private groundOf(piece: Piece): Ground {
    const { campus } = this.setting;
    const { charges, life } = piece;
    const ends = endsWith(campus, piece, this.world.works);
    const supplies =
      ends === life.ends
        ? piece.supplies
        : recurringSupplies(campus, [{ charges, life: { ...life, ends } }]);
    return { piece, ends, supplies, lost: 0, open: piece.placement < 0 };
  }

  run(future: number): Outcome {
    const { seasons, years } = this.setting;
    const perYear = seasons.length / years;
    for (let year = 0; year < years; year++) {
      this.payRunningCosts(year);
      for (let s = year * perYear; s < (year + 1) * perYear; s++) this.season(s, year);
      this.work.growWeeds();
    }
    return this.outcome(future);
  }

  /** Standing costs, then positions by the year of their start, then supplies of the ground that is cared for. */
  private payRunningCosts(year: number): void {
    const { standing, workers } = this.setting;
    const { prices } = this.world;
    for (const kind of ['wages', 'supplies', 'construction'] as const) {
      const amount = (standing[kind][year] ?? 0) * (prices[kind][year] ?? 1);
      if (amount > 0) this.owe(this.wallet.pay({ line: 'standing', yearIndex: year, amount }));
    }
    workers.forEach(({ cost }, i) => {
      const amount = (cost?.[year] ?? 0) * (prices.wages[year] ?? 1);
      this.work.working[i] =
        amount <= 0 || this.wallet.payWhole({ line: 'positions', yearIndex: year, amount });
    });
    for (const ground of this.grounds) this.paySupplies(ground, year);
  }

  private paySupplies({ piece, supplies, open }: Ground, year: number): void {
    const { campus } = this.setting;
    const { life, site, buildType, changeCost } = piece;
    if (!open && this.isSkipped(piece)) return;
    const base = supplies[year] ?? 0;
    if (base === 0 && changeCost === 0) return;
    const perYear = campus.calendar.seasons.length;
    const changes = changeCost > 0 && Math.floor(life.planted / perYear) === year;
    const growth = (kind: 'supplies' | 'construction') =>
      priceGrowth(campus, kind, year) * (this.world.prices[kind][year] ?? 1);
    const amount = base * growth('supplies') + (changes ? changeCost * growth('construction') : 0);
    if (amount > 0) {
      this.owe(this.wallet.pay({ line: 'care', site, buildType, yearIndex: year, amount }));
    }
  }

  private owe(amount: number): void {
    // A cent or two are the rounding of a plan's own payments.
    if (amount > 100) this.unpaid += amount / 100;
  }

  private season(s: number, year: number): void {
    this.work.open(s, year);
    this.prepare(s, year);
    this.spread(s, year);
    this.work.serve(s);
  }

  private isSkipped(piece: Piece): boolean {
    return piece.placement >= 0 && this.skipped.has(this.keyOf(piece));
  }

  /** A half that is skipped leaves the other standing; a change needs all of it. */
  private keyOf({ placement, life }: Piece): string {
    return `${placement} ${life.prepared ?? ''}`;
  }

  /** Builds in the plan's order: skipped where works hold the ground, or hours or money are not there. */
  private prepare(s: number, year: number): void {
    for (const ground of this.grounds) {
      const { piece } = ground;
      if (piece.life.prepared !== s) continue;
      if (this.canBuild(piece, year)) {
        ground.open = true;
        continue;
      }
      this.skip(piece);
    }
    this.makeUp(s, year);
  }

  /** Tries skipped sites again, whole sites in the plan's order, and makes up for one of them at most. */
  private makeUp(s: number, year: number): void {
    const { plan, laterPieces, campus } = this.setting;
    if (s % campus.calendar.seasons.length !== prepareIndex(campus.calendar, 0)) return;
    if (year >= campus.calendar.horizonYears) return;
    for (const place of this.missed) {
      const placement = plan.decisions.placements[place];
      if (!placement || placement.secondHalf !== undefined) continue;
      const later = { ...placement, year: yearOf(this.setting, year) };
      const grounds = laterPieces(later, place)?.map((piece) => this.groundOf(piece));
      const first = grounds?.[0];
      if (!grounds || !first || later.year <= placement.year) continue;
      if (this.canBuild(first.piece, year)) {
        first.open = true;
        this.grounds.push(...grounds);
        this.missed.delete(place);
        this.madeUp.set(place, later);
        return;
      }
    }
  }

  private canBuild(piece: Piece, year: number): boolean {
    const { campus } = this.setting;
    const placed = { site: piece.site, year: yearOf(this.setting, year) };
    if (
      !this.mayFollow(piece) ||
      this.isSkipped(piece) ||
      isTaken(campus, placed, this.world.works)
    )
      return false;
    const factor =
      (this.world.buildCost.get(piece.site) ?? 1) * (this.world.prices.construction[year] ?? 1);
    const { site, buildType } = piece;
    const hours: number = piece.charges.prepareHours;
    const paid = () =>
      buildBills(campus, [piece]).every(({ yearIndex, amount }) =>
        this.wallet.payWhole({
          line: 'build',
          site,
          buildType,
          yearIndex,
          amount: amount * factor,
        }),
      );
    if (this.work.prepare(hours) && paid()) return true;
    this.work.prepare(-hours);
    return false;
  }

  /** Whether all that must stand before a site was begun. */
  private mayFollow({ site }: Piece): boolean {
    return this.setting.campus.precedence.every(
      ({ before, after }) =>
        after !== site || this.grounds.some((g) => g.piece.site === before && g.open),
    );
  }

  /** Skips a piece, and all that was to come of it: the other half, and a later change. */
  private skip(piece: Piece): void {
    for (const { piece: other } of this.grounds) {
      const later = other.life.planted >= piece.life.planted;
      if (other.placement === piece.placement && later) this.skipped.add(this.keyOf(other));
    }
    this.missed.add(piece.placement);
  }

  /** Compost of builds and top-dressing: from stock, bought as planned, and more where it is lacking. */
  private spread(s: number, year: number): void {
    const { campus, purchases, compostPrice, seasons } = this.setting;
    const { compost } = campus;
    const season = seasons[s]?.season.id ?? '';
    const made = (compost.made[season] ?? 0) * (this.world.compost[year] ?? 1);
    const left = this.stock + made - this.compostWanted(s, season);
    const lacking = Math.max(purchases[s] ?? 0, Math.ceil(-left / 100 - 1e-9));
    const yards = Math.max(0, Math.min(compost.mostBoughtPerSeason, lacking));
    const amount = yards * (compostPrice[year] ?? 0) * (this.world.prices.supplies[year] ?? 1);
    const bought =
      amount > 0 && this.wallet.payWhole({ line: 'compost', yearIndex: year, amount }) ? yards : 0;
    const after = left + bought * 100;
    if (after < -1 && year < campus.calendar.horizonYears) this.compostShort += -after / 100;
    this.stock = Math.max(0, Math.min(compost.yard, after));
  }

  private compostWanted(s: number, season: string): number {
    const { campus } = this.setting;
    const { topDressSeason, topDressFromAge } = campus.compost;
    let builds = 0;
    let dressed = 0;
    for (const { piece, ends, open } of this.grounds) {
      const { life, charges } = piece;
      if (this.isSkipped(piece)) continue;
      if (life.prepared === s && open) builds += charges.buildCompost;
      const age = s < life.planted || s >= ends ? 0 : ageAt(campus.calendar, life.planted, s);
      if (season === topDressSeason && age >= topDressFromAge) {
        dressed += charges.areaSqFt * charges.profile.topDress;
      }
    }
    return builds + hundredthsFor(dressed);
  }

  private outcome(future: number): Outcome {
    const { campus, plan } = this.setting;
    const built = plan.decisions.placements.map((placement, place) =>
      this.asBuilt(placement, place),
    );
    return {
      future,
      ...{ wanted: this.work.wanted, there: this.work.there, unserved: this.work.unserved },
      broken: campus.commitments.map((c) =>
        brokenIn(c, {
          campus,
          plan,
          built: built.flatMap((p) => p ?? []),
          unserved: this.work.unservedBy,
        }),
      ),
      skipped: plan.decisions.placements.flatMap((p, i) =>
        built[i] === undefined ? [p.site] : [],
      ),
      unpaid: this.unpaid,
      compostShort: this.compostShort,
      lapsed: Object.fromEntries(
        campus.funds
          .filter((f) => f.counted && isGift(f.kind) && this.world.arrives.has(f.id))
          .map((f) => [f.id, this.wallet.unspent(f.id) / 100]),
      ),
    };
  }

  /** A placement as it came about: whole, its first half alone, or not at all. */
  private asBuilt(placement: Placement, place: number): Placement | undefined {
    const later = this.madeUp.get(place);
    if (later) return later;
    const skipped = this.grounds.filter(
      ({ piece, open }) => piece.placement === place && piece.life.prepared !== undefined && !open,
    ).length;
    if (skipped === 0) return placement;
    if (skipped === preparedYears(placement).length) return undefined;
    return { ...placement, secondHalf: NEVER };
  }
}

const GIFTS = ['gift', 'reunion-gift', 'grant', 'endowment-payout'];

function isGift(kind: string): boolean {
  return GIFTS.includes(kind);
}

/** A year after any plan. */
const NEVER = 9999 as Placement['year'];

function yearOf({ campus }: Setting, year: number): Placement['year'] {
  return (campus.calendar.firstYear + year) as Placement['year'];
}
