import type { Bench } from './bench.js';
import { longRangePlan } from './benches/long-range-plan.js';
import { polygonArea } from './benches/polygon-area.js';
import { siteEstimate } from './benches/site-estimate.js';

/** Every bench, once. The tests run each at its smallest size. */
export const BENCHES: readonly Bench[] = [polygonArea, siteEstimate, longRangePlan];
