import { strings } from '../strings.data.js';

const COMMITMENT = 'commitment:';

interface Named {
  readonly id: string;
  readonly name: string;
}

/** A tier's name as a reader would say it; a promise by its name where that is known. */
export function tierInWords(name: string, promises: readonly Named[] = []): string {
  if (name.startsWith(COMMITMENT)) {
    const id = name.slice(COMMITMENT.length);
    return strings.tiers.commitment(promises.find((p) => p.id === id)?.name ?? id);
  }
  return strings.tiers.names[name] ?? name;
}
