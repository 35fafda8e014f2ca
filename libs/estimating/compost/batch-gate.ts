import { type Known } from '#units/known.js';
import { type CompostMethod, type HeatDay, type HeatRule, heatTreated } from './heat-log.js';

/** What is on record for one lot of compost. Every test may be missing: missing is not passed. */
export interface Batch {
  readonly id: string;
  readonly method: CompostMethod;
  readonly heatLog: Known<readonly HeatDay[]>;
  /** Carbon to nitrogen of the finished compost, parts to one. */
  readonly carbonToNitrogen: Known<number>;
  readonly mature: Known<boolean>;
  /** Peas or beans grew without harm in the mix. */
  readonly bioassayPassed: Known<boolean>;
  readonly metalsWithinLimits: Known<boolean>;
  readonly freeOfSharpsAndPlastic: Known<boolean>;
  /** Heat-treated and stored on a hard surface, stated by the maker. */
  readonly jumpingWormStatement: Known<boolean>;
}

export interface BatchTest {
  readonly name: string;
  readonly status: 'pass' | 'fail' | 'unknown';
  readonly clearedBy: string;
}

/** Finished compost above this holds too much carbon to feed plants. Common practice. */
export const MOST_CARBON_TO_NITROGEN = 25;

/** Every test of a batch, each with what would clear it. */
export function batchTests(batch: Batch, rule: HeatRule): BatchTest[] {
  const heat: Known<boolean> = batch.heatLog.known
    ? { known: true, value: heatTreated(batch.heatLog.value, batch.method, rule) }
    : batch.heatLog;
  const carbon: Known<boolean> = batch.carbonToNitrogen.known
    ? { known: true, value: batch.carbonToNitrogen.value <= MOST_CARBON_TO_NITROGEN }
    : batch.carbonToNitrogen;
  return [
    test('heat', heat, 'A temperature log that shows the required days and turnings.'),
    test('carbon to nitrogen', carbon, 'A laboratory report of the finished compost.'),
    test('maturity', batch.mature, 'A maturity test, or more curing time.'),
    test('herbicide bioassay', batch.bioassayPassed, 'Peas or beans grown in the mix for 21 days.'),
    test('metals', batch.metalsWithinLimits, 'A laboratory report of lead and other metals.'),
    test('sharps and plastic', batch.freeOfSharpsAndPlastic, 'Screening and a look at the batch.'),
    test('jumping worms', batch.jumpingWormStatement, 'The maker’s statement of heat and storage.'),
  ];
}

export type BatchGrade = 'certified' | 'other' | 'hold';

/** Failures that keep a batch off every site. */
const HOLDS = new Set(['herbicide bioassay', 'metals', 'jumping worms', 'sharps and plastic']);

/**
 * What a batch may be used for: `certified` (food beds too) only when every test passed, `hold` (nowhere) when
 * a test failed that spreads harm, else `other` (not for food beds). An unlogged batch is never certified.
 */
export function batchGrade(tests: readonly BatchTest[]): BatchGrade {
  if (tests.some(({ name, status }) => status === 'fail' && HOLDS.has(name))) return 'hold';
  return tests.every(({ status }) => status === 'pass') ? 'certified' : 'other';
}

function test(name: string, passed: Known<boolean>, clearedBy: string): BatchTest {
  if (!passed.known) return { name, status: 'unknown', clearedBy };
  return { name, status: passed.value ? 'pass' : 'fail', clearedBy };
}
