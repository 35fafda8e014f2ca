import type { Campus } from '#domain/campus.js';
import type { Site } from '#domain/site.js';

/** When something is planted and gone. */
interface Span {
  readonly planted: number;
  readonly ends: number;
}

/** What is worked out once for each life, as long as its owner is there. */
export class KeptByLife<Owner extends object, Made> {
  private readonly kept = new WeakMap<Owner, Map<string, Made>>();

  of(owner: Owner, life: Span, make: () => Made): Made {
    const lives = this.kept.get(owner) ?? new Map<string, Made>();
    this.kept.set(owner, lives);
    const key = `${life.planted} ${life.ends}`;
    const made = lives.get(key) ?? make();
    lives.set(key, made);
    return made;
  }
}

/** A site of a campus as one of its types. */
export interface TypedSite {
  readonly campus: Campus;
  readonly site: Site;
  readonly typeId: string;
}

/** What is worked out once for each site of a campus as each type. */
export class KeptByType<Made> {
  private readonly kept = new WeakMap<Campus, WeakMap<Site, Map<string, Made>>>();

  of({ campus, site, typeId }: TypedSite, make: () => Made): Made {
    const sites = this.kept.get(campus) ?? new WeakMap<Site, Map<string, Made>>();
    this.kept.set(campus, sites);
    const types = sites.get(site) ?? new Map<string, Made>();
    sites.set(site, types);
    const made = types.get(typeId) ?? make();
    types.set(typeId, made);
    return made;
  }
}
