import type { Breach } from '#domain/breach.js';
import type { BuildType } from '#domain/build-type.js';
import type { CandidateSite, Gate } from '#domain/site.js';
import type { FiscalYear } from '#units/fiscal-year.js';

/** Gates that bar a type of a site in a year: failed for good, unknown until they are planned as passed. */
export function gateBreaches(site: CandidateSite, type: BuildType, year: FiscalYear): Breach[] {
  return site.gates
    .filter((gate) => barsType(gate, type) && !passedBy(gate, year))
    .map((gate) => ({
      rule: 'eligible-years',
      record: site.id,
      message: `${site.id}: the ${gate.kind} gate is ${gate.status} (${gate.note}), which bars ${type.name}`,
    }));
}

function barsType(gate: Gate, type: BuildType): boolean {
  if (gate.bars === 'all') return true;
  if (gate.bars === 'edible') return type.edible;
  return gate.bars.includes(type.id);
}

function passedBy(gate: Gate, year: FiscalYear): boolean {
  if (gate.status === 'pass') return true;
  const planned = gate.status === 'unknown' ? gate.plannedClearFrom : undefined;
  return planned !== undefined && year >= planned;
}
