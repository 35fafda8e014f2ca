import { anError, type Problem, type ProblemText } from '#domain/problem.js';
import { toFiscalYear } from '../conversion/values.js';
import type { CandidatePart, FileView } from './file-view.js';
import { isTakenByWorks, windowYears } from './open-years.js';

type HandPart = FileView['handPlacements'][number];

/** Placements set by hand that contradict one another, or the site they are for. */
export function handPlacementProblems(view: FileView): Problem[] {
  return [
    ...view.handPlacements.flatMap(yearProblems),
    ...view.handPlacements.flatMap((hand, i) =>
      view.handPlacements.slice(i + 1).flatMap((other) => pairProblems(view, hand, other)),
    ),
    ...view.handPlacements.flatMap((hand) => siteProblems(view, hand)),
  ];
}

function yearProblems(hand: HandPart): Problem[] {
  if (hand.kind === 'forbidden' || hand.year !== undefined) return [];
  return [
    handError(hand, { code: 'HAND-FIXED-WITHOUT-YEAR', field: 'year' }, [
      'A site is fixed, and no fiscal year is given.',
      'Give the year in which it is prepared.',
    ]),
  ];
}

function pairProblems(view: FileView, hand: HandPart, other: HandPart): Problem[] {
  if (hand.site === other.site) return sameSite(hand, other);
  const group = view.exclusiveGroups.find(
    ({ sites }) => sites.includes(hand.site) && sites.includes(other.site),
  );
  if (!group || hand.kind !== 'fixed' || other.kind !== 'fixed') return [];
  return [
    handError(other, { code: 'HAND-CONTRADICTS', field: 'site', value: other.site }, [
      `${hand.site} is fixed as well, and the exclusive group ${group.id} allows only one of them.`,
      'Keep one of the two.',
    ]),
  ];
}

function sameSite(hand: HandPart, other: HandPart): Problem[] {
  const fixed = [hand, other].filter(({ kind }) => kind === 'fixed');
  const forbidden = [hand, other].find(({ kind }) => kind === 'forbidden');
  const clash =
    fixed.length === 2
      ? differ(hand.year, other.year) || differ(hand.buildType, other.buildType)
      : forbidden !== undefined && fixed.length === 1 && covers(forbidden, fixed[0]);
  if (!clash) return [];
  return [
    handError(other, { code: 'HAND-CONTRADICTS', field: 'site', value: other.site }, [
      `Two placements of ${hand.site} contradict each other (${words(hand)}; ${words(other)}).`,
      'Keep one of the two.',
    ]),
  ];
}

function differ(one: string | undefined, other: string | undefined): boolean {
  return one !== undefined && other !== undefined && one !== other;
}

function covers(forbidden: HandPart, fixed: HandPart | undefined): boolean {
  return (
    (forbidden.year === undefined || forbidden.year === fixed?.year) &&
    (forbidden.buildType === undefined || forbidden.buildType === fixed?.buildType)
  );
}

function words({ kind, year, buildType }: HandPart): string {
  return [kind, year, buildType].filter((word) => word !== undefined).join(' ');
}

function siteProblems(view: FileView, hand: HandPart): Problem[] {
  const site = view.candidateSites.find(({ id }) => id === hand.site);
  if (!site || hand.kind !== 'fixed') return [];
  return [...typeProblems(site, hand), ...closedProblems(view, site, hand)];
}

function typeProblems(site: CandidatePart, hand: HandPart): Problem[] {
  if (hand.buildType === undefined || site.buildTypes.includes(hand.buildType)) return [];
  const place = { code: 'HAND-TYPE-NOT-ALLOWED', field: 'buildType', value: hand.buildType };
  return [
    handError(hand, place, [
      `${site.id} may not become ${hand.buildType}.`,
      `Choose one of ${site.buildTypes.join(', ')}.`,
    ]),
  ];
}

function closedProblems(view: FileView, site: CandidatePart, hand: HandPart): Problem[] {
  if (hand.year === undefined || !view.time) return [];
  const year = toFiscalYear(hand.year);
  const place = { code: 'HAND-YEAR-CLOSED', field: 'year', value: hand.year };
  if (isTakenByWorks(view, site.id, year)) {
    return [
      handError(hand, place, [
        `Works take ${site.id} in ${hand.year}.`,
        'Choose a year after the works.',
      ]),
    ];
  }
  if (windowYears(view.time, site).includes(year)) return [];
  return [
    handError(hand, place, [
      `${hand.year} lies outside the years in which ${site.id} may be prepared.`,
      'Choose a year between its earliest and latest year, within the plan.',
    ]),
  ];
}

function handError(
  { site }: HandPart,
  place: { code: string; field: string; value?: unknown },
  text: ProblemText,
): Problem {
  return anError({ record: `hand placement ${site}`, ...place }, text);
}
