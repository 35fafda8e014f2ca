import { plannedSeasons, prepareIndex, seasonInstance, seasonStart } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { TASK_CLASSES } from '#domain/labor.js';
import type { EscalationKind } from '#domain/money.js';
import { NO_DECISIONS, placementKey, type Placement, type Plan } from '#domain/plan.js';
import { buildBills, careCosts, moneyNeeds } from '#estimating/plan-needs/money-needs.js';
import { firstStartYear } from '#estimating/season-supply/positions.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { FINE_PER_HUNDREDTH } from '#estimating/site-charges/type-profile.js';
import { lifecycleOf, possibleLifecycles } from '#optimizer/columns/lifecycles.js';
import { countsInYear, mustHave, promisedByYear } from '#optimizer/construct/musts.js';
import { laborTest, type LaborTest } from '#optimizer/search/labor-test.js';
import { moneyLayout, type MoneyLayout } from '#optimizer/search/money-layout.js';
import { emptyState, type SearchState } from '#optimizer/search/state.js';
import { CLASS_COUNT } from '#optimizer/search/life-charges.js';
import { tablesOf, type Tables } from '#optimizer/search/tables.js';
import type { Lifecycle } from '#rules/columns.js';
import { groupBy } from '#units/group-by.js';

/** A cost by the place where the search keeps it, in cents of the plan, and what its price goes by. */
export interface BasisCost {
  readonly sink: number;
  readonly year: number;
  readonly amount: number;
  readonly kind: EscalationKind;
}

/** What every year of every future plans from: worked out once for a plan. */
export interface Basis {
  readonly tables: Tables;
  readonly layout: MoneyLayout;
  /** Of the work days that the plan holds; hires are put in and taken off again. */
  readonly labor: LaborTest;
  readonly workDays: readonly Int32Array[];
  /** Nothing decided: hours, compost, and costs of what stands already. */
  readonly empty: Pick<SearchState, 'needs' | 'compost' | 'certified'>;
  readonly standing: readonly BasisCost[];
  /** The plan's sites, by year. */
  readonly planned: readonly Lifecycle[];
  /** Positions of the plan at [position][start year]. */
  readonly hires: readonly Int32Array[];
  /** Sites that the promises ask for in a year, and the plan gives. */
  readonly wantedIn: readonly number[];
  /** Lives of which one should be in a plan: fixed, or promised by name. */
  readonly musts: readonly (readonly Lifecycle[])[];
  /** Lives of a site built at once and never changed, by year index. */
  plainLives(site: string, year: number): readonly Lifecycle[];
  /** What a life is billed for: its builds, and what its care buys. */
  costsOf(life: Lifecycle): {
    readonly build: readonly BasisCost[];
    readonly care: readonly BasisCost[];
  };
  /** First year in which a position can start that is decided on in the building season of a year. */
  firstStart(position: number, year: number): number;
}

export function basisOf(campus: Campus, plan: Plan, charges: CampusCharges): Basis {
  const lifecycles = possibleLifecycles(campus, charges);
  const byKey = new Map(lifecycles.map((l) => [placementKey(l.placement), l]));
  const planned = plan.decisions.placements
    .map((p) => byKey.get(placementKey(p)) ?? lifeOfPlacement(campus, charges, p))
    .sort((a, b) => a.yearIndex - b.yearIndex);
  // A plan made by hand may hold lives that a search would leave out.
  const own = planned.filter((l) => !lifecycles.includes(l));
  const tables = {
    ...tablesOf({ campus, charges, lifecycles: [...lifecycles, ...own] }),
    frozenHires: [],
  };
  const workDays = plannedWorkDays(campus, plan);
  const { needs, compost, certified } = emptyState(tables);
  supervise(campus, needs, workDays);
  return {
    tables,
    layout: moneyLayout(tables),
    labor: laborTest(tables, workDays),
    workDays,
    empty: { needs, compost, certified },
    standing: standingBills(tables),
    planned,
    hires: plannedHires(tables, plan),
    wantedIn: wantedByYear(tables, planned),
    musts: mustHave(tables, 'intended'),
    plainLives: plainLives(lifecycles),
    costsOf: lifeBills(tables),
    firstStart: firstStarts(tables),
  };
}

function lifeOfPlacement(campus: Campus, charges: CampusCharges, placement: Placement): Lifecycle {
  const site = campus.candidates.find(({ id }) => id === placement.site);
  if (!site) throw new RangeError(`no candidate ${placement.site} in ${campus.name}`);
  return lifecycleOf({ campus, site, charges }, placement);
}

