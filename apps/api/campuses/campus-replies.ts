import type { CampusReply, CampusSummaryReply } from '#contracts/http/campuses.js';
import type { CampusSummary, StoredCampus } from '#planning/ports/campus-store.js';

export function campusSummaryReplyOf(campus: CampusSummary): CampusSummaryReply {
  const { id, name, version, savedAt } = campus;
  return { id, name, version, savedAt: savedAt.toISOString() };
}

export function campusReplyOf(campus: StoredCampus): CampusReply {
  return { ...campusSummaryReplyOf(campus), file: { ...campus.document } };
}
