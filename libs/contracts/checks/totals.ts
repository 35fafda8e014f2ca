import { anError, type Problem } from '#domain/problem.js';
import type { FileView } from './file-view.js';

/** Room for the binary form of decimal shares, and for no more. */
const TOLERANCE = 1e-6;

/** Shares that must add up to 1, and benefit weights that must add up to 100. */
export function totalProblems(view: FileView): Problem[] {
  return [
    ...view.buildTypes.flatMap(({ id, componentShares }) =>
      shareTotal({
        code: 'BUILD-SHARES-TOTAL',
        record: `build type ${id}`,
        field: 'componentShares',
        shares: Object.values(componentShares),
      }),
    ),
    ...careTotals(view),
    ...weightTotals(view),
    ...positionTotals(view),
    ...suitabilityTotal(view),
  ];
}

function careTotals({ care }: FileView): Problem[] {
  return Object.entries(care ?? {}).flatMap(([component, coefficients]) => [
    ...shareTotal({
      code: 'SEASON-SHARES-TOTAL',
      record: `care ${component}`,
      field: 'seasonShares',
      shares: Object.values(coefficients.seasonShares),
    }),
    ...(coefficients.harvestHoursPer1000SqFt > 0
      ? shareTotal({
          code: 'SEASON-SHARES-TOTAL',
          record: `care ${component}`,
          field: 'harvestSeasonShares',
          shares: Object.values(coefficients.harvestSeasonShares),
        })
      : []),
  ]);
}

interface Total {
  readonly code: string;
  readonly record: string;
  readonly field: string;
  readonly shares: readonly number[];
}

function shareTotal({ code, record, field, shares }: Total): Problem[] {
  const total = sum(shares);
  if (Math.abs(total - 1) <= TOLERANCE) return [];
  return [
    anError({ code, record, field, value: total }, [
      `The shares add up to ${total}, not to 1.`,
      'Correct them so that they add up to 1: 0.45 is 45 %.',
    ]),
  ];
}

function suitabilityTotal({ suitabilityWeightsPercent: weights }: FileView): Problem[] {
  if (weights === undefined) return [];
  const total = sum(Object.values(weights).map((weight) => weight ?? 0));
  if (Math.abs(total - 100) <= TOLERANCE) return [];
  const place = { code: 'SUITABILITY-WEIGHTS-TOTAL', record: 'the file', value: total };
  return [
    anError({ ...place, field: 'suitabilityWeightsPercent' }, [
      `The weights add up to ${total}, not to 100.`,
      'Correct them so that they add up to 100, or leave them out for the defaults.',
    ]),
  ];
}

function positionTotals({ benefit }: FileView): Problem[] {
  const known = new Set(benefit?.criteria.map(({ id }) => id));
  return (benefit?.positions ?? []).flatMap(({ id, weightPoints }) => {
    const place = { record: `benefit position ${id}`, field: 'weightPoints' };
    const stray = Object.keys(weightPoints).find((criterion) => !known.has(criterion));
    if (stray !== undefined) {
      return [
        anError({ ...place, code: 'REFERENCE-MISSING', value: stray }, [
          `There is no benefit criterion called ${stray} in this file.`,
          'Name criteria that are there.',
        ]),
      ];
    }
    const total = sum(Object.values(weightPoints));
    if (Math.abs(total - 100) <= 0.005) return [];
    return [
      anError({ ...place, code: 'BENEFIT-WEIGHTS-TOTAL', value: total }, [
        `The weights add up to ${total} points, not to 100.`,
        'Share out exactly 100 points.',
      ]),
    ];
  });
}

function weightTotals({ benefit }: FileView): Problem[] {
  const total = sum((benefit?.criteria ?? []).map(({ weightPoints }) => weightPoints));
  if (!benefit || Math.abs(total - 100) <= 0.005) return [];
  return [
    anError({ code: 'BENEFIT-WEIGHTS-TOTAL', record: 'benefit', field: 'criteria', value: total }, [
      `The weights add up to ${total} points, not to 100.`,
      'Share out exactly 100 points.',
    ]),
  ];
}

function sum(values: readonly number[]): number {
  return Number(values.reduce((a, b) => a + b, 0).toFixed(6));
}
