import { plannedSeasons, seasonInstance, type SeasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { LaterChange } from '#domain/later-change.js';
import type { Placement } from '#domain/plan.js';
import type { CandidateSite } from '#domain/site.js';
import { lifeOf } from '#estimating/site-charges/life.js';
import { changeSeason } from '#estimating/site-charges/placed-parts.js';
import type { Check } from '../check.js';
import { gateBreaches } from '../eligible-years/gates.js';

/** A site is changed later only as it allows, at a stated age, while it stands and within the plan. */
export const checkLaterChanges: Check = (campus, plan) =>
  plan.decisions.placements.flatMap((placement) => {
    const site = campus.candidates.find((s) => s.id === placement.site);
    if (!site || !placement.change) return [];
    const { id, age } = placement.change;
    const change = campus.laterChanges?.find((c) => c.id === id);
    return faults(campus, { placement, site, change }).map((fault) => ({
      rule: 'later-changes',
      record: placement.site,
      message: `${placement.site} has the later change ${id} at age ${age}: ${fault}`,
    }));
  });

interface Changed {
  readonly placement: Placement;
  readonly site: CandidateSite;
  readonly change: LaterChange | undefined;
}

function faults(campus: Campus, { placement, site, change }: Changed): string[] {
  if (!change) return ['the campus has no such change'];
  const age = placement.change?.age ?? 0;
  const found: string[] = [];
  if (!site.laterChanges?.includes(change.id)) found.push('the site does not allow it');
  if (change.from !== 'any' && !change.from.includes(placement.buildType))
    found.push(`it is not for the build type ${placement.buildType}`);
  if (!change.ages.some((a) => a === age))
    found.push(`it is made at ages ${change.ages.join(', ')}`);
  const index = changeSeason(campus, placement) ?? 0;
  const { ends } = lifeOf(campus, placement.site, placement.year);
  if (index >= ends) found.push('works have taken the site by then');
  if (index >= plannedSeasons(campus.calendar).length) found.push('that is after the plan ends');
  return [
    ...found,
    ...barred(campus, site, { change, season: seasonInstance(campus.calendar, index) }),
  ];
}

/** Gates that bar what the site would become. */
function barred(
  campus: Campus,
  site: CandidateSite,
  { change, season }: { change: LaterChange; season: SeasonInstance },
): string[] {
  const type = campus.buildTypes.find((t) => t.id === change.buildType);
  if (!type) return [];
  return gateBreaches(site, type, season.year).map(({ message }) => message);
}
