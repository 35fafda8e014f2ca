import { buildType } from '#domain/campus.js';
import type { Campus } from '#domain/campus.js';
import type { CandidateSite, Gate } from '#domain/site.js';
import type { FiscalYear } from '#units/fiscal-year.js';

/** A life that a site may have by its window, its types and its gates gets a column; no other does. */
export interface Candidacy {
  readonly site: CandidateSite;
  readonly buildType: string;
  readonly year: FiscalYear;
}

export function eligibleInYear(campus: Campus, candidacy: Candidacy): boolean {
  const { site, buildType: typeId, year } = candidacy;
  if (!site.buildTypes.includes(typeId)) return false;
  if (site.earliest !== undefined && year < site.earliest) return false;
  if (site.latest !== undefined && year > site.latest) return false;
  return gatesOpen(campus, candidacy);
}

/** Whether every gate of a site lets it be a type in a year. */
export function gatesOpen(campus: Campus, { site, buildType: typeId, year }: Candidacy): boolean {
  const { edible } = buildType(campus, typeId);
  return site.gates.every(
    (gate) => !bars(gate, typeId, edible ? 'edible' : 'other') || open(gate, year),
  );
}

function bars(gate: Gate, typeId: string, kind: 'edible' | 'other'): boolean {
  if (typeof gate.bars === 'string') return gate.bars === 'all' || kind === 'edible';
  return gate.bars.includes(typeId);
}

function open(gate: Gate, year: FiscalYear): boolean {
  switch (gate.status) {
    case 'pass':
      return true;
    case 'fail':
      return false;
    case 'unknown':
      return gate.plannedClearFrom !== undefined && gate.plannedClearFrom <= year;
  }
}
