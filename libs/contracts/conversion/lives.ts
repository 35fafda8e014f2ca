import type { LaterChange } from '#domain/later-change.js';
import type { Hire, Placement } from '#domain/plan.js';
import type { PublishedPlan } from '#domain/published-plan.js';
import { dollarsToCents } from '#units/cents.js';
import type { CampusFile } from '../campus-file.schema.js';
import type { PlanPart } from '../plan-file.schema.js';
import { fromFiscalYear, optional, toFiscalYear, toOptionalYear } from './values.js';

type ChangePart = NonNullable<CampusFile['laterChanges']>[number];
type PublishedPart = NonNullable<CampusFile['published']>;
type PlacementPart = PlanPart['placements'][number];

export function toLaterChange({ dollarsPerSqFt, buildType, ...same }: ChangePart): LaterChange {
  return {
    ...same,
    ...optional('buildType', buildType),
    costPerSqFt: dollarsToCents(dollarsPerSqFt),
  };
}

export function toPlacement({ site, buildType, year, ...later }: PlacementPart): Placement {
  return {
    site,
    buildType,
    year: toFiscalYear(year),
    ...optional('secondHalf', toOptionalYear(later.secondHalf)),
    ...optional('change', later.change),
  };
}

export function fromPlacement({ year, secondHalf, ...same }: Placement): PlacementPart {
  return {
    ...same,
    year: fromFiscalYear(year),
    ...(secondHalf === undefined ? {} : { secondHalf: fromFiscalYear(secondHalf) }),
  };
}

export function toHire(hire: PlanPart['hires'][number]): Hire {
  return { ...hire, year: toFiscalYear(hire.year) };
}

export function toPublished(published: PublishedPart): PublishedPlan {
  const { name, date, frozenThrough, placements, hires } = published;
  return {
    name,
    date,
    ...optional('frozenThrough', toOptionalYear(frozenThrough)),
    placements: placements.map(({ announced = false, ...placement }) => ({
      ...toPlacement(placement),
      announced,
    })),
    hires: hires.map(toHire),
    announcedWeight: published.announcedWeight ?? 1,
    otherWeight: published.otherWeight ?? 1,
  };
}
