import type { Campus } from '#domain/campus.js';
import type { Gate, GateKind, Site } from '#domain/site.js';
import { UNKNOWN } from '#units/known.js';
import { constructionGate } from './construction.js';
import type { GateResult } from './gate-result.js';
import { measuredGates } from './measured-gates.js';
import { reviewGate, type ReviewedGate } from './review.js';

/** One gate of a site as a reader is shown it. */
export interface GateRow {
  readonly kind: GateKind;
  readonly status: Gate['status'];
  readonly note: string;
  /** What would clear it; empty on a pass that needs nothing more. */
  readonly clearedBy: string;
  /** Whom to ask. */
  readonly ask: string;
  /** Date from which a regulator's number is taken; `null` where none is used. */
  readonly asOf: string | null;
  /** `stated` in the campus file; else `measured`, where the measures decide; else `not recorded`. */
  readonly basis: 'stated' | 'measured' | 'not recorded';
  /** What the measures say beside a stated gate; `null` where they decide nothing. */
  readonly measured: string | null;
}

/** Every kind of gate of a site: as stated, else as measured, else unknown with what would clear it. */
export function gateReview(campus: Campus, site: Site): GateRow[] {
  const measured = measuredResults(campus, site);
  return GATE_KINDS.flatMap((kind) => {
    const found = measured[kind];
    const stated = site.gates.filter((gate) => gate.kind === kind);
    return stated.length === 0 ? [openRow(found)] : stated.map((gate) => statedRow(gate, found));
  });
}

const GATE_KINDS = [
  'contamination',
  'utilities',
  'construction',
  'root-protection',
  'slope',
  'access',
  'accessibility',
  'heritage',
  'flood-or-wetland',
  'fire-lane',
  'structure',
] as const satisfies readonly GateKind[];

function measuredResults(campus: Campus, site: Site): Readonly<Record<GateKind, GateResult>> {
  const gates = measuredGates(campus, site);
  const reviewed = (kind: ReviewedGate) => reviewGate(kind, UNKNOWN, '');
  return {
    contamination: gates.contamination.result,
    utilities: gates.utilities.result,
    construction: construction(campus, site),
    'root-protection': gates['root-protection'].result,
    slope: gates.slope.result,
    access: gates.access.result,
    accessibility: gates.accessibility.result,
    heritage: reviewed('heritage'),
    'flood-or-wetland': reviewed('flood-or-wetland'),
    'fire-lane': reviewed('fire-lane'),
    structure: reviewed('structure'),
  };
}

/** Of the first year of the plan: works of later years are weighed year by year. */
function construction(campus: Campus, { id }: Site): GateResult {
  const works = campus.construction.filter(({ sites }) => sites.includes(id));
  return constructionGate({
    buildYear: campus.calendar.firstYear,
    works: works.map(({ name, from, to, certaintyPercent }) => ({
      name,
      from,
      to,
      certaintyPercent,
      overlapShare: 1,
    })),
    overlapLimit: 0,
    hardAtPercent: campus.hardAtCertaintyPercent,
  });
}

function openRow({ kind, status, note, clearedBy, ask, asOf }: GateResult): GateRow {
  const basis = status === 'unknown' ? 'not recorded' : 'measured';
  return { kind, status, note, clearedBy, ask, asOf: asOf ?? null, basis, measured: null };
}

function statedRow({ kind, status, note, clearedBy }: Gate, found: GateResult): GateRow {
  const { ask, asOf } = found;
  const measured = found.status === 'unknown' ? null : found.note;
  return { kind, status, note, clearedBy, ask, asOf: asOf ?? null, basis: 'stated', measured };
}
