import type { Campus } from '#domain/campus.js';
import type { CandidateSite } from '#domain/site.js';
import { groundOf } from '../../overview/ground.js';
import { openGates } from '../../overview/unknowns/open-gates.js';
import type { UnknownRow } from '../../overview/plan-overview.js';
import type { Asked } from '../common/asked.js';
import { eligibleNextYear } from './choices.js';

/** A site barred next year by nothing but open questions, and the campus in which they were passed. */
export interface Barred {
  readonly site: string;
  readonly findOut: readonly UnknownRow[];
  readonly passed: Campus;
}

/** Sites that a test or permit would make eligible next year. */
export function barredByUnknowns({ campus, plan }: Asked): Barred[] {
  const open = new Set(eligibleNextYear(campus));
  const ground = groundOf(campus, plan);
  return campus.candidates.flatMap((site) => {
    if (open.has(site.id) || !site.gates.some((g) => g.status === 'unknown')) return [];
    const passed = withPassed(campus, site);
    if (!eligibleNextYear(passed).includes(site.id)) return [];
    return [{ site: site.id, findOut: openGates(ground, site), passed }];
  });
}

function withPassed(campus: Campus, site: CandidateSite): Campus {
  const gates = site.gates.map((g) =>
    g.status === 'unknown' ? { ...g, status: 'pass' as const } : g,
  );
  const candidates = campus.candidates.map((c) => (c.id === site.id ? { ...c, gates } : c));
  return { ...campus, candidates };
}
