/** Threads are started ahead of a solve and kept after it; what was solved before leaves no trace in an answer. */
import { readFile } from 'node:fs/promises';
import { setTimeout } from 'node:timers/promises';
import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { prepareThreads, readyThreads } from '#solving/ready-threads.js';
import { solveInThread } from '#solving/solve-in-thread.js';
import { MOST_THREADS } from '#solving/thread-limits.js';
import { generatedFile } from '../bench/programs/generated-program.js';

function campusIn(text: string): Campus {
  const load = loadCampusFile(text);
  if (!load.ok) throw new Error('a campus of this test cannot be loaded');
  return load.campus;
}

let campus: Campus;
let other: Campus;
beforeAll(async () => {
  campus = campusIn(await readFile('seeds/mistakes/base.json', 'utf8'));
  const generated = generatedFile({ sites: 5, years: 6, kind: 'tight', seed: 1 });
  other = campusIn(JSON.stringify(generated));
});

/** Threads have whole numbers in the order in which they were started. */
async function endThreads(count: number): Promise<number[]> {
  const threads = Array.from({ length: count }, readyThreads.take);
  const numbers = threads.map((t) => t.threadId);
  await Promise.all(threads.map((t) => t.terminate()));
  return numbers;
}

/** Milliseconds in which a thread that gave its answer surely says that it may be given another order. */
const A_MOMENT = 1000;

let last: number;
beforeEach(async () => {
  await setTimeout(A_MOMENT);
  // One more than are ever kept: those that other tests left are older than the last one that was started.
  last = Math.max(...(await endThreads(MOST_THREADS + 1)));
});

const repeatable = { work: 20, seed: 3, threads: 1 } as const;

describe('threads of solves', () => {
  test('threads that are started ahead serve one solve after another', async () => {
    prepareThreads();
    for (let solve = 0; solve < 3; solve++) {
      await solveInThread(campus, repeatable);
      await setTimeout(A_MOMENT);
    }
    const numbers = await endThreads(3);
    // Two were started ahead, none for a solve, and one now that there is no other left.
    expect(numbers.map((n) => n - last).sort()).toEqual([1, 2, 3]);
  });

  test('the same work and seed give the same bytes on a thread that solved another campus before', async () => {
    const fresh = await solveInThread(campus, repeatable);
    await endThreads(MOST_THREADS);
    await solveInThread(other, repeatable);
    await setTimeout(A_MOMENT);
    const again = await solveInThread(campus, repeatable);
    expect(JSON.stringify([again.plan, again.report])).toBe(
      JSON.stringify([fresh.plan, fresh.report]),
    );
  });

  test('a thread that is given back and does not come to an end makes room for another', async () => {
    const thread = readyThreads.take();
    const ended = new Promise((resolve) => thread.once('exit', resolve));
    readyThreads.giveBack(thread);
    await ended;
    expect(await endThreads(1)).toEqual([last + 2]);
  });
});
