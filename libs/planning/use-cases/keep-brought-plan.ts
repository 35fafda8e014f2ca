import { digestOf } from '#contracts/canonical.js';
import { parsePlanFile, type PlanFile } from '#contracts/plan-file.js';
import type { Breach } from '#domain/breach.js';
import { refusedPlan } from '../imports/judge-plans.js';
import type { JsonDocument } from '../json-document.js';
import type { PlanChecker } from '../ports/plan-checker.js';
import type { PlanOverview } from '../ports/plan-overview.js';
import type { NewPlan } from '../ports/plan-store.js';
import type { SolveClosing } from '../ports/solve-queue.js';
import type { SolveRequest } from '../solve-request.js';

interface Ports {
  readonly checker: PlanChecker;
  readonly overview: PlanOverview;
}

interface Brought {
  readonly request: SolveRequest;
  readonly campus: JsonDocument;
  readonly document: JsonDocument;
}

/**
 * Judges a plan that came in by a bundle as a solved one is judged. What does not pass is refused with
 * the reason, since it is the bundle and not this program that is wrong. Never throws.
 */
export async function keepBroughtPlan(ports: Ports, brought: Brought): Promise<SolveClosing> {
  const name = brought.request.broughtPlan ?? '';
  const parse = parsePlanFile(brought.document);
  if (!parse.ok) return unreadable(name, parse.problems[0]?.problem ?? '');
  try {
    const { breaches, verified } = await ports.checker.check(brought.campus, brought.document);
    if (!verified) return refused(name, breaches);
    const overview = await ports.overview.of(brought.campus, brought.document);
    return { kind: 'brought-in', plan: newPlan(brought, parse.file, overview) };
  } catch (error) {
    return unreadable(name, error instanceof Error ? error.message : String(error));
  }
}

function newPlan(
  { document, request }: Brought,
  { ending, solver }: PlanFile,
  overview: JsonDocument,
): NewPlan {
  const { campusId, campusVersion, limits, seed } = request;
  return {
    ...{ id: broughtPlanId(request, document), campusId, campusVersion, seed, limits },
    ...{ solverVersion: `${solver.name} ${solver.version}`, ending, origin: 'bundle' },
    ...{ plan: document, overview },
  };
}

/**
 * The same for the same plan of the same version of a campus, so that a bundle can be given twice:
 * a UUID of version 8 (RFC 9562, 5.8) from a digest.
 */
export function broughtPlanId(
  { campusId, campusVersion }: Pick<SolveRequest, 'campusId' | 'campusVersion'>,
  document: JsonDocument,
): string {
  const digest = digestOf({ campusId, campusVersion, document }).replace(/^.*:/, '');
  const parts = /^(.{8})(.{4}).(.{3}).(.{3})(.{12})/.exec(digest);
  if (parts === null) throw new TypeError(`a digest must be hexadecimal, got ${digest}`);
  const [, a, b, c, d, e] = parts;
  return `${a}-${b}-8${c}-8${d}-${e}`;
}

function refused(name: string, breaches: readonly Breach[]): SolveClosing {
  return { kind: 'failed', problem: refusedPlan(name, { breaches }) };
}

/** What kept a plan from being checked at all. */
function unreadable(name: string, message: string): SolveClosing {
  return refused(name, [{ rule: 'plan-file', record: 'plan', message }]);
}
