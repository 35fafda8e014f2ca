import type { Campus } from '#domain/campus.js';
import { tinyFund, tinyPool } from './tiny-campus.js';

/** Ways to ask less of a campus, or to give it more: none may make its best plan worse. */
export const RELAXATIONS: Readonly<Record<string, (campus: Campus) => Campus>> = {
  'more money': (campus) => ({ ...campus, funds: [...campus.funds, tinyFund('more', 7000)] }),
  'more hours': (campus) => ({ ...campus, pools: [...campus.pools, tinyPool('more', 25)] }),
  'a shorter lead': (campus) => ({
    ...campus,
    positions: campus.positions.map((p) => ({ ...p, leadMonths: 0 })),
  }),
  // Points of an aspiration are part of benefit, so that dropping one is no relaxation.
  'fewer commitments': (campus) => ({
    ...campus,
    commitments: campus.commitments.filter((c) => c.strength === 'aspiration'),
  }),
  'money that keeps longer': (campus) => ({
    ...campus,
    funds: campus.funds.map((fund) => ({
      ...fund,
      inflows: fund.inflows.map((i) => ({
        ...i,
        lastYear: fund.inflows.at(-1)?.lastYear ?? i.lastYear,
      })),
    })),
  }),
};
