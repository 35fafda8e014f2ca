import { anError, aWarning, type Problem } from '#domain/problem.js';
import type { Position, Rings } from '#domain/site.js';
import {
  boundaryFindings,
  type BoundaryFault,
  type BoundaryFinding,
} from '../geometry/ring-findings.js';
import { campusPosition, isDrawn, sitesOf, type CampusPlaces } from './places.js';

const CODES: Readonly<Record<BoundaryFault, string>> = {
  empty: 'SITE-RING-EMPTY',
  'not-a-number': 'SITE-RING-NOT-A-NUMBER',
  swapped: 'SITE-COORDINATES-SWAPPED',
  projected: 'SITE-COORDINATES-PROJECTED',
  unclosed: 'SITE-RING-UNCLOSED',
  'too-few-corners': 'SITE-RING-TOO-FEW-CORNERS',
  crossing: 'SITE-RING-CROSSES-ITSELF',
  winding: 'SITE-RING-WINDING',
  sliver: 'SITE-SLIVER',
};

/** A site farther than this from the others, in degrees, is most likely misplaced: a slip of sign or digit. */
const FAR_DEGREES = 0.5;

/** What is wrong with the rings of sites and zones themselves. */
export function boundaryProblems(places: CampusPlaces): Problem[] {
  const near = campusPosition(places);
  const sites = sitesOf(places).flatMap((site) =>
    ringProblems({ record: `site ${site.id}`, rings: site.boundary, near }),
  );
  const zones = places.zones.flatMap((zone) =>
    ringProblems({ record: `zone ${zone.id}`, rings: zone.boundary ?? [], near }),
  );
  return [...sites, ...zones];
}

/** Rings that can be measured: nothing in them is refused. */
export function isMeasurable(rings: Rings, near: Position | undefined): boolean {
  return isDrawn(rings) && !findings(rings, near).some(isRefused);
}

interface Drawn {
  readonly record: string;
  readonly rings: Rings;
  readonly near: Position | undefined;
}

function ringProblems({ record, rings, near }: Drawn): Problem[] {
  if (!isDrawn(rings)) return [];
  const found = findings(rings, near);
  if (found.length > 0) return found.map((finding) => problemOf(record, finding));
  return near !== undefined && isFar(rings, near) ? [farProblem(record, rings)] : [];
}

function findings(rings: Rings, near: Position | undefined): BoundaryFinding[] {
  return near === undefined ? boundaryFindings(rings) : boundaryFindings(rings, near);
}

/** RFC 7946 asks for closed rings: where one is left open, corners may be lost. */
function isRefused({ severity, fault }: BoundaryFinding): boolean {
  return severity === 'reject' || fault === 'unclosed';
}

function problemOf(record: string, finding: BoundaryFinding): Problem {
  const { field, problem, fault } = finding;
  const place = { code: CODES[fault], record, field: fieldOf(field) };
  const said = `The ${field} ${problem}.`;
  if (fault === 'unclosed') {
    return anError(place, [said, 'Repeat the first position at the end, if no corner is missing.']);
  }
  const report = isRefused(finding) ? anError : aWarning;
  return report(place, [said, finding.remedy]);
}

/** `boundary hole 1` is the second ring of the file's polygon. */
function fieldOf(field: string): string {
  const hole = /hole (\d+)/.exec(field)?.[1];
  return hole === undefined ? 'boundary' : `boundary.coordinates[#${Number(hole) + 1}]`;
}

function isFar(rings: Rings, [longitude, latitude]: Position): boolean {
  return rings
    .flat()
    .some(
      ([x, y]) => Math.abs(x - longitude) > FAR_DEGREES || Math.abs(y - latitude) > FAR_DEGREES,
    );
}

function farProblem(record: string, rings: Rings): Problem {
  const place = { code: 'SITE-FAR-FROM-CAMPUS', record, field: 'boundary', value: rings[0]?.[0] };
  return aWarning(place, [
    'The boundary lies far from all other sites.',
    'Check the sign and the digits of its longitude and latitude.',
  ]);
}
