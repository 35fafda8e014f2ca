import { randomUUID } from 'node:crypto';
import { expect, test } from 'vitest';
import type { Stores } from './stores-contract.js';

const limits = { seconds: 5, work: null, gap: null };

/** What stores promise of decisions, and of a solve that begins from an earlier plan. */
export function decisionsKeepTheirPromises(stores: () => Stores): void {
  test('a decision and a later solve both name the plan that they rest on', async () => {
    const { campuses, queue, requests, decisions } = stores();
    const { id: campusId } = await campuses.add({ name: 'Tamarack Vale', document: { v: 1 } });
    const wish = { campusId, campusVersion: 1, seed: 7, limits };
    const first = await queue.enqueue(wish);
    expect(first.startFromPlan).toBeNull();
    const plan = {
      ...{
        ...wish,
        id: randomUUID(),
        solverVersion: 'test',
        ending: 'proven' as const,
        origin: 'solved' as const,
      },
      ...{ plan: {}, overview: {} },
    };
    const { lease } = (await queue.take())!;
    await queue.finish(lease, { kind: 'solved', ending: 'proven', plan });

    const decision = {
      ...{ id: randomUUID(), campusId, planId: plan.id, site: 'TVU-19', year: 'FY28' },
      ...{ verdict: 'put off' as const, decidedBy: 'Committee', reason: 'Tests first.' },
      dissent: '',
    };
    const recorded = await decisions.record(decision);
    expect(recorded.decidedAt).toBeInstanceOf(Date);
    expect(await decisions.listOf(campusId)).toEqual([recorded]);
    expect(await decisions.listOf(randomUUID())).toEqual([]);

    const second = await queue.enqueue({ ...wish, startFromPlan: plan.id });
    expect(await requests.find(second.id)).toMatchObject({ startFromPlan: plan.id });
    await queue.cancel(second.id);
  });
}
