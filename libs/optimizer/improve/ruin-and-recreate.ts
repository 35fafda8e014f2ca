import { NO_DECISIONS, type Plan } from '#domain/plan.js';
import type { Lifecycle } from '#rules/columns.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';
import { checkPrecedence } from '#rules/precedence/check.js';
import { groupBy } from '#units/group-by.js';
import { shuffled, type Random } from '#units/random.js';
import { admissible } from '../construct/admissible.js';
import { countsInYear, livesCounting, mustHave, promisedByYear } from '../construct/musts.js';
import { isServed, restore, snapshotOf, tryLife } from '../construct/try-life.js';
import { hiresOf, placementsOf, type SearchState } from '../search/state.js';
import { aspirationPoints } from '../tiers/plan-benefit.js';
import { rankings, type Prices, type Ranking } from './ranking.js';
import { PEOPLE_WAYS } from './change-people.js';
import { Ways } from './ways.js';
import { ruin } from './ruin.js';
import { tiersOf } from '../tiers/tier-list.js';

/**
 * Share of benefit below the best at which a plan is still worked on further: it falls from the first
 * to the last over a number of rounds, and then begins anew (threshold accepting, Dueck and Scheuer 1990).
 */
const FIRST_LOSS = 0.001;
const LAST_LOSS = 0.0001;
const COOLING_ROUNDS = 600;

/** Rounds without a better plan after which a search has nothing more to find. */
const ENOUGH_ROUNDS = 2 * COOLING_ROUNDS;

export interface RuinSettings {
  readonly random: Random;
  /** Tried changes at the most; it ends sooner where nothing is gained for long. */
  readonly rounds: number;
  readonly done: () => boolean;
  /** Called with the state at each better plan. */
  readonly onBetter: (state: SearchState) => void;
  /** Values that a plan must beat to be told, where the state at hand is not the best known. */
  readonly beat?: readonly number[];
  /** Of a relaxation of benefit. Left out: not known. */
  readonly prices?: Prices;
}

/**
 * Improves a plan by taking a few sites out and building it up again, keeping what is no worse. Every
 * plan on the way serves all care and pays every cost, in the exact arithmetic of the accounts.
 */
export function ruinAndRecreate(state: SearchState, settings: RuinSettings): void {
  const { random, prices } = settings;
  const nextRanking = rankings(random, prices);
  const bySite = groupBy(state.tables.ground.lifecycles, (l) => l.site);
  let current = searchValues(state);
  let best = current;
  let lastGain = 0;
  const ways = new Ways(PEOPLE_WAYS, random);
  for (let round = 0; round < settings.rounds && !settings.done(); round++) {
    if (round - lastGain >= ENOUGH_ROUNDS) return;
    const before = snapshotOf(state);
    const lacked = total(lackingByYear(state));
    const people = ways.next();
    if (!ruin(state, { random, people, prices })) {
      // Nothing that is added to it will make it served.
      restore(state, before);
      continue;
    }
    const isBuilt = recreate(
      { state, bySite, random, ranking: nextRanking(), failed: new Set() },
      lacked,
    );
    const values = isBuilt && isServed(state) ? judged(state) : undefined;
    if (!values || !acceptable(values, { current, best, loss: toleratedLoss(round) })) {
      restore(state, before);
      continue;
    }
    if (lexicographic(values, current) < 0) ways.reward(people);
    current = values;
    if (lexicographic(values, best) >= 0) continue;
    best = values;
    lastGain = round;
    if (!settings.beat || lexicographic(values, settings.beat) < 0) settings.onBetter(state);
  }
}

/** Values to be made small, in the order of the tiers: shortfalls, then benefit with its sign turned. */
export function searchValues(state: SearchState): number[] {
  return valuesOf(state, planSketch(state));
}

/** Whether all binding promises are kept; a search serves all care, so decisions are enough to tell. */
function keepsBinding(state: SearchState, plan: Plan): boolean {
  const { campus } = state.tables.ground;
  return (
    checkPrecedence(campus, plan).length === 0 &&
    campus.commitments.every(
      (c) => c.strength !== 'binding' || commitmentShortfall(campus, plan, c).amount === 0,
    ) &&
    mustHave(state.tables, 'binding').every((group) => group.some((l) => state.lives.has(l)))
  );
}

/** A plan with its sites and people only: enough for promises, since a search serves all care. */
function planSketch(state: SearchState): Plan {
  const decisions = { ...NO_DECISIONS, placements: placementsOf(state), hires: hiresOf(state) };
  return { decisions, labor: [], unserved: [], spending: [], compost: [] };
}

