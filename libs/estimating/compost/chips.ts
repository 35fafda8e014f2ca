/** A delivery of chips as tree crews offer it. */
export interface ChipOffer {
  readonly cubicYards: number;
  readonly species: readonly string[];
  /** Zone of quarantine the trees stood in. Left out: not known. */
  readonly origin?: string;
}

export interface Quarantine {
  readonly species: string;
  /** Zones whose wood may not leave. */
  readonly zones: readonly string[];
}

/** Why chips may not be taken; empty where they may. An unknown origin of a regulated species is refused. */
export function chipRefusals(offer: ChipOffer, quarantines: readonly Quarantine[]): string[] {
  return quarantines
    .filter(({ species }) => offer.species.includes(species))
    .filter(({ zones }) => offer.origin === undefined || zones.includes(offer.origin))
    .map(({ species }) =>
      offer.origin === undefined
        ? `origin of the ${species} is not known; ask the state forester`
        : `${species} from ${offer.origin} is under quarantine`,
    );
}
