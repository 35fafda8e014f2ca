import { commitmentShortfall } from './commitment-shortfall.js';
import type { Check } from './check.js';

/** A binding promise is kept whole. */
export const checkBindingCommitments: Check = (campus, plan) =>
  campus.commitments
    .filter((c) => c.strength === 'binding')
    .map((commitment) => ({ commitment, short: commitmentShortfall(campus, plan, commitment) }))
    .filter(({ short }) => short.amount > 0)
    .map(({ commitment, short }) => ({
      rule: commitment.test.kind,
      record: commitment.id,
      message: `the binding commitment "${commitment.name}" is not kept: ${short.amount} ${short.unit} short${short.where.length > 0 ? ` (${short.where.join(', ')})` : ''}`,
    }));
