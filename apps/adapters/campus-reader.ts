import type { JsonDocument } from '#planning/json-document.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import type { CampusReader } from '#planning/ports/campus-reader.js';

/** Judges campus documents in full: form, meaning and boundaries. */
export const campusReader: CampusReader = {
  read(document) {
    const load = loadCampusFile(document);
    if (!load.ok) return { ok: false, problems: load.problems };
    // What loads is an object, and is kept as it was given.
    const kept = document as JsonDocument;
    return { ok: true, name: load.campus.name, document: kept, warnings: load.warnings };
  },
};
