import { NO_DECISIONS, type Decisions } from '#domain/plan.js';
import { seededRandom, type Random } from '#units/random.js';
import type { Ground } from '../columns/add-columns.js';
import { isServed } from '../construct/try-life.js';
import { adopt } from '../construct/adopt.js';
import { improve } from '../improve/improve.js';
import { MetLives } from '../improve/met-lives.js';
import { pricesOf, type Prices } from '../improve/prices.js';
import {
  COOLING_ROUNDS,
  ruinAndRecreate,
  WANDERING,
  type RuinSettings,
} from '../improve/ruin-and-recreate.js';
import { searchValues } from '../improve/values.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import { staffedStateOf, stateOf } from '../search/state-of.js';
import type { Tables } from '../search/tables.js';
import type { Board } from './board.js';
import { coreLimits, secondsLimit, smallParts, type Budget } from './budget.js';
import { boundByCounts } from './bound-by-counts.js';
import { diveFor, type DiveGoal } from './dive-for.js';
import { question, solvePart } from './part-solve.js';
import { restricted } from './restricted.js';
import type { Relaxation } from './solve-tier.js';

/** Lives that a solve among the cheapest chooses from; doubled where that is solved to its end. */
const CORE_LIVES = 700;

/** Lives to choose from with the people of the best plan, and with nearly these; doubled like the others. */
const NEAR_LIVES: readonly number[] = [300, 250];

/**
 * Lives met on the way from which a plan is put together, at first; by what their number grows where that is solved
 * to its end, and falls where it is not; and the share of the time in which they are met, at the most.
 */
const MET_LIVES = 130;
const MORE_MET = 1.3;
const FEWER_MET = 0.8;
const MEET_SHARE = 0.5;

/** Gap, as a share, at which a plan put together of them is good enough. */
const MERGED_GAP = 1e-4;

/**
 * Seconds between two plans that a search tells: judging one takes as long as many rounds, so it is this many times
 * as long as that took, within these limits.
 */
const TELL_TIMES = 12;
const TELL_SECONDS = { least: 0.5, most: 0.8 };

/** Share of the time for the whole, and nodes, in which it is bounded by counts. */
const COUNTS_SHARE = 0.5;
const COUNTS_NODES = 200;

/** What leads a search, and what it tells beside better plans. */
type SearchHow = Pick<RuinSettings, 'prices' | 'beat' | 'losses' | 'onTaken'>;

/** The ways of making a plan better, or of proving that none is, each for as long as it is given. */
export class Steps {
  private readonly random: Random;
  private dives = 0;
  /** A relaxation with what lives cost it among the whole people of the last dive. Left out: no dive yet. */
  dived: Relaxation | undefined;
  private nears = 0;
  /** Lives to choose from near the people of the best plan, by how many more or fewer each year may have. */
  private readonly nearLives = [...NEAR_LIVES];
  lives = CORE_LIVES;
  private metLives = MET_LIVES;

  constructor(
    private readonly board: Board,
    private readonly tables: Tables,
  ) {
    this.random = seededRandom(board.run.settings.seed);
  }

  /** Works out what lives ask for, which a search would do life by life. */
  prepare(): void {
    for (const life of this.tables.ground.lifecycles) this.tables.chargesOf(life);
  }

  /** Searches around the best plan, all tiers at once. */
  search(budget: Budget, prices?: Prices): void {
    this.searchAroundBest(budget, prices ? { prices } : {});
  }

  private searchAroundBest(budget: Budget, how: SearchHow): void {
    const { best } = this.board;
    if (best) this.searchFrom(staffedStateOf(this.tables, best.plan.decisions), budget, how);
  }

  /**
   * Dives for a plan near a relaxation of benefit, and searches around it, be it better than the best or
   * not, also for what the dive left of its time: a search of its own does not come so far from where it
   * began. Repeatable runs leave it out, since it gives up solves by the clock.
   */
  dive(of: Omit<DiveGoal, 'random'>, search: Budget, byChance = this.dives > 0): void {
    const { board } = this;
    if (!board.best || board.shouldStop() || board.run.settings.work !== undefined) return;
    const { around } = board.run;
    const until = around.elapsed() + of.seconds;
    const found = diveFor(board, {
      ...of,
      ...(byChance ? { random: this.random } : {}),
    });
    this.dives += 1;
    this.dived = found?.relaxation ?? this.dived;
    const state = found && adopt(this.tables, found.decisions, 'as there');
    if (!state) return;
    board.offerUnsure(decisionsOf(state));
    const beat = searchValues(staffedStateOf(this.tables, board.best.plan.decisions));
    const spare = Math.max(0, until - around.elapsed());
    const seconds = (search.seconds ?? Infinity) + spare;
    this.searchFrom(state, { ...search, seconds }, { prices: pricesOf(found.relaxation), beat });
  }

  private searchFrom(
    state: SearchState,
    { seconds = Infinity, rounds = Infinity, enough }: Budget,
    how: SearchHow,
  ): void {
    const { board } = this;
    const { around } = board.run;
    const until = around.elapsed() + seconds;
    let found: Decisions | undefined;
    let tellFrom = around.elapsed() + TELL_SECONDS.least;
    const tell = () => {
      const began = around.elapsed();
      if (found && board.offer(found)) board.report(board.benefit);
      found = undefined;
      const wait = TELL_TIMES * (around.elapsed() - began);
      const { least, most } = TELL_SECONDS;
      tellFrom = around.elapsed() + Math.min(most, Math.max(least, wait));
    };
    ruinAndRecreate(state, {
      random: this.random,
      rounds,
      done: () => {
        if (found && around.elapsed() >= tellFrom) tell();
        return board.shouldStop() || around.elapsed() >= until || enough?.() === true;
      },
      onBetter: (better) => {
        found = decisionsOf(better);
      },
      ...how,
    });
    tell();
    board.hear();
  }

