import { counted } from '#units/in-words.js';
import type { Asked, Made } from '../common/asked.js';
import { SEEDS, type Contested } from './stages.js';

/** How the choices were compared, and what their seeds share. */
export function madeOf(
  { seed }: Asked,
  { contestants, isProven }: Contested,
  skipped: readonly string[],
): Made {
  if (isProven)
    return { rounds: null, seeds: [seed], skipped, sentence: 'Each was solved until proven.' };
  const planned = contestants.filter((c) => c.plan);
  const rounds = Math.max(0, ...planned.map((c) => c.rounds));
  const least = Math.min(...planned.map((c) => c.rounds), rounds);
  const most = Math.max(1, ...planned.map((c) => c.stages.at(-1)?.length ?? 0));
  const seeds = Array.from({ length: most }, (_, i) => seed + i);
  const first = begunInWords(least, rounds);
  const then =
    most > 1
      ? `; those that stayed near the best went on with ${SEEDS} seeds, up to ${counted(rounds, 'round')} each, and were compared seed by seed. The seeds share the plan they begin with and the prices that lead them, and only their chance moves differ: they show how far the search can be trusted, and are not ${SEEDS} independent judgments.`
      : '.';
  return {
    rounds,
    leastRounds: least,
    seeds,
    skipped,
    sentence: `${first}${then} What is found is not proven.`,
  };
}

/** `Each choice was put into the same plan and searched on with at least 12 rounds`. */
function begunInWords(least: number, most: number): string {
  const put = 'Each choice was put into the same plan';
  if (most === 0) return `${put}, and no re-planning was finished in the time`;
  if (least === 0) {
    return `${put}; for some of them no re-planning was finished in the time, others got up to ${counted(most, 'round')} of search`;
  }
  return `${put} and searched on with ${least === most ? '' : 'at least '}${counted(least, 'round')}`;
}
