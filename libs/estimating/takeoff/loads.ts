export interface Truck {
  readonly boxCuYd: number;
  readonly payloadLb: number;
}

export interface Delivery {
  readonly cubicYards: number;
  readonly pounds: number;
}

/** Loads of one material: ceil(max(volume / box, weight / payload)). Wet compost is limited by weight. */
export function loadsOf({ cubicYards, pounds }: Delivery, { boxCuYd, payloadLb }: Truck): number {
  return Math.ceil(Math.max(cubicYards / boxCuYd, pounds / payloadLb));
}

/** What fills a truck first. */
export function limitedBy({ cubicYards, pounds }: Delivery, truck: Truck): 'volume' | 'weight' {
  return pounds / truck.payloadLb > cubicYards / truck.boxCuYd ? 'weight' : 'volume';
}
