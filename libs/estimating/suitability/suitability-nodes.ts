import type { Campus } from '#domain/campus.js';
import { explained, type ExplainedNode, given, sumOf } from '../explained.js';
import { measuresOf, RANK_DRAWS, type SiteSuitability } from './campus-suitability.js';
import { CRITERIA, CRITERIA_SOURCE, type SuitabilityCriterion } from './criteria.data.js';

/** Points of a full score. */
const POINTS = 100;

/** Score, its bounds where a fact is unknown, and ranks, each open to what it was made of. */
export function suitabilityNodes(campus: Campus, of: SiteSuitability): ExplainedNode[] {
  const { score, rank } = of;
  const contributions = CRITERIA.map((criterion, index) =>
    contributionNode({ campus, of, criterion, index }),
  );
  const isOpen = contributions.some(({ value }) => value === null);
  const bound = (name: string, value: number) =>
    explained({
      name,
      value: value * POINTS,
      unit: 'points',
      formula: 'sum of the parts, every unknown one at its worst or best',
      inputs: contributions,
    });
  const rankNode = (name: string, value: number, unit = `of ${campus.candidates.length}`) =>
    explained({
      name,
      value,
      unit,
      formula: 'sites with a higher score + 1',
      source: `${RANK_DRAWS} seeded draws of the weights about the stated ones, unknown facts anywhere`,
      inputs: [],
    });
  return [
    sumOf('suitability', 'points', contributions),
    ...(isOpen ? [bound('least suitability', score.least)] : []),
    ...(isOpen ? [bound('most suitability', score.most)] : []),
    rankNode('rank, an unknown fact counting half', rank.statedRank),
    rankNode('rank, better in 1 of 20 draws', rank.low),
    rankNode('rank, worse in 1 of 20 draws', rank.high),
    rankNode('share of draws among the best three', rank.topThree, 'share'),
  ];
}

interface OfCriterion {
  readonly campus: Campus;
  readonly of: SiteSuitability;
  readonly criterion: SuitabilityCriterion;
  readonly index: number;
}

function contributionNode({ campus, of, criterion, index }: OfCriterion): ExplainedNode {
  const { name, unit, breakpoints, id } = criterion;
  const part = of.score.contributions[index];
  const fact = measuresOf(campus, of.site)[id];
  const worth = part?.worth.known ? part.worth.value : null;
  const weight = (part?.weight ?? 0) * POINTS;
  const lines = breakpoints.map(([at, is]) => `${at}: ${is}`).join(', ');
  return explained({
    name,
    value: worth === null ? null : worth * weight,
    unit: 'points',
    formula: 'weight x worth',
    inputs: [
      given('weight', { value: weight, unit: 'points' }, weightSource(campus)),
      explained({
        name: 'worth',
        value: worth,
        unit: 'share',
        formula: `straight lines between ${lines}`,
        source: CRITERIA_SOURCE,
        inputs: [given(name, { value: fact.known ? fact.value : null, unit }, 'site record')],
      }),
    ],
  });
}

function weightSource({ suitabilityWeights }: Campus): string {
  return suitabilityWeights ? 'campus record' : CRITERIA_SOURCE;
}