/** The values of a state; `undefined` where a binding promise is broken. */
function judged(state: SearchState): number[] | undefined {
  const plan = planSketch(state);
  return keepsBinding(state, plan) ? valuesOf(state, plan) : undefined;
}

function valuesOf(state: SearchState, plan: Plan): number[] {
  const { campus } = state.tables.ground;
  const promises = tiersOf(campus).flatMap((t) =>
    t.commitment ? [commitmentShortfall(campus, plan, t.commitment).amount] : [],
  );
  let benefit = aspirationPoints(campus, plan);
  for (const life of state.lives) benefit += life.benefit;
  return [...promises, -benefit / 1000];
}

function lexicographic(a: readonly number[], b: readonly number[]): number {
  for (const [i, value] of a.entries()) {
    const difference = value - (b[i] ?? 0);
    if (Math.abs(difference) > 1e-9) return difference;
  }
  return 0;
}

/** No worse than the plan at hand, or no worse in promises than the best and nearly as good in benefit. */
function acceptable(
  values: readonly number[],
  of: { readonly current: readonly number[]; readonly best: readonly number[]; loss: number },
): boolean {
  const { current, best } = of;
  if (lexicographic(values, current) <= 0) return true;
  if (lexicographic(values.slice(0, -1), best.slice(0, -1)) > 0) return false;
  const [value = 0, least = 0] = [values.at(-1), best.at(-1)];
  return value - least <= of.loss * Math.abs(least);
}

function toleratedLoss(round: number): number {
  return FIRST_LOSS * (LAST_LOSS / FIRST_LOSS) ** ((round % COOLING_ROUNDS) / COOLING_ROUNDS);
}

/** One building up again: the order in which lives are tried, and those that did not fit any more. */
interface Recreation {
  readonly state: SearchState;
  readonly bySite: ReadonlyMap<string, readonly Lifecycle[]>;
  readonly random: Random;
  readonly ranking: Ranking;
  /** A life that did not fit will not fit later either, since others are only added. */
  readonly failed: Set<Lifecycle>;
}

/**
 * Promised years first, in order of time, then any site in any year.
 *
 * @param lacked sites that promised years may lack
 * @returns false where they lack more: then nothing else is tried
 */
function recreate(of: Recreation, lacked: number): boolean {
  const { state, bySite, random, ranking } = of;
  for (const group of mustHave(state.tables, random() < 0.5 ? 'binding' : 'intended')) {
    if (!group.some((l) => state.lives.has(l))) placeOne(of, ranking(group));
  }
  if (fillPromisedYears(of) > lacked) return false;
  for (const site of shuffled(random, openSites(of))) {
    placeOne(of, ranking(bySite.get(site) ?? []).slice(0, MOST_TRIES));
  }
  return true;
}

/** Lives that are tried for one site, and for one promised year: most fail where a plan is full. */
const MOST_TRIES = 12;
const MOST_TRIES_IN_YEAR = 24;

function openSites({ state, bySite }: Recreation): string[] {
  const open = new Set(bySite.keys());
  for (const l of state.lives) open.delete(l.site);
  return [...open];
}

/** Builds what promised years lack, as far as it can; returns the sites that they lack still. */
function fillPromisedYears(of: Recreation): number {
  const { state, ranking } = of;
  const lacking = lackingByYear(state);
  if (total(lacking) === 0) return 0;
  const counting = livesCounting(state.tables);
  const placed = new Set(Array.from(state.lives, (l) => l.site));
  for (const [year, wanted] of lacking.entries()) {
    if (wanted <= 0) continue;
    const open = (counting.get(year) ?? []).filter((l) => !placed.has(l.site));
    const lives = ranking(open).slice(0, MOST_TRIES_IN_YEAR);
    for (let left = wanted; left > 0 && placeOne(of, lives); left--);
  }
  return total(lackingByYear(state));
}

/** Sites that promises of a count ask for and a state lacks, by year index; below 0: it has more. */
function lackingByYear(state: SearchState): number[] {
  const lacking = [...promisedByYear(state.tables)];
  for (const life of state.lives) {
    const year = countsInYear(state.tables, life);
    if (year !== undefined) lacking[year] = (lacking[year] ?? 0) - 1;
  }
  return lacking;
}

function total(lacking: readonly number[]): number {
  return lacking.reduce((sum, sites) => sum + Math.max(0, sites), 0);
}

function placeOne({ state, failed }: Recreation, lives: readonly Lifecycle[]): boolean {
  const { campus } = state.tables.ground;
  return lives.some((life) => {
    if (failed.has(life) || !admissible(campus, state.lives, life)) return false;
    const placed = tryLife(state, life);
    if (!placed) failed.add(life);
    return placed;
  });
}
