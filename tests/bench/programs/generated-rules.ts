import type { CampusFile } from '#contracts/campus-file.schema.js';
import { FIRST_YEAR } from './generated-sites.js';
import type { Draw, ProgramShape } from './shape.js';

type SitePart = CampusFile['candidateSites'][number];
type Rules = Pick<CampusFile, 'construction' | 'precedence' | 'exclusiveGroups' | 'commitments'>;

/** One site in so many lies under works. */
const ONE_IN_WORKS = 6;
/** One pair for so many sites, in which one waits for the other, or rules it out. */
const SITES_FOR_A_PAIR = 30;

/** Works, order, exclusions and promises in the demo's proportions; no site has two of these roles. */
export function rulesOf(shape: ProgramShape, draw: Draw, sites: readonly SitePart[]): Rules {
  const open = sites.filter((s) => s.gates.length === 0 && !s.earliest && !s.latest);
  const promised = draw.some(open.length > 1 ? open : sites, 2);
  const others = sites.filter((site) => !promised.includes(site));
  const orders = Math.max(1, Math.round(shape.sites / SITES_FOR_A_PAIR));
  const paired = pairsOf(draw.some(others, 4 * orders));
  return {
    construction: worksOf(shape, draw, others),
    precedence: paired.slice(0, orders).map(([before, after]) => ({
      before: before.id,
      after: after.id,
      yearsApart: draw.whole(0, 2),
      reason: 'Generated for a bench.',
    })),
    exclusiveGroups: paired.slice(orders).map((group, i) => ({
      id: `group-${i + 1}`,
      sites: group.map(({ id }) => id),
      reason: 'Generated for a bench.',
    })),
    commitments: promisesOf(shape, sites, promised),
  };
}

function worksOf(shape: ProgramShape, draw: Draw, sites: readonly SitePart[]) {
  return draw.some(sites, Math.round(shape.sites / ONE_IN_WORKS)).map((site, i) => {
    const first = draw.whole(1, Math.min(12, Math.max(1, shape.years - 1)));
    return {
      id: `works-${i + 1}`,
      name: `Works ${i + 1}`,
      kind: 'utility trench',
      sites: [site.id],
      from: `FY${FIRST_YEAR + first}`,
      to: `FY${FIRST_YEAR + first + draw.whole(0, 2)}`,
      certaintyPercent: draw.pick([30, 50, 70, 80, 95]),
      source: 'Generated for a bench.',
    };
  });
}

function pairsOf<T>(items: readonly T[]): [T, T][] {
  return items.flatMap((item, i): [T, T][] => {
    const next = items[i + 1];
    return i % 2 === 0 && next !== undefined ? [[item, next]] : [];
  });
}

function promisesOf(
  { sites: count, years }: ProgramShape,
  sites: readonly SitePart[],
  [first, second]: readonly SitePart[],
): CampusFile['commitments'] {
  const mostPromised = 0.85 * count;
  const aYear = Math.max(1, Math.floor(Math.min((0.9 * count) / years, mostPromised)));
  const lastYear = Math.min(years, Math.floor(mostPromised / aYear));
  const named = (site: SitePart | undefined, by: number) => ({
    kind: 'named-site' as const,
    site: site?.id ?? '',
    by: `FY${FIRST_YEAR + Math.min(by, years - 1)}`,
    buildTypes: 'any' as const,
  });
  return [
    promise('named-binding', 'binding', named(first, 4)),
    promise('sites-each-year', 'intended', {
      kind: 'sites-each-year',
      count: aYear,
      from: `FY${FIRST_YEAR}`,
      to: `FY${FIRST_YEAR + lastYear - 1}`,
      countsFromSqFt: 1500,
    }),
    promise('no-summer-gaps', 'intended', {
      kind: 'no-unserved-care',
      classes: ['care-food', 'harvest'],
      seasons: ['summer'],
    }),
    promise('named-intended', 'intended', named(second, 6)),
    { ...promise('zones', 'aspiration', { kind: 'zone-balance', leastPerZone: 3 }), points: 600 },
    {
      ...promise('area', 'aspiration', {
        kind: 'area',
        areaSqFt: Math.round(0.7 * sites.reduce((sum, s) => sum + s.areaSqFt, 0)),
        by: `FY${FIRST_YEAR + Math.floor(0.65 * years)}`,
      }),
      points: 1000,
    },
  ];
}

type Promised = CampusFile['commitments'][number];

function promise(id: string, strength: Promised['strength'], test: Promised['test']): Promised {
  return {
    id,
    name: `Promise ${id}`,
    strength,
    test,
    saidBy: 'A bench',
    saidTo: 'its reader',
    date: '2026-06-01',
    document: 'Generated for a bench',
    public: false,
  };
}
