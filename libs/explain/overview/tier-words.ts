import type { Campus } from '#domain/campus.js';
import { counted, dollarsInWords, hoursInWords, wholeInWords } from '#units/in-words.js';

const AIMS: Readonly<Record<string, string>> = {
  'unserved-peak': 'care left undone in the worst season',
  'unserved-total': 'care left undone in all seasons',
  benefit: 'benefit',
  'recurring-cost': 'yearly cost in the dearest year',
  change: 'change from the published plan',
};

/** What a tier asks to keep small, as a reader would say it. */
export function aimInWords({ commitments }: Campus, tier: string): string {
  const id = tier.replace(/^commitment:/, '');
  const promise = commitments.find((c) => c.id === id);
  return promise ? `shortfall of “${promise.name}”` : (AIMS[tier] ?? tier);
}

/** An amount of a tier with its unit, as far as it can be trusted in a sentence. */
export function amountOfTier(unit: string, value: number): string {
  switch (unit) {
    case 'hours':
      return hoursInWords(value);
    case 'hundredths of an hour':
      return hoursInWords(value / 100);
    case 'sites':
      return counted(value, 'site');
    case 'positions':
      return counted(value, 'position');
    case 'square feet':
      return counted(value, 'square foot', 'square feet');
    case 'points':
      return `${wholeInWords(value)} points of benefit`;
    case 'dollars':
      return dollarsInWords(value);
    default:
      return `${value} ${unit}`;
  }
}
