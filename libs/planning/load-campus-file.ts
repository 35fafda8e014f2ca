import { parseCampusFile } from '#contracts/parse-campus-file.js';
import { sitePartsOf } from '#contracts/site-parts.js';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Campus } from '#domain/campus.js';
import { hasErrors, type Problem } from '#domain/problem.js';
import { drawnAreas, planningAreaSqFt } from '#estimating/campus-checks/areas.js';
import { checkCampus } from '#estimating/campus-checks/check-campus.js';
import type { CampusPlaces } from '#estimating/campus-checks/places.js';
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
 * was not confirmed, planning uses the drawn area.
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
  return {
    ok: true,
    campus: withPlanningAreas(parse.campus, places),
    file: parse.file,
    warnings: problems,
  };
}

function withPlanningAreas(campus: Campus, places: CampusPlaces): Campus {
  const drawn = drawnAreas(places);
  const areaOf = (site: Campus['candidates'][number] | Campus['existing'][number]): number =>
    planningAreaSqFt(site, drawn.get(site.id), places.confirmedAreas);
  return {
    ...campus,
    candidates: campus.candidates.map((site) => ({ ...site, areaSqFt: areaOf(site) })),
    existing: campus.existing.map((site) => ({ ...site, areaSqFt: areaOf(site) })),
  };
}
