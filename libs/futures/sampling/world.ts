import { plannedYears } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { EscalationKind, Fund } from '#domain/money.js';
import type { ConstructionConflict } from '#domain/site.js';
import { betaOf } from '#estimating/install-hours/turnout.js';
import { yearsLater } from '#units/fiscal-year.js';
import type { Random } from '#units/random.js';
import { beta, binomial, normal, triangular } from './draws.js';
import type { Odds } from './odds.js';
import { streamOf, type Topic } from './stream.js';

/** One course of events: all that chance decides, for the whole plan and whatever plan there is. */
export interface World {
  /** Prices against those that the plan reckons with, by year index. */
  readonly prices: Readonly<Record<EscalationKind, Float64Array>>;
  /** Cost of building a site against its estimate, by site id. */
  readonly buildCost: ReadonlyMap<string, number>;
  /** Compost made against what the plan reckons with, by year index. */
  readonly compost: Float64Array;
  /** Ids of the funds whose money comes. */
  readonly arrives: ReadonlySet<string>;
  /** The works that come, when they come. */
  readonly works: readonly ConstructionConflict[];
  /** Of each kind of work day, by year: hours of the first so many events, as shares of one planned event. */
  readonly turnout: readonly (readonly Float64Array[])[];
  /** Of each kind of work day, by year: how many of the first so many events are held. */
  readonly held: readonly (readonly Int32Array[])[];
  /** Seasons in which a person is away after leaving; by pool id, and by position id and place. */
  away(person: string): Uint8Array;
}

export interface WorldKey {
  readonly seed: number;
  readonly future: number;
}

/** Draws one course of events. The same key and the same people, sites, and funds give the same. */
export function sampleWorld(campus: Campus, odds: Odds, key: WorldKey): World {
  const stream = (topic: Topic) => streamOf({ ...key, topic });
  const years = plannedYears(campus.calendar);
  const days = workDayOutcomes(campus, odds, stream('work-days'));
  const people = awaySeasons(campus, odds, stream('leavers'));
  return {
    prices: priceFactors(campus, odds, stream('prices')),
    buildCost: buildCosts(campus, odds, stream('build-cost')),
    compost: Float64Array.from({ length: years }, compostFactor(odds, stream('compost'))),
    arrives: arrivals(campus.funds, odds, stream('gifts')),
    works: worksThatCome(campus, odds, stream('works')),
    ...days,
    away(person) {
      const found = people.get(person);
      if (!found) throw new RangeError(`nobody is called ${person} in ${campus.name}`);
      return found;
    },
  };
}

/**
 * Growth of each kind of price is the file's plus a deviation that follows an AR(1): what is left of
 * last year's, plus a normal shock. Levels are products of (1 + growth).
 */
function priceFactors(campus: Campus, odds: Odds, random: Random): World['prices'] {
  const years = plannedYears(campus.calendar);
  const factors = (kind: EscalationKind) => {
    const planned = campus.escalation[kind];
    let deviation = 0;
    let level = 1;
    return Float64Array.from({ length: years }, (_, year) => {
      const shock = normal(random) * odds.priceShock[kind];
      // The first year's prices are the file's own.
      if (year === 0) return 1;
      deviation = odds.shockCarried * deviation + shock;
      level *= Math.max(0, 1 + planned + deviation) / (1 + planned);
      return level;
    });
  };
  return {
    construction: factors('construction'),
    wages: factors('wages'),
    supplies: factors('supplies'),
  };
}

function buildCosts(campus: Campus, odds: Odds, random: Random): Map<string, number> {
  const band = { low: 1 + odds.costLow, likely: 1, high: 1 + odds.costHigh };
  return new Map(campus.candidates.map((site) => [site.id, triangular(random, band)]));
}

function compostFactor({ compostSpread }: Odds, random: Random): () => number {
  const band = { low: 1 - compostSpread, likely: 1, high: 1 + compostSpread };
  return () => triangular(random, band);
}

