import { buildType, candidate } from '#domain/campus.js';
import type { BuildType } from '#domain/build-type.js';
import type { Placement } from '#domain/plan.js';
import type { CandidateSite, GateKind } from '#domain/site.js';
import type { Ground } from './ground.js';

/** A site about to be built, and as what. */
interface Coming {
  readonly site: CandidateSite;
  readonly type: BuildType;
}

interface Caution {
  readonly text: string;
  /** Left out: always. */
  readonly appliesTo?: (coming: Coming, ground: Ground) => boolean;
}

const hasGate =
  (...kinds: GateKind[]) =>
  ({ site }: Coming): boolean =>
    site.gates.some((gate) => kinds.includes(gate.kind));

const rooted = ({ site }: Coming): boolean => {
  const { rootProtectedShare: share } = site.facts;
  return !share.known || share.value > 0;
};

const CAUTIONS: readonly Caution[] = [
  {
    text: 'Digging: first call the public one-call center and the campus locator, wait as state law says, and dig by hand near marks. A boundary drawn here is no locate.',
  },
  {
    text: 'Soil: a result here is a screening, not a clearance, and unknown is not clean. Environmental health and safety decides what may be eaten.',
    appliesTo: (coming) => coming.type.edible || hasGate('contamination')(coming),
  },
  {
    text: 'Trees: in root zones no grade change, no tilling, no more compost than the campus arborist allows, nothing against a trunk.',
    appliesTo: (coming) => rooted(coming) || hasGate('root-protection')(coming),
  },
  {
    text: 'Water: a rain garden, or work near a shore, wetland or foundation, needs a licensed engineer and the stormwater manager. No treatment credit is claimed.',
    appliesTo: (coming) =>
      coming.type.shares['rain-garden'] > 0 || hasGate('flood-or-wetland')(coming),
  },
  {
    text: 'Structures: fill over a cellar, vault or tunnel has a load limit, for trucks too. A licensed structural engineer sets it.',
    appliesTo: hasGate('structure'),
  },
  {
    text: 'Heritage: ground with a possible find, grave or cultural meaning waits for the heritage office and for consultation.',
    appliesTo: hasGate('heritage'),
  },
  {
    text: 'Volunteers: waivers, the rule on minors, enough leaders, and a stop in heat or lightning. They work beside represented staff, never in their place.',
    appliesTo: (_, { campus }) => campus.workDays.length > 0,
  },
  {
    text: 'Food: compost needs its heat log and a test for herbicide; produce reaches a kitchen only with the approval of the kitchen and the health authority.',
    appliesTo: ({ type }) => type.edible,
  },
  {
    text: 'Access: loose chips are no accessible route.',
  },
];

/** What whoever designs a site must heed; told where its plan is reviewed. */
const OF_DESIGN: readonly Caution[] = [
  {
    text: 'Irrigation: backflow devices; no reclaimed or rain-tank water on food ground without treatment.',
    appliesTo: ({ type }) => type.edible,
  },
  {
    text: 'Public ground: no poisonous plants or look-alikes in reach, thorns at least 4 ft from walks, sight lines and night lighting kept, a sign where bees are many. Local rules set how far chips stay from buildings.',
  },
];

/** Cautions for the sites of the first year, where the work is decided; general ones come always. */
export function cautionsOf(ground: Ground): string[] {
  const { campus, plan } = ground;
  return cautionsFor(
    ground,
    plan.decisions.placements.filter((p) => p.year === campus.calendar.firstYear),
  );
}

/** Cautions for sites about to be built as a plan has them; none where there are none. */
function cautionsFor(ground: Ground, placements: readonly Placement[]): string[] {
  const coming = placements.map((p) => ({
    site: candidate(ground.campus, p.site),
    type: buildType(ground.campus, p.buildType),
  }));
  return coming.length === 0 ? [] : applying(CAUTIONS, coming, ground);
}

/** Cautions for a site whose plan is reviewed: those of building it, and those of its design. */
export function reviewCautions(ground: Ground, placement: Placement): string[] {
  const { campus } = ground;
  const site = candidate(campus, placement.site);
  const coming = [{ site, type: buildType(campus, placement.buildType) }];
  return applying([...CAUTIONS, ...OF_DESIGN], coming, ground);
}

function applying(
  cautions: readonly Caution[],
  coming: readonly Coming[],
  ground: Ground,
): string[] {
  return cautions
    .filter(({ appliesTo }) => !appliesTo || coming.some((one) => appliesTo(one, ground)))
    .map(({ text }) => text);
}
