import type { JsonDocument } from './json-document.js';

/** One record of a campus document, or a few that belong together. */
export interface CampusPart {
  /** Null: it is not there. */
  read(document: JsonDocument): unknown;
  /** The document with the part put in; null takes it out. */
  write(document: JsonDocument, part: unknown): JsonDocument;
}

const siteLists = ['candidateSites', 'existingSites'] as const;

/** A site, candidate or existing; a new one joins the candidates. */
export function sitePart(siteId: string): CampusPart {
  const isIt = (row: JsonDocument): boolean => row['id'] === siteId;
  const listOf = (document: JsonDocument) =>
    siteLists.find((list) => rowsOf(document, list).some(isIt));
  return {
    read: (document) => {
      const list = listOf(document);
      return list === undefined ? null : (rowsOf(document, list).find(isIt) ?? null);
    },
    write: (document, part) => {
      const list = listOf(document);
      const site = part === null ? [] : [{ ...(part as JsonDocument), id: siteId }];
      if (list === undefined) {
        return { ...document, candidateSites: [...rowsOf(document, 'candidateSites'), ...site] };
      }
      const rows = rowsOf(document, list).flatMap((row) => (isIt(row) ? site : [row]));
      return { ...document, [list]: rows };
    },
  };
}

/** What was placed or barred by hand for one site: rows without the name of the site. */
export function handPlacementsPart(siteId: string): CampusPart {
  const isOfSite = (row: JsonDocument): boolean => row['site'] === siteId;
  return {
    read: (document) =>
      rowsOf(document, 'handPlacements')
        .filter(isOfSite)
        .map(({ site: _site, ...row }) => row),
    write: (document, part) => {
      const others = rowsOf(document, 'handPlacements').filter((row) => !isOfSite(row));
      const own = ((part ?? []) as readonly JsonDocument[]).map((row) => ({
        site: siteId,
        ...row,
      }));
      return { ...document, handPlacements: [...others, ...own] };
    },
  };
}

function rowsOf(document: JsonDocument, list: string): readonly JsonDocument[] {
  const rows = document[list];
  return Array.isArray(rows) ? (rows as JsonDocument[]) : [];
}