/** A care share comes with its gift. Money that is received has come; hoped-for counts if the file counts it. */
function arrivals(funds: readonly Fund[], odds: Odds, random: Random): Set<string> {
  const chance = {
    received: 1,
    pledged: odds.pledgedArrives,
    'hoped-for': odds.hopedForArrives,
  };
  const come = new Map<string, boolean>();
  for (const fund of funds) {
    const luck = random();
    const comes = luck < chance[fund.status];
    come.set(
      fund.id,
      fund.careShareOf === undefined ? comes : (come.get(fund.careShareOf) ?? comes),
    );
  }
  return new Set([...come].flatMap(([id, comes]) => (comes ? [id] : [])));
}

/** Most years by which works slip; a longer list of capital projects is a new list. */
const MOST_SLIP = 5;

function worksThatCome(campus: Campus, odds: Odds, random: Random): ConstructionConflict[] {
  return campus.construction.flatMap((works) => {
    const comes = random() * 100 < works.certaintyPercent;
    const slips = Array.from({ length: MOST_SLIP }, () => random() < odds.worksSlip);
    const first = slips.indexOf(false);
    const late = first < 0 ? MOST_SLIP : first;
    if (!comes) return [];
    return [{ ...works, from: yearsLater(works.from, late), to: yearsLater(works.to, late) }];
  });
}

/** Each event is lost to weather or held; of those who signed up for it, a binomial number comes. */
function workDayOutcomes(
  campus: Campus,
  odds: Odds,
  random: Random,
): Pick<World, 'turnout' | 'held'> {
  const years = plannedYears(campus.calendar);
  const all = campus.workDays.map((day) =>
    Array.from({ length: years }, () => {
      const turnout = new Float64Array(day.mostPerSeason + 1);
      const held = new Int32Array(day.mostPerSeason + 1);
      for (let event = 0; event < day.mostPerSeason; event++) {
        const share = comeShare(day.turnout, odds, random);
        const lost = random() < odds.workDayLost;
        turnout[event + 1] = (turnout[event] ?? 0) + (lost ? 0 : share);
        held[event + 1] = (held[event] ?? 0) + (lost ? 0 : 1);
      }
      return { turnout, held };
    }),
  );
  return {
    turnout: all.map((byYear) => byYear.map((d) => d.turnout)),
    held: all.map((byYear) => byYear.map((d) => d.held)),
  };
}

/** Who comes to one event, against how many the plan reckons with. Where turnout is not recorded: as planned. */
export function comeShare(
  turnout: Campus['workDays'][number]['turnout'],
  { showSpread }: Pick<Odds, 'showSpread'>,
  random: Random,
): number {
  if (!turnout || showSpread === 0) return 1;
  const { signUps, showRate } = turnout;
  if (showRate <= 0 || showRate >= 1) return 1;
  const rate = beta(random, betaOf(showRate, Math.min(showSpread, widest(showRate))));
  return binomial(random, signUps, rate) / (signUps * showRate);
}

/** A beta distribution of this mean cannot spread further; a hair less keeps its two parameters above 0. */
function widest(mean: number): number {
  return 0.95 * Math.sqrt(mean * (1 - mean));
}

/** Each year each member of staff may leave, in any season of it; the place then stays empty a while. */
function awaySeasons(campus: Campus, odds: Odds, random: Random): Map<string, Uint8Array> {
  const perYear = campus.calendar.seasons.length;
  const years = plannedYears(campus.calendar);
  const empty = Math.round(odds.vacancySeasons);
  const drawn = () => {
    const away = new Uint8Array(years * perYear);
    for (let year = 0; year < years; year++) {
      const leaves = random() < odds.staffLeave;
      const season = year * perYear + Math.floor(random() * perYear);
      if (leaves) away.fill(1, season, season + empty);
    }
    return away;
  };
  return new Map(peopleOf(campus).map((person) => [person, drawn()]));
}

/** Staff who may leave: each staff pool as one person, and as many of each position as there may be. */
function peopleOf(campus: Campus): string[] {
  return [
    ...campus.pools.filter((p) => p.kind === 'staff').map((p) => p.id),
    ...campus.positions
      .filter((p) => p.term === 'recurring')
      .flatMap((p) => Array.from({ length: p.most }, (_, i) => headOf(p.id, i))),
  ];
}

/** Names one holder of a position: the first hired is 0. */
export function headOf(position: string, place: number): string {
  return `${position} ${place}`;
}
