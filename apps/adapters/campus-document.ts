import type { Campus } from '#domain/campus.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { UnreadablePlanError } from '#planning/unreadable-plan.js';

/** The campus of a document that was judged before it was kept. Throws where it no longer loads. */
export function campusOf(document: unknown): Campus {
  const load = loadCampusFile(document);
  if (load.ok) return load.campus;
  const first = load.problems.find((p) => p.severity === 'error');
  throw new UnreadablePlanError(
    `a kept campus no longer loads: ${first?.record ?? ''} ${first?.problem ?? ''}`,
  );
}
