/** How the candidates of a campus are suited, from their facts to the nodes that a reader opens. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { parseCampusFile } from '#contracts/parse-campus-file.js';
import type { Campus } from '#domain/campus.js';
import type { ExplainedNode } from '#estimating/explained.js';
import { campusSuitability, criteriaOf } from '#estimating/suitability/campus-suitability.js';
import { CRITERIA, CRITERION_IDS } from '#estimating/suitability/criteria.data.js';
import { weightFindings } from '#estimating/suitability/score.js';
import { suitabilityNodes } from '#estimating/suitability/suitability-nodes.js';
import { LOCKED_CRITERIA } from './defaults.locked.data.js';

function campusOf(change: (file: CampusFile) => void = () => undefined): Campus {
  const file = JSON.parse(readFileSync('seeds/mistakes/base.json', 'utf8')) as CampusFile;
  change(file);
  const parsed = parseCampusFile(file);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.campus;
}

const suited = (campus: Campus, id: string) => {
  const found = campusSuitability(campus).find(({ site }) => site.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};

const nodesOf = (campus: Campus, id: string): ExplainedNode[] =>
  suitabilityNodes(campus, suited(campus, id));

/** 900 walkers, 8 h of sun, 500 ft to a kitchen, 60 ft to water, 3.5 % organic matter, truck. */
const BY_HAND = {
  'people who walk past': 20 * (0.3 + (0.5 * 400) / 1500),
  'hours of sun': 20,
  'distance to a kitchen': 15 * (1 - (0.5 * 300) / 800),
  'distance to water': 15 * (1 - (0.5 * 10) / 150),
  'organic matter of the soil': 10 * (0.6 + 0.4 * 0.25),
  'truck access': 10,
};

describe('the criteria', () => {
  test('are each there once, with weights that total 100 %', () => {
    expect(CRITERIA.map(({ id }) => id)).toEqual([...CRITERION_IDS]);
    const lines = CRITERIA.map(({ id, unit, weightPercent, breakpoints }) =>
      [id, unit, weightPercent, breakpoints.map((at) => at.join(' ')).join(', ')].join(' | '),
    );
    expect(lines.join('\n')).toBe(LOCKED_CRITERIA.trim());
    expect(weightFindings(criteriaOf(campusOf()))).toEqual([]);
  });

  test('have the weights of the campus where it states them, and none where it leaves one out', () => {
    const own = campusOf((file) => {
      file.suitabilityWeightsPercent = { sun: 70, water: 30 };
    });
    const weights = criteriaOf(own).filter(({ weight }) => weight > 0);
    expect(weights.map(({ id, weight }) => [id, weight])).toEqual([
      ['sun', 0.7],
      ['water', 0.3],
    ]);
    const [score] = nodesOf(own, 'S-1');
    expect(score!.inputs[1]!.inputs[0]).toMatchObject({ value: 70, source: 'campus record' });
  });

  test('that do not total 100 are refused', () => {
    const file = JSON.parse(readFileSync('seeds/mistakes/base.json', 'utf8'));
    const parsed = parseCampusFile({ ...file, suitabilityWeightsPercent: { sun: 70, water: 3 } });
    expect(parsed).toMatchObject({ ok: false, problems: [{ code: 'SUITABILITY-WEIGHTS-TOTAL' }] });
  });
});

describe('a site', () => {
  test('opens to its score, each criterion by hand, and ranks', () => {
    const campus = campusOf();
    const [score, ...ranks] = nodesOf(campus, 'S-1');
    const own = campus.existing.filter(({ zone }) => zone === 'west').length;
    const zone = 10 * (own === 0 ? 1 : own === 1 ? 0.65 : own === 2 ? 0.3 : NaN);
    const expected = { ...BY_HAND, 'sites that its zone has already': zone };
    for (const part of score!.inputs) {
      const points = (expected as Record<string, number>)[part.name];
      expect(part.value, part.name).toBeCloseTo(points!, 9);
      expect(part.unit).toBe('points');
    }
    expect(score!.inputs).toHaveLength(7);
    const total = Object.values(expected).reduce((a, b) => a + b, 0);
    expect(score).toMatchObject({ name: 'suitability', unit: 'points' });
    expect(score!.value).toBeCloseTo(total, 9);
    expect(ranks.map(({ name, unit }) => [name, unit])).toEqual([
      ['rank, an unknown fact counting half', 'of 4'],
      ['rank, better in 1 of 20 draws', 'of 4'],
      ['rank, worse in 1 of 20 draws', 'of 4'],
      ['share of draws among the best three', 'share'],
    ]);
    const { rank } = suited(campus, 'S-1');
    expect(ranks.map(({ value }) => value)).toEqual([
      rank.statedRank,
      rank.low,
      rank.high,
      rank.topThree,
    ]);
  });

  test('with an unknown fact has no score, but bounds, and a wider rank', () => {
    const blind = campusOf((file) => {
      file.candidateSites[0]!.facts.sunHours = 'unknown';
    });
    const [score, least, most] = nodesOf(blind, 'S-1');
    expect(score!.value).toBeNull();
    expect([least!.name, most!.name]).toEqual(['least suitability', 'most suitability']);
    expect(most!.value! - least!.value!).toBeCloseTo(20, 9);
    const [sure] = nodesOf(campusOf(), 'S-1');
    expect(most!.value).toBeCloseTo(sure!.value!, 9);
    expect(least!.inputs).toEqual(score!.inputs);
    expect(score!.inputs[1]!.inputs[1]!.inputs[0]).toMatchObject({ value: null, unit: 'h/day' });
    const width = ({ rank }: ReturnType<typeof suited>) => rank.high - rank.low;
    expect(width(suited(blind, 'S-1'))).toBeGreaterThanOrEqual(width(suited(campusOf(), 'S-1')));
  });

  test('that no truck reaches has nothing for it, and is not unknown', () => {
    const far = campusOf((file) => {
      file.candidateSites[0]!.facts.truckAccess = false;
    });
    const part = nodesOf(far, 'S-1')[0]!.inputs.find(({ name }) => name === 'truck access');
    expect(part?.value).toBe(0);
    const unknown = campusOf((file) => {
      file.candidateSites[0]!.facts.truckAccess = 'unknown';
    });
    const open = nodesOf(unknown, 'S-1')[0]!.inputs.find(({ name }) => name === 'truck access');
    expect(open?.value).toBeNull();
  });
});

test('all candidates stand in the order of their ranks, the same each time', () => {
  const list = campusSuitability(campusOf());
  const ranks = list.map(({ rank }) => rank.statedRank);
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  expect(list).toHaveLength(4);
  expect(campusSuitability(campusOf())).toEqual(list);
});
