import { prepareIndex } from '#domain/calendar.js';
import type { Fund } from '#domain/money.js';
import { preparedYears, type Hire, type Placement } from '#domain/plan.js';
import { buildBills, recurringSupplies } from '#estimating/plan-needs/money-needs.js';
import { Planner, type News } from '../replan/planner.js';
import type { World } from '../sampling/world.js';
import { Heap } from './heap.js';
import { brokenIn } from './kept.js';
import type { Outcome } from './outcome.js';
import { endsWith, isTaken, type Piece } from './pieces.js';
import { RunningCosts } from './running-costs.js';
import { SeasonWork, type Ground } from './season-work.js';
import type { Setting, Worker } from './setting.js';
import { Wallet } from './wallet.js';

/**
 * A plan in one course of events. What is lacking is met in the plan's own order: care goes unserved
 * first; a build that cannot be prepared or paid is skipped; a position that cannot be paid gives no hours
 * that year. Unserved care sets ground back in age. Where the setting has a basis for it, the plan is
 * repaired each year, before anything is built.
 */
export function runFuture(setting: Setting, world: World, future: number): Outcome {
  return new Course(setting, world).run(future);
}

/** Times a year that a plan is repaired where sites that it named could not be begun. */
const MOST_TRIES = 3;

class Course {
  private readonly grounds: Ground[];
  private readonly wallet: Wallet;
  private readonly work: SeasonWork;
  private readonly heap: Heap;
  private readonly costs: RunningCosts;
  private readonly workers: Worker[];
  private readonly planner: Planner | undefined;
  /** What was to be built: the plan's placements, or those that were begun in a plan made anew. */
  private readonly placements: Placement[];
  private readonly skipped = new Set<string>();
  private careFactor = 1;

