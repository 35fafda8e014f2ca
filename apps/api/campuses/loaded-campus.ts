import type { Campus } from '#domain/campus.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import type { ApiPorts } from '../ports.js';
import { ProblemError } from '../problems/problem-error.js';
import { unknownCampus } from './saved-campus.js';

/**
 * The newest version of a stored campus, ready to estimate from. One that was saved when the checks
 * let more through is told as such, with every problem of it.
 */
export async function loadedCampus({ campuses }: ApiPorts, id: string): Promise<Campus> {
  const stored = await campuses.load(id);
  if (stored === null) throw unknownCampus();
  const load = loadCampusFile(stored.document);
  if (load.ok) return load.campus;
  const detail = 'Put the problems right and save the campus again; nothing was changed.';
  throw new ProblemError('campus-outdated', detail, { problems: load.problems });
}
