import type { Campus } from '#domain/campus.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import type { StoredCampus } from '#planning/ports/campus-store.js';
import type { ApiPorts } from '../ports.js';
import { ProblemError } from '../problems/problem-error.js';
import { unknownCampus } from './saved-campus.js';

/** The newest version of a stored campus, ready to estimate from. */
export async function loadedCampus(ports: ApiPorts, id: string): Promise<Campus> {
  return (await soundCampus(ports, id)).campus;
}

/**
 * The newest version of a campus as it is stored, and the campus in it. One that was saved when the
 * checks let more through is told as such, with every problem of it.
 */
export async function soundCampus(
  { campuses }: ApiPorts,
  id: string,
): Promise<{ readonly stored: StoredCampus; readonly campus: Campus }> {
  const stored = await campuses.load(id);
  if (stored === null) throw unknownCampus();
  const load = loadCampusFile(stored.document);
  if (load.ok) return { stored, campus: load.campus };
  const detail = 'Put the problems right and save the campus again; nothing was changed.';
  throw new ProblemError('campus-outdated', detail, { problems: load.problems });
}
