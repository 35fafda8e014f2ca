import { strings } from '../strings.data.js';

const COMMITMENT = 'commitment:';

/** A tier's name as a reader would say it. */
export function tierInWords(name: string): string {
  if (name.startsWith(COMMITMENT)) {
    return strings.tiers.commitment(name.slice(COMMITMENT.length));
  }
  return strings.tiers.names[name] ?? name;
}
