import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import type { Solver } from '#mip/solver.js';
import type { Ground } from '../columns/add-columns.js';
import type { HeldTiers } from '../model/plan-model.js';
import { benefitPlace, type Tier } from '../tiers/tier-list.js';
import { compareTiers } from '../tiers/tier-values.js';
import { Bounds, type FoundBound } from './bounds.js';
import { judgeDecisions, soundIncumbent, verifiedIncumbent, type Incumbent } from './incumbent.js';
import { pricesOf, type Prices } from '../improve/prices.js';
import type { News, PricesNews, SolveRun } from './settings.js';
import type { Lifecycle } from '#rules/columns.js';
import type { Relaxation } from './solve-tier.js';
import { tierResult } from './tier-report.js';

export interface BoardGround {
  readonly ground: Ground;
  readonly tiers: readonly Tier[];
  readonly solver: Solver;
}

/** A relaxation that the other thread has told, and its prices. */
interface ToldByLife {
  readonly relaxation: Relaxation;
  readonly prices: Prices;
}

/**
 * What one thread of a solve knows: the best verified plan, the bounds, and when to stop. Where two
 * threads solve side by side, each has a board, and they tell each other what is new.
 */
export class Board {
  readonly bounds: Bounds;
  best: Incumbent | undefined;
  /** The latest relaxation that the other thread has told, and that relaxation by life, once asked for. */
  private told: PricesNews | undefined;
  private byLife: (ToldByLife & { readonly of: PricesNews }) | undefined;

  constructor(
    readonly on: BoardGround,
    readonly run: SolveRun,
  ) {
    this.bounds = new Bounds(on.tiers);
  }

  get campus(): Campus {
    return this.on.ground.campus;
  }

  get benefit(): number {
    return benefitPlace(this.on.tiers);
  }

  /** Takes decisions that a search or the solver calls feasible; true where they are the best so far. */
  offer(decisions: Decisions): boolean {
    const found = verifiedIncumbent(this.campus, decisions, this.on.ground.charges);
    return found !== undefined && this.keepBetter(found);
  }

  /** Takes decisions that need not keep every rule. */
  offerUnsure(decisions: Decisions): boolean {
    const found = soundIncumbent(this.campus, decisions, this.on.ground.charges);
    return found !== undefined && this.keepBetter(found);
  }

  private keepBetter(found: Incumbent): boolean {
    if (this.best && compareTiers(this.campus, found.values, this.best.values) >= 0) return false;
    this.best = found;
    this.run.around.onPlan(found.plan, found.values);
    this.tell({ kind: 'plan', decisions: found.plan.decisions });
    return true;
  }

  noteBound(found: FoundBound): void {
    this.bounds.note(found);
    this.tell({ kind: 'bound', ...found });
    this.report(found.place);
  }

  private tell(news: News): void {
    this.run.around.partner?.tell(news);
  }

  /** Takes in what the other thread has told. */
  hear(): void {
    for (const news of this.run.around.partner?.news() ?? []) {
      if (news.kind === 'plan') this.hearPlan(news.decisions);
      else if (news.kind === 'prices') this.told = news;
      else {
        this.bounds.note(news);
        this.report(news.place);
      }
    }
  }

  private toldByLife(): ToldByLife | undefined {
    const { told } = this;
    if (told && this.byLife?.of !== told) {
      const relaxation = this.relaxationFrom(told);
      this.byLife = { of: told, relaxation, prices: pricesOf(relaxation) };
    }
    return this.byLife;
  }

  private relaxationFrom({ bound, counted, ...by }: PricesNews): Relaxation {
    const byLife = (numbers: Float64Array) =>
      new Map(this.on.ground.lifecycles.map((l, i) => [l, numbers[i] ?? 0]));
    return {
      bound,
      losesAtLeast: byLife(by.losses),
      costOf: byLife(by.costs),
      valueOf: byLife(by.values),
      ...(counted ? { counted } : {}),
    };
  }

