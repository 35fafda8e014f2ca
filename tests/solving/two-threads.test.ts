/** One thread searches while the other proves: they tell each other plans and bounds. */
import { readFile } from 'node:fs/promises';
import { Worker } from 'node:worker_threads';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { checkPlan } from '#rules/check-plan.js';
import { readyThreads } from '#solving/ready-threads.js';
import { solveInThread, type SolveProgress } from '#solving/solve-in-thread.js';

let campus: Campus;
beforeAll(async () => {
  const load = loadCampusFile(await readFile('seeds/mistakes/base.json', 'utf8'));
  if (!load.ok) throw new Error('the campus of this test cannot be loaded');
  campus = load.campus;
});

const upToBenefit = (tiers: readonly { readonly name: string; readonly value: number }[]) =>
  tiers.slice(0, tiers.findIndex((t) => t.name === 'benefit') + 1).map((t) => t.value);

describe('a solve in two threads', () => {
  test('proves the same values as one thread alone, by a plan that passes every check', async () => {
    const settings = { seconds: 50, seed: 1 };
    const alone = await solveInThread(campus, { ...settings, threads: 1 });
    const both = await solveInThread(campus, { ...settings, threads: 2 });
    expect([alone.report.ending, both.report.ending]).toEqual(['proven', 'proven']);
    expect(upToBenefit(both.report.tiers)).toEqual(upToBenefit(alone.report.tiers));
    expect(both.plan && checkPlan(campus, both.plan)).toEqual([]);
  });

  test('tells bounds that only the proving thread has found', async () => {
    const told: SolveProgress[] = [];
    await solveInThread(
      campus,
      { seconds: 60, seed: 1, threads: 2 },
      { onProgress: (progress) => told.push(progress) },
    );
    expect(told.some((p) => p.tier === 'benefit' && p.bound !== null)).toBe(true);
  });

  test('finds a plan and warns when the proof fails', async () => {
    const failing = () => new Worker('throw new Error("out of memory")', { eval: true });
    const taken = [readyThreads.take, failing];
    const warn = vi.spyOn(process, 'emitWarning').mockReturnValue();
    const threads = { ...readyThreads, take: () => taken.shift()!() };
    const settings = { seconds: 3, seed: 1, threads: 2 } as const;
    const { report, plan } = await solveInThread(campus, settings, { threads });
    expect(['time-limit', 'proven']).toContain(report.ending);
    expect(plan && checkPlan(campus, plan)).toEqual([]);
    expect(warn.mock.calls.map(String)).toEqual([expect.stringContaining('out of memory')]);
  });

  test('keeps the best plan when it is stopped', async () => {
    const cancel = new AbortController();
    const { report, plan } = await solveInThread(
      campus,
      { seconds: 60, seed: 1, threads: 2 },
      { signal: cancel.signal, onPlan: () => cancel.abort() },
    );
    expect(['cancelled', 'proven']).toContain(report.ending);
    expect(plan && checkPlan(campus, plan)).toEqual([]);
  });
});
