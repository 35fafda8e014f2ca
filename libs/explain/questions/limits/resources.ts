import type { Campus } from '#domain/campus.js';
import { withAmpleCompost, withAmpleLabor, withAmpleMoney } from '#optimizer/solve/relaxations.js';
import { centiHours } from '#units/centihours.js';

/** A resource, and the campus in which it alone is limited, beside the sites there are. */
export interface Resource {
  readonly id: string;
  /** As it stands in a sentence: `summer hours`. */
  readonly name: string;
  readonly alone: Campus;
}

const CARE_ONLY = ['care-food', 'care-other', 'harvest'] as const;

/** Every resource in turn. No position is hired, so that hours are those of the people there are. */
export function resourcesOf(campus: Campus): Resource[] {
  const still = { ...campus, positions: [] };
  const paid = withAmpleCompost(withAmpleMoney(still));
  const seasons = campus.calendar.seasons.map(({ id }) => ({
    id: `${id}-hours`,
    name: `${id} hours`,
    alone: ampleLabor(paid, (season) => season !== id),
  }));
  return [
    ...seasons,
    {
      id: 'build-hours',
      name: 'hours of volunteers and their leaders for preparing and planting',
      alone: ampleCare(paid),
    },
    { id: 'money', name: 'money', alone: withAmpleCompost(withAmpleLabor(still)) },
    { id: 'compost', name: 'compost made on campus', alone: onlyMadeCompost(still) },
  ];
}

/** Everything ample but the candidates. */
export function onlySitesLimited(campus: Campus): Campus {
  return withAmpleCompost(withAmpleMoney(withAmpleLabor({ ...campus, positions: [] })));
}

function ampleLabor(campus: Campus, has: (season: string) => boolean): Campus {
  const ample = withAmpleLabor(campus);
  const pools = ample.pools.map((pool) =>
    pool.id === 'ample-labor'
      ? {
          ...pool,
          hours: Object.fromEntries(
            Object.entries(pool.hours).map(([season, hours]) => [
              season,
              has(season) ? hours : centiHours(0),
            ]),
          ),
        }
      : pool,
  );
  return { ...ample, pools };
}

function ampleCare(campus: Campus): Campus {
  return withAmpleLabor(campus, { tasks: CARE_ONLY });
}

/** None bought; the yard stays as it is. */
function onlyMadeCompost(campus: Campus): Campus {
  const ample = withAmpleMoney(withAmpleLabor(campus));
  const { other, ...compost } = ample.compost;
  const none = { mostBoughtPerSeason: 0 };
  return {
    ...ample,
    compost: { ...compost, ...none, ...(other ? { other: { ...other, ...none } } : {}) },
  };
}
