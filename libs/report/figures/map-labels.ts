import type { Shape } from '../document/drawing.js';
import { crosses, grown, middle, overlap, within, type Segment } from './box-geometry.js';
import { LABEL_SIZE, spotsFor, weightOf, type LabelWish, type Spot } from './label-spots.js';
import type { Area } from './shapes.js';
import { label, line, THIN } from './shapes.js';

/** Times that every label is tried again on its better spots, once all others stand. */
const SWEEPS = 3;

/** What hiding or crossing something costs, in points of distance. */
const COST = { covers: 60, close: 4, leaderOverDrawn: 25, leaderOverLabel: 60 };

/** A label nearer than this to something else, in points, might seem to name that. */
const CLOSE = 3;

/**
 * Places labels so that no two overlap: within what they name, at its edge, or apart with a leader,
 * whichever hides and crosses least. Earlier ones choose first. A label for which no spot within the
 * bounds is free is named in `omitted`.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  bounds: Area,
): { readonly shapes: readonly Shape[]; readonly omitted: readonly string[] } {
  const drawn = wishes.flatMap(({ ground, around }) => (ground === 'covered' ? [around] : []));
  const spots = wishes.map((wish) => spotsFor(wish).filter(({ box }) => within(box, bounds)));
  const chosen: (Spot | undefined)[] = wishes.map(() => undefined);
  for (let sweep = 0; sweep <= SWEEPS; sweep += 1) {
    wishes.forEach(({ around }, index) => {
      const others = chosen.flatMap((spot, n) => (spot && n !== index ? [spot] : []));
      chosen[index] = bestSpot(spots[index] ?? [], { around, drawn, others });
    });
  }
  return {
    shapes: [...leaders(chosen), ...wishes.flatMap((wish, n) => words(wish, chosen[n]))],
    omitted: wishes.filter((_, index) => chosen[index] === undefined).map(({ text }) => text),
  };
}

interface Surroundings {
  /** What the label names. */
  readonly around: Area;
  readonly drawn: readonly Area[];
  readonly others: readonly Spot[];
}

/** The spot of least cost; spots come by rising cost, so that dearer ones need not be looked at. */
function bestSpot(spots: readonly Spot[], near: Surroundings): Spot | undefined {
  let best: Spot | undefined;
  let least = Infinity;
  for (const spot of spots) {
    if (spot.cost >= least) break;
    if (near.others.some(({ box }) => overlap(spot.box, box))) continue;
    const cost = spot.cost + hindrance(spot, near);
    if (cost < least) [best, least] = [spot, cost];
  }
  return best;
}

function hindrance({ box, leader }: Spot, { around, drawn, others }: Surroundings): number {
  const foreign = drawn.filter((area) => area !== around);
  const covered = foreign.filter((area) => overlap(box, area)).length;
  const close = foreign.filter((area) => overlap(grown(box, CLOSE), area)).length;
  const crossed = others.filter((one) => one.leader && crosses(one.leader, box)).length;
  return (
    COST.covers * covered +
    COST.close * close +
    COST.leaderOverLabel * crossed +
    (leader ? leaderHindrance(leader, foreign, others) : 0)
  );
}

function leaderHindrance(leader: Segment, drawn: readonly Area[], others: readonly Spot[]): number {
  const overDrawn = drawn.filter((area) => crosses(leader, area)).length;
  const overLabels = others.filter(({ box }) => crosses(leader, box)).length;
  return COST.leaderOverDrawn * overDrawn + COST.leaderOverLabel * overLabels;
}

function leaders(chosen: readonly (Spot | undefined)[]): Shape[] {
  return chosen.flatMap((spot) =>
    spot?.leader ? [line(spot.leader.from, spot.leader.to, THIN)] : [],
  );
}

function words(wish: LabelWish, spot: Spot | undefined): Shape[] {
  if (!spot) return [];
  const { x, y } = middle(spot.box);
  const look = { size: LABEL_SIZE, weight: weightOf(wish), anchor: 'middle' } as const;
  return [label({ x, y: y + 2.6 }, wish.text, { ...look, ground: 'paper' })];
}
