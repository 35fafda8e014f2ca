import { buildType } from '#domain/campus.js';
import type { CandidateSite, Gate } from '#domain/site.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { listInWords, uncapitalized } from '#units/in-words.js';
import type { Ground } from '../ground.js';
import type { UnknownRow } from '../plan-overview.js';
import { preparing } from '../site-words.js';

/** Gates of a site that nobody has decided yet, with what the plan counts on. */
export function openGates(ground: Ground, site: CandidateSite): UnknownRow[] {
  return site.gates
    .filter((gate) => gate.status === 'unknown')
    .map((gate) => ({
      site: site.id,
      name: site.name,
      what: gate.note,
      clearedBy: gate.clearedBy.replace(/\.$/, ''),
      consequence: consequenceOf(ground, site, gate),
    }));
}

function consequenceOf(ground: Ground, site: CandidateSite, gate: Gate): string {
  const barred = barredTypes(ground, site, gate);
  const place = ground.placed.get(site.id);
  const rests = place !== undefined && barred.includes(place.buildType);
  if (rests) {
    return `The plan counts on a pass by ${preparing(ground.campus.calendar, place.year)}, or the site waits.`;
  }
  const what =
    barred.length === site.buildTypes.length
      ? 'Nothing is built there'
      : `Not open to ${listInWords(barred.map((id) => uncapitalized(buildType(ground.campus, id).name)))}`;
  return gate.plannedClearFrom === undefined
    ? `${what}: no date is set for an answer.`
    : `${what} before ${fiscalYearLabel(gate.plannedClearFrom)}, and then only after a pass.`;
}

/** Types that the site may become and that a gate bars while it is open. */
export function barredTypes(
  { campus }: Pick<Ground, 'campus'>,
  site: CandidateSite,
  { bars }: Gate,
): string[] {
  return site.buildTypes.filter((id) => {
    if (bars === 'all') return true;
    return bars === 'edible' ? buildType(campus, id).edible : bars.includes(id);
  });
}
