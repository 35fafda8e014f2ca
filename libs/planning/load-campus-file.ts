import { parseCampusFile } from '#contracts/parse-campus-file.js';
import { sitePartsOf } from '#contracts/site-parts.js';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Campus } from '#domain/campus.js';
import type { Site } from '#domain/site.js';
import { hasErrors, type Problem } from '#domain/problem.js';
import { drawnAreas, planningAreaSqFt } from '#estimating/campus-checks/areas.js';
import { checkCampus } from '#estimating/campus-checks/check-campus.js';
import type { CampusPlaces } from '#estimating/campus-checks/places.js';
import { measuredRootShare } from '#estimating/campus-checks/trees.js';
import { gateProblems, withMeasuredGates } from '#estimating/gates/stated-gates.js';
import { known } from '#units/known.js';
import { inPosition } from './benefit-position.js';
import { overrideProblems } from './override-problems.js';

export type CampusLoad =
  | {
      readonly ok: true;
      /** Site areas are those that planning uses. */
      readonly campus: Campus;
      /** The file as it was given. */
      readonly file: CampusFile;
      readonly warnings: readonly Problem[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads and judges a campus file, as text or parsed already: form, meaning, boundaries
 * and measured values, every problem at once. Where the stated area of a site differs from the drawn one by more than 5 % and
 * was not confirmed, planning uses the drawn area. Trees give the share in root protection, and a
 * gate that is measured to fail and that nobody states bars the site.
 */
export function loadCampusFile(input: unknown): CampusLoad {
  const parse = parseCampusFile(input);
  const places = parse.ok ? sitePartsOf(parse.file) : parse.sites;
  const problems = [
    ...(parse.ok ? parse.warnings : parse.problems),
    ...checkCampus(places),
    ...overrideProblems(places),
  ];
  if (!parse.ok || hasErrors(problems)) return { ok: false, problems };
  const measured = withMeasures(parse.campus, places);
  const found = [...problems, ...gateProblems(measured)];
  if (hasErrors(found)) return { ok: false, problems: found };
  const campus = { ...measured, candidates: withMeasuredGates(measured) };
  const taken = inPosition(campus, parse.file.benefit.position);
  if (!taken.ok) return { ok: false, problems: [...found, taken.problem] };
  return { ok: true, campus: taken.campus, file: parse.file, warnings: found };
}

/** The campus with areas and root protection as they were measured. */
function withMeasures(campus: Campus, places: CampusPlaces): Campus {
  const drawn = drawnAreas(places);
  const measured = <S extends Site>(site: S): S => {
    const share = measuredRootShare(campus, site);
    const areaSqFt = planningAreaSqFt(site, drawn.get(site.id), places.confirmedAreas);
    if (share === undefined) return { ...site, areaSqFt };
    return { ...site, areaSqFt, facts: { ...site.facts, rootProtectedShare: known(share) } };
  };
  return {
    ...campus,
    candidates: campus.candidates.map(measured),
    existing: campus.existing.map(measured),
  };
}
