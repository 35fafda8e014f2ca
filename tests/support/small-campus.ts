import { readFileSync } from 'node:fs';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { purchasesFor } from '#optimizer/allocate/compost.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { fiscalYear } from '#units/fiscal-year.js';

/** The small campus of the files with planted mistakes, before any mistake is planted. */
export function smallFile(): SmallFile {
  return JSON.parse(readFileSync('seeds/mistakes/base.json', 'utf8')) as SmallFile;
}

/** The parts of the file that tests change or reckon with. */
export interface SmallFile {
  readonly candidateSites: { id: string; earliest?: string; facts: Record<string, unknown> }[];
  readonly care: Record<string, Record<string, unknown>>;
  readonly buildTypes: { id: string; componentShares: Record<string, number> }[];
  readonly pools: { id: string; hours: Record<string, number> }[];
  readonly funds: Record<string, unknown>[];
  readonly commitments: Record<string, unknown>[];
  precedence: unknown[];
  handPlacements: unknown[];
  readonly [part: string]: unknown;
}

export function smallCampus(change: (file: SmallFile) => void = () => undefined): Campus {
  const file = smallFile();
  change(file);
  const load = loadCampusFile(file);
  if (!load.ok) throw new Error(JSON.stringify(load.problems, null, 1));
  return load.campus;
}

/** `['S-1', 'edible', 2028]` prepares a site as a type in a fiscal year. */
export type Placed = readonly [site: string, buildType: string, year: number];

/** A plan of these sites, completed as a solver's would be, with no work days held. */
export function planOf(
  campus: Campus,
  placed: readonly Placed[],
  hires: Decisions['hires'] = [],
): Plan {
  const charges = campusCharges(campus);
  const base = {
    placements: placed.map(([site, buildType, year]) => ({
      site,
      buildType,
      year: fiscalYear(year),
    })),
    hires,
    workDays: [],
  };
  const purchases = purchasesFor(campus, base, charges);
  return completePlan(campus, { ...base, purchases }, charges).plan;
}
