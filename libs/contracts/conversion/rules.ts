import type { HandPlacement } from '#domain/campus.js';
import type { Commitment, CommitmentTest } from '#domain/commitment.js';
import type { ConstructionConflict } from '#domain/site.js';
import type { CampusFile } from '../campus-file.schema.js';
import { optional, toFiscalYear, toOptionalYear } from './values.js';

type TestPart = CampusFile['commitments'][number]['test'];

export function toCommitment(commitment: CampusFile['commitments'][number]): Commitment {
  return { ...commitment, test: toTest(commitment.test), points: commitment.points ?? 0 };
}

function toTest(test: TestPart): CommitmentTest {
  switch (test.kind) {
    case 'sites-each-year': {
      const { returnedCounts, ...same } = test;
      const years = { from: toFiscalYear(test.from), to: toFiscalYear(test.to) };
      return { ...same, ...years, ...optional('returnedCounts', returnedCounts) };
    }
    case 'named-site': {
      const { returnedCounts, ...same } = test;
      const by = toFiscalYear(test.by);
      return { ...same, by, ...optional('returnedCounts', returnedCounts) };
    }
    case 'area': {
      const { areaSqFt: sqFt, returnedCounts } = test;
      const by = toFiscalYear(test.by);
      return { kind: 'area', sqFt, by, ...optional('returnedCounts', returnedCounts) };
    }
    case 'zone-balance': {
      const { returnedCounts, ...same } = test;
      return { ...same, ...optional('returnedCounts', returnedCounts) };
    }
    case 'no-new-positions-before':
      return { kind: test.kind, year: toFiscalYear(test.year) };
    default:
      return test;
  }
}

export function toConstruction(works: CampusFile['construction'][number]): ConstructionConflict {
  return { ...works, from: toFiscalYear(works.from), to: toFiscalYear(works.to) };
}

export function toHandPlacement(placement: CampusFile['handPlacements'][number]): HandPlacement {
  const { year, buildType, ...same } = placement;
  return {
    ...same,
    ...optional('year', toOptionalYear(year)),
    ...optional('buildType', buildType),
  };
}
