import type { CampusReader } from '#planning/ports/campus-reader.js';
import type { CampusStore, CampusSummary } from '#planning/ports/campus-store.js';
import { addCampus } from '#planning/use-cases/save-campus.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly reader: CampusReader;
}

/** The campus saved last; where there is none, the demo campus, loaded now. */
export async function campusToShow(
  ports: Ports,
  readDemo: () => Promise<unknown>,
): Promise<{ campus: CampusSummary; isNew: boolean }> {
  const [newest] = await ports.campuses.list();
  if (newest) return { campus: newest, isNew: false };
  const outcome = await addCampus(ports, await readDemo());
  if (outcome.kind === 'saved') return { campus: outcome.campus, isNew: true };
  const first = outcome.kind === 'refused' ? outcome.problems[0] : undefined;
  throw new Error(`the demo campus cannot be loaded: ${first?.problem ?? outcome.kind}`);
}
