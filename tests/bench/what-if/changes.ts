import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Decisions, Placement } from '#domain/plan.js';

/** One change of a campus that a committee might ask about. */
export interface NamedChange {
  readonly name: string;
  readonly file: CampusFile;
}

/** What a changed campus is made from: the file, and the decisions of its current plan. */
export interface Current {
  readonly file: CampusFile;
  readonly decisions: Decisions;
}

type Change = (of: Current) => CampusFile | undefined;

/** By what is asked. Each takes its sites from the plan, so that it changes something that matters. */
const CHANGES: Readonly<Record<string, Change>> = {
  'new positions frozen three years longer': frozenLonger,
  'a tenth less capital every year': lessCapital,
  'a gate of a planned site fails': gateFails,
  'a site placed by hand two years sooner': placedByHand,
  'the largest gift lost': giftLost,
  'works brought forward onto a planned site': worksMoved,
  'a third fewer volunteers': fewerVolunteers,
  'one more promise, of a site planned late': promisedMore,
};

/** The changes that the campus and its plan have what they need for. */
export function namedChanges(of: Current): NamedChange[] {
  return Object.entries(CHANGES).flatMap(([name, change]) => {
    const file = change(of);
    return file ? [{ name, file: { ...file, id: `${file.id}-changed` } }] : [];
  });
}

function frozenLonger({ file }: Current): CampusFile {
  const later = (year: string) => label(yearOf(year) + 3);
  return {
    ...file,
    commitments: file.commitments.map((c) =>
      c.test.kind === 'no-new-positions-before'
        ? { ...c, test: { ...c.test, year: later(c.test.year) } }
        : c,
    ),
  };
}

/** Of capital: with a tenth less for care too, the demo cannot pay the people that it has. */
function lessCapital({ file }: Current): CampusFile {
  return {
    ...file,
    funds: file.funds.map(({ yearlyInflows, ...fund }) => ({
      ...fund,
      ...(yearlyInflows && {
        yearlyInflows: yearlyInflows.map((i) => ({
          ...i,
          amountDollars: Math.round(i.amountDollars * (fund.kind === 'capital' ? 0.9 : 1)),
        })),
      }),
    })),
  };
}

function gateFails(of: Current): CampusFile | undefined {
  const site = plannedAt(of, 0.2)?.site;
  if (site === undefined) return undefined;
  const failed = {
    kind: 'utilities' as const,
    status: 'fail' as const,
    note: 'A question of a bench.',
    bars: 'all' as const,
    clearedBy: 'Nobody: it is failed.',
  };
  return changedSite(of.file, site, ({ gates, ...rest }) => ({
    ...rest,
    gates: [...gates.filter((g) => g.kind !== failed.kind), failed],
  }));
}

function placedByHand(of: Current): CampusFile | undefined {
  const placement = plannedAt(of, 0.5);
  if (!placement) return undefined;
  const fixed = {
    site: placement.site,
    kind: 'fixed' as const,
    year: label(placement.year - 2),
    buildType: placement.buildType,
    reason: 'A question of a bench.',
  };
  return { ...of.file, handPlacements: [...of.file.handPlacements, fixed] };
}

function giftLost({ file }: Current): CampusFile | undefined {
  const sizeOf = (fund: CampusFile['funds'][number]) =>
    fund.inflows.reduce((sum, i) => sum + i.amountDollars, 0);
  const gifts = file.funds.filter((f) => f.kind === 'gift' && f.counted);
  const largest = gifts.sort((a, b) => sizeOf(b) - sizeOf(a))[0];
  return largest && { ...file, funds: file.funds.filter((f) => f !== largest) };
}

function worksMoved(of: Current): CampusFile | undefined {
  const placement = plannedAt(of, 0.35);
  const [works, ...others] = of.file.construction;
  if (!placement || !works) return undefined;
  const moved = {
    ...works,
    sites: [placement.site],
    from: label(placement.year),
    to: label(placement.year + 1),
    certaintyPercent: 95,
  };
  return { ...of.file, construction: [moved, ...others] };
}

function fewerVolunteers({ file }: Current): CampusFile {
  return {
    ...file,
    workDays: file.workDays.map((d) => ({ ...d, signUps: Math.round((d.signUps * 2) / 3) })),
  };
}

function promisedMore(of: Current): CampusFile | undefined {
  const placement = plannedAt(of, 0.8);
  const [first] = of.file.commitments.filter((c) => c.strength === 'intended');
  if (!placement || !first) return undefined;
  const promise = {
    ...first,
    id: 'one-more',
    name: 'One more promise',
    test: {
      kind: 'named-site' as const,
      site: placement.site,
      by: label(placement.year - 6),
      buildTypes: 'any' as const,
    },
  };
  return { ...of.file, commitments: [...of.file.commitments, promise] };
}

/** A planned site, so far down the order of building as a share, with no window, promise, group or works of its own. */
function plannedAt(of: Current, share: number): Placement | undefined {
  const planned = plannedFreely(of);
  return planned[Math.floor(share * planned.length)];
}

function plannedFreely({ file, decisions }: Current): Placement[] {
  const bound = new Set([
    ...file.commitments.flatMap(({ test }) => (test.kind === 'named-site' ? [test.site] : [])),
    ...file.exclusiveGroups.flatMap(({ sites }) => sites),
    ...file.precedence.flatMap(({ before, after }) => [before, after]),
    ...file.construction.flatMap(({ sites }) => sites),
    ...file.handPlacements.map(({ site }) => site),
    ...file.candidateSites
      .filter((s) => s.earliest ?? s.latest ?? s.gates.some((g) => g.status !== 'pass'))
      .map(({ id }) => id),
  ]);
  return decisions.placements
    .filter(({ site }) => !bound.has(site))
    .sort((a, b) => a.year - b.year || (a.site < b.site ? -1 : 1));
}

type SitePart = CampusFile['candidateSites'][number];

function changedSite(
  file: CampusFile,
  id: string,
  change: (site: SitePart) => SitePart,
): CampusFile {
  const candidateSites = file.candidateSites.map((s) => (s.id === id ? change(s) : s));
  return { ...file, candidateSites };
}

function yearOf(text: string): number {
  return Number(/\d{4}/.exec(text)?.[0]);
}

function label(year: number): string {
  return `FY${year}`;
}