function plannedWorkDays(campus: Campus, plan: Plan): Int32Array[] {
  return plannedSeasons(campus.calendar).map(({ season, year }) =>
    Int32Array.from(campus.workDays, (day) =>
      day.season !== season.id
        ? 0
        : plan.decisions.workDays
            .filter((held) => held.workDay === day.id && held.year === year)
            .reduce((sum, { count }) => sum + count, 0),
    ),
  );
}

function supervise(campus: Campus, needs: Float64Array, workDays: readonly Int32Array[]): void {
  const place = TASK_CLASSES.indexOf('supervise');
  workDays.forEach((held, s) => {
    const hours = campus.workDays.reduce(
      (sum, day, d) => sum + day.leaderHoursEach * (held[d] ?? 0),
      0,
    );
    needs[s * CLASS_COUNT + place] = hours * FINE_PER_HUNDREDTH;
  });
}

function plannedHires({ ground: { campus }, years }: Tables, plan: Plan): Int32Array[] {
  return campus.positions.map(({ id }) => {
    const byYear = new Int32Array(years);
    for (const { position, year, count } of plan.decisions.hires) {
      const at = year - campus.calendar.firstYear;
      if (position === id) byYear[at] = (byYear[at] ?? 0) + count;
    }
    return byYear;
  });
}

function wantedByYear(tables: Tables, planned: readonly Lifecycle[]): number[] {
  return promisedByYear(tables).map((count, year) =>
    Math.min(count, planned.filter((l) => countsInYear(tables, l) === year).length),
  );
}

function plainLives(lifecycles: readonly Lifecycle[]): Basis['plainLives'] {
  const plain = lifecycles.filter(({ placement: { secondHalf, change } }) => {
    return secondHalf === undefined && !change;
  });
  const byStart = groupBy(plain, (l) => `${l.site} ${l.yearIndex}`);
  return (site, year) => byStart.get(`${site} ${year}`) ?? [];
}

/** Care of existing sites and standing costs. */
function standingBills(tables: Tables): BasisCost[] {
  const { campus, charges } = tables.ground;
  const care = moneyNeeds(campus, NO_DECISIONS, charges).care.map((c) => ({
    ...{ sink: tables.sinkOf({ ...c, line: 'care' }), year: c.yearIndex, amount: c.amount },
    kind: 'supplies' as const,
  }));
  const sink = tables.sinks.standing;
  const standing = campus.standingCosts.flatMap((cost) => {
    const alone = { ...campus, standingCosts: [cost] };
    const { standing: byYear } = moneyNeeds(alone, NO_DECISIONS, charges);
    return byYear.map((amount, year) => ({ sink, year, amount, kind: cost.escalation }));
  });
  return [...care, ...standing];
}

function lifeBills(tables: Tables): Basis['costsOf'] {
  const { campus } = tables.ground;
  const kept = new Map<Lifecycle, ReturnType<Basis['costsOf']>>();
  return (life) => {
    const found = kept.get(life);
    if (found) return found;
    const { site, buildType, parts } = life;
    const build = tables.sinkOf({ line: 'build', site, buildType });
    const care = tables.sinkOf({ line: 'care', site, buildType });
    const made = {
      build: buildBills(campus, parts).map(({ yearIndex, amount }) => ({
        ...{ sink: build, year: yearIndex, amount, kind: 'construction' as const },
      })),
      care: careCosts(campus, parts).flatMap((amount, year) =>
        amount === 0 ? [] : [{ sink: care, year, amount, kind: 'supplies' as const }],
      ),
    };
    kept.set(life, made);
    return made;
  };
}

function firstStarts({ ground: { campus }, positions, years }: Tables): Basis['firstStart'] {
  const { calendar } = campus;
  const kept = positions.map(() => new Map<number, number>());
  return (place, year) => {
    const found = kept[place]?.get(year);
    if (found !== undefined) return found;
    const table = positions[place];
    if (!table) throw new RangeError(`no position type at ${place} in ${campus.name}`);
    const planningDate = seasonStart(
      calendar,
      seasonInstance(calendar, prepareIndex(calendar, year)),
    );
    const byLead = firstStartYear({ ...calendar, planningDate }, table.type);
    const first = Math.min(years, Math.max(table.firstStart, byLead, year + 1));
    kept[place]?.set(year, first);
    return first;
  };
}
