import { randomBelow, type Random } from '#units/random.js';
import { clearHires } from '../search/clear-hires.js';
import { roomFor, type Hired } from '../search/hire-for-gaps.js';
import { openHires } from '../search/open-hires.js';
import { applyHire, type SearchState } from '../search/state.js';

/**
 * What becomes of the people of a plan before it is built up again: they stay, only those who are needed are
 * hired anew, or one is hired, let go or moved.
 */
export const PEOPLE_WAYS = ['kept', 'anew', 'changed'] as const;
export type PeopleWay = (typeof PEOPLE_WAYS)[number];

/** Years by which a start is moved at the most. */
const MOST_YEARS = 3;

/**
 * Settles with whom a plan is built up again. People of whom a plan makes no use are worth trying, since
 * sites come to be built for them: whoever is hired only where hours lack is hired for one season at a time.
 */
export function changePeople(state: SearchState, random: Random, way: PeopleWay): void {
  if (way === 'kept') return;
  if (way === 'anew') return clearHires(state);
  const hired = anyHired(state, random);
  const change = randomBelow(random, 3);
  if (!hired || change === 0) return hireAny(state, random);
  applyHire(state, { ...hired, count: -1 });
  if (change === 1) return;
  const years = (1 + randomBelow(random, MOST_YEARS)) * (random() < 0.5 ? -1 : 1);
  hire(state, { ...hired, startYear: hired.startYear + years });
}

function hireAny(state: SearchState, random: Random): void {
  const { positions, ground } = state.tables;
  const startYear = randomBelow(random, ground.campus.calendar.horizonYears);
  if (positions.length > 0)
    hire(state, { position: randomBelow(random, positions.length), startYear });
}

/** Hires one position in the year nearest to the one asked for in which it may start. */
function hire(state: SearchState, { position, startYear }: Hired): void {
  const first = state.tables.positions[position]?.firstStart ?? Infinity;
  const last = state.tables.ground.campus.calendar.horizonYears - 1;
  if (first > last) return;
  const nearest = Math.min(last, Math.max(first, startYear));
  if (roomFor(state, position, nearest))
    applyHire(state, { position, startYear: nearest, count: 1 });
}

function anyHired(state: SearchState, random: Random): Hired | undefined {
  const hired = openHires(state);
  return hired[randomBelow(random, Math.max(1, hired.length))];
}