  /** The same sites with no more people and compost than they need: a solve for benefit may leave spare ones. */
  makeLean(): void {
    const { best } = this.board;
    if (!best) return;
    const state = stateOf(this.tables, best.plan.decisions);
    if (isServed(state)) this.board.offerUnsure(decisionsOf(state));
  }

  /** A search between two solves: as long as time is limited, or some rounds. */
  pause(seconds: number): Budget {
    const { work } = this.board.run.settings;
    if (work !== undefined) return { rounds: work };
    return Number.isFinite(seconds) ? { seconds } : { rounds: 0 };
  }

  isDone(place: number): boolean {
    this.board.hear();
    return this.board.shouldStop() || this.board.closeEnough(place);
  }

  /** Solves a tier among the lives that cost its relaxation least. */
  core(place: number, relaxation: Relaxation, seconds: number): void {
    if (this.isDone(place)) return;
    const limits = coreLimits(this.board.run.settings, seconds);
    const outcome = solvePart(this.board, place, { relaxation, most: this.lives, limits });
    if (outcome.ended === 'optimal' && !outcome.exact) this.lives *= 2;
  }

  /**
   * Wanders around the best plan, and solves a tier among the lives that were met on the way, with the people of
   * the best plan: what is good in several plans comes together in one (Aggarwal, Orlin and Tai 1997).
   */
  merge(place: number, relaxation: Relaxation, seconds: number): void {
    const { board } = this;
    const { around, settings } = board.run;
    if (this.isDone(place)) return;
    const until = around.elapsed() + seconds;
    const met = new MetLives();
    this.searchAroundBest(
      { rounds: COOLING_ROUNDS, seconds: seconds * MEET_SHARE },
      {
        prices: pricesOf(this.dived ?? relaxation),
        losses: WANDERING,
        onTaken: (state) => met.meet(state),
      },
    );
    if (this.isDone(place)) return;
    const { ended } = solvePart(board, place, {
      relaxation,
      most: Infinity,
      among: met.first(this.metLives),
      limits: {
        ...coreLimits(settings, until - around.elapsed()),
        relativeGap: Math.max(MERGED_GAP, settings.gap ?? 0),
      },
      slack: 0,
    });
    this.metLives = Math.ceil(this.metLives * (ended === 'optimal' ? MORE_MET : FEWER_MET));
  }

  /** Solves a tier among fewer lives still, with about as many people as the best plan has. */
  nearPeople(place: number, relaxation: Relaxation, seconds: number): void {
    if (this.isDone(place)) return;
    const slack = this.nears++ % this.nearLives.length;
    const limits = coreLimits(this.board.run.settings, seconds);
    const most = this.nearLives[slack] ?? Infinity;
    const by = slack === 0 ? (this.dived ?? relaxation) : relaxation;
    const outcome = solvePart(this.board, place, { relaxation: by, most, limits, slack });
    if (outcome.ended === 'optimal') this.nearLives[slack] = most * 2;
  }

  /** Solves a tier among all lives that a better plan may have. Repeatable runs leave it out. */
  whole(place: number, relaxation: Relaxation, seconds: number): void {
    if (this.isDone(place) || this.board.run.settings.work !== undefined) return;
    const counted = boundByCounts(this.board, place, {
      seconds: seconds * COUNTS_SHARE,
      nodes: COUNTS_NODES,
    });
    if (this.isDone(place)) return;
    const limits = {
      ...secondsLimit(seconds * (1 - COUNTS_SHARE)),
      relativeGap: this.board.run.settings.gap ?? 0,
    };
    solvePart(this.board, place, { relaxation: counted ?? relaxation, most: Infinity, limits });
  }

  /** Re-solves a few sites at a time, among the lives that cost the relaxation least. */
  smallParts(place: number, relaxation: Relaxation, seconds: number): void {
    const { board } = this;
    const tier = board.on.tiers[place];
    if (this.isDone(place) || !board.best || !tier) return;
    const best = {
      decisions: board.best.plan.decisions,
      value: board.best.values[place] ?? 0,
    };
    const { ground } = restricted(board.on.ground, {
      tier,
      relaxation,
      best,
      most: 2 * this.lives,
    });
    this.improve(place, { ground, seconds });
  }

  /** Re-solves a few sites at a time; `enough` re-solves in a row without a gain end it. */
  improve(
    place: number,
    of: { readonly ground?: Ground; readonly seconds: number; readonly enough?: number },
  ): void {
    const { board } = this;
    const { ground = board.on.ground, seconds, enough } = of;
    const until = this.board.run.around.elapsed() + seconds;
    const { rounds } = smallParts(this.board.run.settings, seconds);
    improve({
      ...question(board, place),
      ground,
      random: this.random,
      best: () => board.best?.plan.decisions ?? NO_DECISIONS,
      take: (decisions) => {
        const better = board.offer(decisions);
        if (better) board.report(place);
        return better;
      },
      done: () => this.isDone(place),
      secondsLeft: () => until - this.board.run.around.elapsed(),
      ...(rounds === undefined ? {} : { rounds }),
      ...(enough === undefined ? {} : { enough }),
    });
  }
}
