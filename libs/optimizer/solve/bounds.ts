import { benefitPlace, type Tier } from '../tiers/tier-list.js';
import { tighterBound } from './tier-report.js';

/** A bound of one tier, valid while the tiers before it are held at the values it was found with. */
export interface FoundBound {
  readonly place: number;
  /** Values of the tiers before `place`. */
  readonly held: readonly number[];
  readonly bound: number;
}

/** The tightest bounds found so far. */
export class Bounds {
  private readonly kept = new Map<string, number>();

  constructor(private readonly tiers: readonly Tier[]) {}

  note({ place, held, bound }: FoundBound): void {
    const tier = this.tiers[place];
    if (!tier) return;
    const key = keyOf(place, held);
    this.kept.set(key, tighterBound(tier, bound, this.kept.get(key) ?? null) ?? bound);
  }

  /** The bound of a tier for plans with these values in the tiers before; `null` where none is known. */
  of(place: number, values: readonly number[]): number | null {
    const found = this.kept.get(keyOf(place, values.slice(0, place)));
    if (found !== undefined) return found;
    const counted = place < benefitPlace(this.tiers) || this.tiers[place]?.name === 'change';
    return counted ? 0 : null;
  }
}

function keyOf(place: number, held: readonly number[]): string {
  return `${place}:${held.map((v) => v.toFixed(6)).join(',')}`;
}
