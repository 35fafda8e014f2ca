import { z } from 'zod';

const unitSystem = z.enum(['us', 'metric']).meta({ id: 'UnitSystem' });

export const estimateParams = z.strictObject({ id: z.uuid(), site: z.string().min(1) });

export const unitsQuery = z.strictObject({ units: unitSystem.default('us') });

export const estimateQuery = z.strictObject({
  type: z
    .string()
    .min(1)
    .optional()
    .meta({ description: 'Build type; left out: every one that the site may become' }),
  units: unitSystem.default('us'),
});

/** One number of an estimate. It opens to the numbers it was made of. */
const node = z
  .strictObject({
    name: z.string(),
    value: z.number().nullable().meta({ description: 'null: unknown' }),
    unit: z.string(),
    formula: z.string(),
    source: z.string(),
    get inputs() {
      return z.array(node);
    },
  })
  .meta({ id: 'EstimateNode' });

const finding = z
  .strictObject({
    field: z.string(),
    value: z.unknown(),
    severity: z.enum(['warn', 'reject']),
    problem: z.string(),
    remedy: z.string(),
  })
  .meta({ id: 'EstimateFinding' });

const nodes = z.array(node);

const gateRow = z
  .strictObject({
    kind: z.string(),
    status: z.enum(['pass', 'fail', 'unknown']),
    note: z.string(),
    clearedBy: z.string().meta({ description: 'What would clear it' }),
    ask: z.string().meta({ description: 'Whom to ask' }),
    asOf: z.string().nullable().meta({ description: 'Date of a regulator’s number' }),
    basis: z.enum(['stated', 'measured', 'not recorded']),
    measured: z.string().nullable().meta({ description: 'What the measures say beside it' }),
  })
  .meta({ id: 'SiteGate' });

const typeEstimate = z
  .strictObject({
    buildType: z.string(),
    name: z.string(),
    findings: z.array(finding),
    sections: z.strictObject({
      takeoff: nodes,
      hours: nodes,
      money: nodes,
      water: nodes,
      benefits: nodes,
    }),
  })
  .meta({ id: 'TypeEstimate' });

export const siteEstimatesReply = z
  .strictObject({
    site: z.string(),
    name: z.string(),
    units: unitSystem,
    pricesOf: z.string().meta({ description: 'Fiscal year of the prices, such as FY28' }),
    notes: z.array(z.string()),
    gates: z.array(gateRow),
    suitability: nodes.meta({ description: 'Of a candidate, before gates and plan' }),
    estimates: z.array(typeEstimate),
  })
  .meta({ id: 'SiteEstimates' });

const measuredEntry = z
  .strictObject({
    site: z.string().nullable().meta({ description: 'null: on the whole campus' }),
    value: z.number(),
    source: z.string(),
  })
  .meta({ id: 'MeasuredDefault' });

const defaultEntry = z
  .strictObject({
    key: z.string(),
    unit: z.string(),
    low: z.number(),
    typical: z.number(),
    high: z.number(),
    provenance: z.enum(['published', 'common practice', 'judgement']),
    source: z.string(),
    year: z.int(),
    measured: z.array(measuredEntry).meta({ description: 'What a campus plans with instead' }),
  })
  .meta({ id: 'Default' });

export const defaultsReply = z
  .strictObject({
    units: unitSystem,
    groups: z.array(z.strictObject({ group: z.string(), defaults: z.array(defaultEntry) })),
  })
  .meta({ id: 'Defaults' });

const suitabilityRow = z
  .strictObject({
    site: z.string(),
    name: z.string(),
    least: z.number().meta({ description: 'Points of 100, unknown facts at their worst' }),
    most: z.number(),
    rank: z.int(),
    rankLow: z.int(),
    rankHigh: z.int(),
    topThree: z.number().meta({ description: 'Share of draws among the best three' }),
    gates: z.enum(['pass', 'fail', 'unknown']),
    contributions: z.array(
      z.strictObject({
        criterion: z.string(),
        weight: z.number(),
        points: z.number().nullable(),
      }),
    ),
  })
  .meta({ id: 'SiteSuitability' });

export const suitabilityReply = z
  .strictObject({ draws: z.int(), sites: z.array(suitabilityRow) })
  .meta({ id: 'SuitabilityList' });

export type SiteEstimatesReply = z.infer<typeof siteEstimatesReply>;
export type SuitabilityReply = z.infer<typeof suitabilityReply>;
export type EstimateParams = z.infer<typeof estimateParams>;
export type EstimateQuery = z.infer<typeof estimateQuery>;
export type UnitsQuery = z.infer<typeof unitsQuery>;
