import type { Bench, Contender, Timing } from './bench.js';

/** How long each contender is measured: at least so many rounds, and at least so much time. */
export interface Effort {
  readonly rounds: number;
  readonly milliseconds: number;
  /** Reads milliseconds from a clock; left out: the machine's. */
  readonly clock?: () => number;
}

/** Long enough for medians that repeat within a few percent on a quiet machine. */
export const FULL: Effort = { rounds: 15, milliseconds: 600 };

/** One run each: shows that a bench still works, measures nothing. */
export const SMOKE: Effort = { rounds: 1, milliseconds: 0 };

/**
 * Median time of each contender at one size. Contenders take turns, so that a busy moment of the
 * machine falls on all of them; with full effort one round before is thrown away.
 */
export async function measure(bench: Bench, size: number, effort: Effort): Promise<Timing[]> {
  const contenders = bench.contenders(size);
  const { clock = () => performance.now() } = effort;
  const times = contenders.map((): number[] => []);
  if (effort.rounds > 1) for (const contender of contenders) await timeOf(contender, clock);
  const end = clock() + effort.milliseconds * contenders.length;
  for (let round = 0; round < effort.rounds || clock() < end; round += 1) {
    for (const [index, contender] of contenders.entries()) {
      times[index]?.push(await timeOf(contender, clock));
    }
  }
  const medians = times.map(median);
  return contenders.map(({ name }, index) => ({
    contender: name,
    medianMs: medians[index] ?? Number.NaN,
    ratio: (medians[index] ?? Number.NaN) / (medians[0] ?? Number.NaN),
  }));
}

async function timeOf({ run }: Contender, clock: () => number): Promise<number> {
  const start = clock();
  await run();
  return clock() - start;
}

/** The middle value; of an even number of them the mean of the middle two. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2;
}
