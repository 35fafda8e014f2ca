import { readFileSync } from 'node:fs';
import type { CampusFile } from '#contracts/campus-file.schema.js';

/** The small valid campus of the seeds: four sites, eight years. */
export const SMALL_CAMPUS = 'seeds/mistakes/base.json';

/** A copy of the small campus, changed. */
export function smallCampus(change: (file: CampusFile) => void = () => undefined): CampusFile {
  const file = JSON.parse(readFileSync(SMALL_CAMPUS, 'utf8')) as CampusFile;
  change(file);
  return file;
}

/** Takes away all that names a candidate site, so that sites can be taken away too. */
export function withoutRules(file: CampusFile): void {
  file.precedence = [];
  file.exclusiveGroups = [];
  file.construction = [];
  file.commitments = [];
  file.handPlacements = [];
  file.funds = file.funds.filter(({ id }) => id !== 'bank-gift');
}
