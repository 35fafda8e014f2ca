import { candidate, laterChange, type Campus } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import type { CandidateSite } from '#domain/site.js';
import { cents, roundCents, type Cents } from '#units/cents.js';
import { centiHours, hoursToCenti } from '#units/centihours.js';
import { centiYards } from '#units/centiyards.js';
import { lifeOf, type Life } from './life.js';
import { siteCharges, type SiteCharges } from './site-charges.js';
import type { TypeProfile } from './type-profile.js';

/**
 * A piece of a placed site that is planted at once and ages as one: the whole site, a half of it, or
 * what a later change makes of it.
 */
export interface PlacedPart {
  /** What the piece asks for. Where a change made it, planting is the work of the change. */
  readonly charges: SiteCharges;
  readonly life: Life;
  /** Share of the site that it is, 0 to 1; 0 where the site is returned to lawn. */
  readonly share: number;
  /** Cost of a later change in the price year; 0 for what is built. */
  readonly changeCost: Cents;
}

/**
 * The pieces of a placement in order of time. A later change ends the pieces built before it in the
 * planting season at its age, counted from the first planting, and plants the ground anew.
 */
export function placedPartsOf(campus: Campus, placement: Placement): PlacedPart[] {
  const site = candidate(campus, placement.site);
  const built = builtParts(campus, site, placement);
  const changes = changeSeason(campus, placement);
  if (changes === undefined) return built;
  const until = built.map((part) => ({
    ...part,
    life: { ...part.life, ends: Math.min(part.life.ends, changes) },
  }));
  return [...until, changedPart({ campus, site, placement, season: changes })];
}

/** Running index of the season in which a placement is changed; `undefined` where it never is. */
export function changeSeason(campus: Campus, placement: Placement): number | undefined {
  if (!placement.change) return undefined;
  const { planted } = lifeOf(campus, placement.site, placement.year);
  return planted + placement.change.age * campus.calendar.seasons.length;
}

function builtParts(campus: Campus, site: CandidateSite, placement: Placement): PlacedPart[] {
  const { secondHalf, year } = placement;
  const whole = Math.round(site.areaSqFt);
  if (secondHalf === undefined) {
    const charges = siteCharges(campus, site, placement.buildType);
    return [{ charges, life: lifeOf(campus, site.id, year), share: 1, changeCost: cents(0) }];
  }
  const [first, second] = halvesOf(site);
  return [
    { half: first, year },
    { half: second, year: secondHalf },
  ].map((of) => ({
    charges: siteCharges(campus, of.half, placement.buildType),
    life: lifeOf(campus, site.id, of.year),
    share: of.half.areaSqFt / whole,
    changeCost: cents(0),
  }));
}

type Halves = readonly [first: CandidateSite, second: CandidateSite];

const keptHalves = new WeakMap<CandidateSite, Halves>();

/** A site's halves, the same ones each time, so that what they ask for is worked out once. */
function halvesOf(site: CandidateSite): Halves {
  const whole = Math.round(site.areaSqFt);
  const first = Math.floor(whole / 2);
  const of = (areaSqFt: number): CandidateSite => ({ ...site, areaSqFt });
  const halves = keptHalves.get(site) ?? [of(first), of(whole - first)];
  keptHalves.set(site, halves);
  return halves;
}

function changedPart(of: {
  readonly campus: Campus;
  readonly site: CandidateSite;
  readonly placement: Placement;
  readonly season: number;
}): PlacedPart {
  const { campus, site, placement, season } = of;
  const change = laterChange(campus, placement.change?.id ?? '');
  const becomes = change.buildType;
  const charges = siteCharges(campus, site, becomes ?? placement.buildType);
  const { ends } = lifeOf(campus, site.id, placement.year);
  const none = { prepareHours: centiHours(0), buildCost: cents(0), buildCompost: centiYards(0) };
  return {
    charges: {
      ...charges,
      ...none,
      plantHours: hoursToCenti((change.hoursPer1000SqFt * site.areaSqFt) / 1000),
      ...(becomes === undefined
        ? { profile: NO_CARE, supplies: charges.supplies.map(() => cents(0)) }
        : {}),
    },
    life: { planted: season, ends: becomes === undefined ? season : Math.max(season, ends) },
    share: becomes === undefined ? 0 : 1,
    changeCost: roundCents(change.costPerSqFt * site.areaSqFt),
  };
}

/** Lawn: others mow it. */
const NO_CARE: TypeProfile = { care: () => 0, topDress: 0, compostGrade: 'other' };