  /** Tells the other thread what lives cost a relaxation of a tier, the tiers before it held at some values. */
  tellPrices(place: number, relaxation: Relaxation, held = this.held(place)): void {
    const inOrder = (by: ReadonlyMap<Lifecycle, number>) =>
      Float64Array.from(this.on.ground.lifecycles, (l) => by.get(l) ?? 0);
    this.tell({
      kind: 'prices',
      question: this.question(place, held),
      bound: relaxation.bound,
      losses: inOrder(relaxation.losesAtLeast),
      costs: inOrder(relaxation.costOf),
      values: inOrder(relaxation.valueOf),
      ...(relaxation.counted ? { counted: relaxation.counted } : {}),
    });
  }

  /** Prices that the other thread told last, whatever it asked; the same ones until it tells others. */
  get prices(): Prices | undefined {
    return this.toldByLife()?.prices;
  }

  /** What the other thread has told of this tier as it is now. */
  toldOf(place: number): Relaxation | undefined {
    return this.told?.question === this.question(place) ? this.toldByLife()?.relaxation : undefined;
  }

  private hearPlan(decisions: Decisions): void {
    const { incumbent } = judgeDecisions(this.campus, decisions, this.on.ground.charges);
    if (this.best && compareTiers(this.campus, incumbent.values, this.best.values) >= 0) return;
    this.best = incumbent;
    this.run.around.onPlan(incumbent.plan, incumbent.values);
  }

  /** Values of the tiers before `place`, of the best plan. */
  held(place: number): readonly number[] {
    return this.best?.values.slice(0, place) ?? [];
  }

  /** Names the question of a tier: its place, and what the tiers before it are held at. */
  question(place: number, held = this.held(place)): string {
    return `${place}:${held.join(',')}`;
  }

  /** Values of the tiers before `place` where they are kept in full. */
  keptInFull(place: number): readonly number[] {
    return this.on.tiers.slice(0, place).map(() => 0);
  }

  /** Whether a question need not be asked on: no time, proven, or another plan holds earlier tiers otherwise. */
  isOver(place: number, held: readonly number[]): boolean {
    this.hear();
    return this.shouldStop() || this.closeEnough(place) || !this.holds(held);
  }

  /** Whether the best plan still has these values in its first tiers. */
  holds(held: readonly number[]): boolean {
    return held.every((v, i) => v === this.best?.values[i]);
  }

  heldTiers(place: number, values = this.held(place)): HeldTiers {
    return new Map(this.on.tiers.slice(0, place).map((t, i) => [t.name, values[i] ?? 0]));
  }

  /** Proven, or for benefit within the gap that was asked for. */
  closeEnough(place: number): boolean {
    const tier = this.on.tiers[place];
    if (!this.best || !tier) return false;
    const value = this.best.values[place] ?? 0;
    const bound = this.bounds.of(place, this.best.values);
    if (tierResult(tier, value, bound).proven) return true;
    const { gap } = this.run.settings;
    if (gap === undefined || bound === null || place !== this.benefit) return false;
    return Math.abs(value - bound) <= gap * Math.max(1, Math.abs(value));
  }

  shouldStop(): boolean {
    const { settings, around } = this.run;
    if (around.shouldStop()) return true;
    return settings.seconds !== undefined && around.elapsed() >= settings.seconds;
  }

  secondsLeft(): number {
    const { settings, around } = this.run;
    return settings.seconds === undefined ? Infinity : settings.seconds - around.elapsed();
  }

  report(place: number): void {
    const tier = this.on.tiers[place];
    if (!tier) return;
    const value = this.best?.values[place];
    const bound = this.best ? this.bounds.of(place, this.best.values) : null;
    const shown = tierResult(tier, value ?? 0, bound);
    this.run.around.onProgress({
      tier: tier.name,
      objective: value ?? null,
      bound: shown.bound,
      gap: value === undefined ? null : shown.gap,
    });
  }
}
