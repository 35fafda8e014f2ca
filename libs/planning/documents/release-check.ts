import { candidate } from '#domain/campus.js';
import type { Edition } from '#report/document/edition.js';
import { RELEASE_NEEDS } from '#report/release/release-needs.js';
import {
  releaseProblems,
  type ReleasedSite,
  type ReleaseProblem,
} from '#report/release/release-problems.js';
import type { DocumentWish } from '../ports/document-writer.js';
import type { DocumentSource } from './document-source.js';
import { documentOf, firstSites, titleOf } from './plan-documents.js';

/** A document that may not be called final, and what it lacks. */
export interface Refusal {
  readonly document: string;
  readonly problems: readonly ReleaseProblem[];
}

/** Those of the wished documents that may not be called final; empty where all may. */
export function refusals(
  source: DocumentSource,
  wishes: readonly DocumentWish[],
  edition: Edition,
): Refusal[] {
  return wishes.flatMap((wish) => {
    const problems = releaseProblems(documentOf(source, wish, edition), RELEASE_NEEDS[wish.kind], {
      approvedBy: edition.approvedBy ?? '',
      sites: sitesFor(source, wish),
    });
    return problems.length === 0 ? [] : [{ document: titleOf(wish), problems }];
  });
}

function sitesFor(source: DocumentSource, { kind, site }: DocumentWish): ReleasedSite[] {
  const { gates } = RELEASE_NEEDS[kind];
  const asked = {
    'its site': site === undefined ? [] : [site],
    'first sites': firstSites(source),
    none: [],
  };
  return asked[gates].map((id) => ({ site: id, gates: candidate(source.campus, id).gates }));
}
