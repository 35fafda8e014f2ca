import { counted, wholeInWords } from '#units/in-words.js';
import { commitmentShortfall } from './commitment-shortfall.js';
import type { Check } from './check.js';
import type { Shortfall } from './shortfall.js';

/** A binding promise is kept whole. */
export const checkBindingCommitments: Check = (campus, plan) =>
  campus.commitments
    .filter((c) => c.strength === 'binding')
    .map((commitment) => ({ commitment, short: commitmentShortfall(campus, plan, commitment) }))
    .filter(({ short }) => short.amount > 0)
    .map(({ commitment, short }) => ({
      rule: commitment.test.kind,
      record: commitment.id,
      message: `the binding commitment "${commitment.name}" is not kept: ${shortInWords(short)}`,
    }));

function shortInWords({ amount, unit, where }: Shortfall): string {
  const places = where.length > 0 ? ` (${where.join(', ')})` : '';
  return `${amountInWords(amount, unit)} short${places}`;
}

function amountInWords(amount: number, unit: Shortfall['unit']): string {
  switch (unit) {
    case 'sites':
      return counted(amount, 'site');
    case 'positions':
      return counted(amount, 'position');
    case 'square feet':
      return `${wholeInWords(amount)} sq ft`;
    case 'hundredths of an hour':
      return `${(amount / 100).toFixed(2)} h`;
  }
}