  constructor(
    private readonly setting: Setting,
    private readonly world: World,
  ) {
    const { plan, pieces, budget, basis } = setting;
    this.planner = basis && new Planner(basis);
    this.placements = basis ? [] : [...plan.decisions.placements];
    this.workers = basis ? setting.workers.slice(0, setting.pools) : [...setting.workers];
    this.grounds = pieces
      .filter((piece) => !basis || piece.placement < 0)
      .map((piece) => this.groundOf(piece));
    this.wallet = new Wallet(budget, world.arrives);
    this.work = new SeasonWork({
      ...{ setting, world, workers: this.workers, grounds: this.grounds },
      isSkipped: (piece) => this.isSkipped(piece),
    });
    const of = {
      ...{ setting, world, grounds: this.grounds, wallet: this.wallet },
      isSkipped: (piece: Piece) => this.isSkipped(piece),
    };
    this.heap = new Heap(of);
    this.costs = new RunningCosts({ ...of, workers: this.workers, work: this.work });
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
      this.hire(year);
      this.costs.pay(year);
      for (let s = year * perYear; s < (year + 1) * perYear; s++) this.season(s, year);
      this.work.growWeeds();
    }
    return this.outcome(future);
  }

  /** Fills the positions that a plan made anew starts in a year. */
  private hire(year: number): void {
    this.planner?.startingIn(year).forEach((count, position) => {
      const before =
        this.planner?.hired[position]?.subarray(0, year).reduce((a, b) => a + b, 0) ?? 0;
      for (let i = 0; i < count; i++) {
        this.workers.push(this.setting.hiredFor(position, year, before + i));
      }
    });
  }

  private season(s: number, year: number): void {
    this.work.open(s, year);
    this.prepare(s, year);
    this.heap.spread(s, year);
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
    const { calendar } = this.setting.campus;
    if (year < calendar.horizonYears && s === prepareIndex(calendar, year)) this.planAnew(s, year);
  }

  /** Begins the sites that the plan names for this year, and asks again where some could not be. */
  private planAnew(s: number, year: number): void {
    const { planner, world } = this;
    if (!planner) return;
    this.careFactor = this.work.takeCareFactor();
    for (let tries = 0, isDone = false; tries < MOST_TRIES && !isDone; tries++) {
      isDone = true;
      for (const life of planner.next(this.newsOf(s, year))) {
        const bid = world.buildCost.get(life.site) ?? 1;
        if (this.begin(life.placement, year)) planner.began(life, bid);
        else {
          planner.turnedDown(life, bid);
          isDone = false;
        }
      }
    }
  }

  private newsOf(season: number, year: number): News {
    const { prices, works } = this.world;
    const at = (kind: keyof typeof prices) => prices[kind][year] ?? 1;
    return {
      ...{ year, season, stock: this.heap.stock, purses: this.purses(year) },
      careFactor: this.careFactor,
      prices: { construction: at('construction'), wages: at('wages'), supplies: at('supplies') },
      repayable: (grant) =>
        this.world.arrives.has(grant.id) || yearOf(this.setting, year) < firstYear(grant)
          ? this.wallet.repayable(grant)
          : 0,
      isTaken: ({ placement }) => isTaken(this.setting.campus, placement, works),
    };
  }

  /** Money that is left or still expected: what did not come is known when it should have. */
  private purses(year: number): Float64Array {
    const { purses, places } = this.setting.budget;
    const left = this.wallet.amounts();
    return left.map((amount, i) => {
      const purse = purses[places[i] ?? 0];
      if (!purse || this.world.arrives.has(purse.fund.id)) return amount;
      return purse.first > year ? purse.amount : 0;
    });
  }

  /** Prepares the first ground of a site; false where that cannot be. */
  private begin(placement: Placement, year: number): boolean {
    const place = this.placements.length;
    const grounds = this.setting
      .piecesFor(placement)
      .map((piece) => this.groundOf({ ...piece, placement: place }));
    const [first] = grounds;
    if (!first || !this.canBuild(first.piece, year)) return false;
    first.open = true;
    this.placements.push(placement);
    this.grounds.push(...grounds);
    for (const ground of grounds) this.costs.paySupplies(ground, year);
    return true;
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
  }

  private outcome(future: number): Outcome {
    const { campus, plan } = this.setting;
    const built = this.placements.flatMap((p, place) => this.asBuilt(p, place) ?? []);
    const sites = new Set(built.map((p) => p.site));
    const actual = { ...plan, decisions: { ...plan.decisions, hires: this.hires() } };
    return {
      future,
      ...{ wanted: this.work.wanted, there: this.work.there, unserved: this.work.unserved },
      broken: campus.commitments.map((c) =>
        brokenIn(c, { campus, plan: actual, built, unserved: this.work.unservedBy }),
      ),
      built: built.length,
      skipped: plan.decisions.placements.flatMap((p) => (sites.has(p.site) ? [] : [p.site])),
      unpaid: this.costs.unpaid,
      compostShort: this.heap.short,
      lapsed: Object.fromEntries(
        campus.funds
          .filter((f) => f.counted && isGift(f.kind) && this.world.arrives.has(f.id))
          .map((f) => [f.id, this.wallet.unspent(f.id) / 100]),
      ),
    };
  }

  private hires(): readonly Hire[] {
    const { campus, plan } = this.setting;
    if (!this.planner) return plan.decisions.hires;
    return this.planner.hired.flatMap((byYear, place) =>
      Array.from(byYear, (count, year) => ({
        ...{ position: campus.positions[place]?.id ?? '', count },
        year: yearOf(this.setting, year),
      })).filter(({ count }) => count > 0),
    );
  }

  /** A placement as it came about: whole, its first half alone, or not at all. */
  private asBuilt(placement: Placement, place: number): Placement | undefined {
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

function firstYear({ inflows }: Fund): number {
  return Math.min(...inflows.map(({ year }) => year));
}

/** A year after any plan. */
const NEVER = 9999 as Placement['year'];

function yearOf({ campus }: Setting, year: number): Placement['year'] {
  return (campus.calendar.firstYear + year) as Placement['year'];
}
