import type { Campus } from '#domain/campus.js';
import { anError, aWarning, type Problem } from '#domain/problem.js';
import type { CandidateSite, Gate, Site } from '#domain/site.js';
import { measuredGates, type MeasuredGate } from './measured-gates.js';

type WithGates = Pick<Campus, 'overrides' | 'calendar' | 'candidates'>;

/** Candidates with a failing gate added for each that was measured to fail and that nobody states. */
export function withMeasuredGates(campus: WithGates): CandidateSite[] {
  return campus.candidates.map((site) => {
    const added = failing(campus, site).filter(({ result }) => !states(site, result.kind));
    return added.length === 0 ? site : { ...site, gates: [...site.gates, ...added.map(toGate)] };
  });
}

/**
 * Gates that what was measured speaks against: one that is said to pass and is measured to fail, the
 * other way round, and one that nobody states and that bars the site from now on. A gate that is
 * said to be unknown is never spoken against: an office may know more than the file.
 */
export function gateProblems(campus: WithGates): Problem[] {
  return campus.candidates.flatMap((site) => [
    ...failing(campus, site)
      .filter(({ result }) => !states(site, result.kind))
      .map((gate) => unstatedProblem(site, gate)),
    ...site.gates.flatMap((gate) => contradiction(campus, site, gate)),
  ]);
}

function failing(campus: WithGates, site: Site): MeasuredGate[] {
  return Object.values(measuredGates(campus, site)).filter(
    ({ result }) => result.status === 'fail',
  );
}

function states({ gates }: Site, kind: Gate['kind']): boolean {
  return gates.some((gate) => gate.kind === kind);
}

function toGate({ result, bars }: MeasuredGate): Gate {
  const { kind, note, clearedBy, ask } = result;
  return {
    kind,
    status: 'fail',
    note: `${note} (measured)`,
    bars,
    clearedBy: `${clearedBy} Ask: ${ask}.`,
  };
}

function unstatedProblem({ id }: Site, { result }: MeasuredGate): Problem {
  const { kind, note, clearedBy } = result;
  const place = {
    code: 'GATE-MEASURED-TO-FAIL',
    record: `site ${id}`,
    field: 'gates',
    value: kind,
  };
  return aWarning(place, [
    `${note} No ${kind} gate is stated, so that the site is barred by what was measured.`,
    `State the gate, with who decides. What clears it: ${clearedBy}`,
  ]);
}

function contradiction(campus: WithGates, site: Site, gate: Gate): Problem[] {
  const measured: Partial<Record<Gate['kind'], MeasuredGate>> = measuredGates(campus, site);
  const found = measured[gate.kind]?.result;
  if (!found || gate.status === 'unknown' || found.status === 'unknown') return [];
  if (found.status === gate.status) return [];
  const report = gate.kind === 'contamination' && gate.status === 'pass' ? anError : aWarning;
  const field = `gates[${gate.kind}].status`;
  const place = { code: 'GATE-CONTRADICTED', record: `site ${site.id}`, field, value: gate.status };
  return [
    report(place, [
      `The gate is said to ${gate.status}, and what was measured says ${found.status}: ${found.note}`,
      `Look at both again, or say in the note who decided so. Whom to ask: ${found.ask}.`,
    ]),
  ];
}
