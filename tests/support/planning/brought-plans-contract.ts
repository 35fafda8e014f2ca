import { randomUUID } from 'node:crypto';
import { expect, test } from 'vitest';
import type { Stores } from './stores-contract.js';

/** What every adapter of the stores promises of plans that come in by a bundle. */
export function broughtPlansKeepTheirPromises(stores: () => Stores): void {
  test('a request carries a plan of a bundle to its worker, and the same plan is kept once', async () => {
    const { campuses, plans, queue, requests } = stores();
    const { id: campusId } = await campuses.add({ name: 'Tamarack Vale', document: { v: 1 } });
    const document = { text: 'NUL \u0000, é', sites: ['TVU-14'] };
    const stated = { seed: 7, limits: { seconds: null, work: 40, gap: null } };
    const from = { campusId, campusVersion: 1, ...stated };
    const plan = {
      ...{ ...from, id: randomUUID(), origin: 'bundle' as const, ending: 'work-limit' as const },
      ...{ solverVersion: 'test', plan: document, overview: { headline: 'TVU-14' } },
    };
    for (const _ of ['first', 'second']) {
      const asked = await queue.enqueue({ ...from, brought: { name: 'autumn', document } });
      expect(await requests.find(asked.id)).toMatchObject({ broughtPlan: 'autumn', ...stated });
      const taken = (await queue.take())!;
      expect(JSON.stringify(taken.brought)).toBe(JSON.stringify(document));
      expect(await queue.finish(taken.lease, { kind: 'brought-in', plan })).toBe(true);
      expect(await requests.find(asked.id)).toMatchObject({ state: 'done', planId: plan.id });
    }
    expect(await plans.listOf(campusId)).toMatchObject([
      { id: plan.id, origin: 'bundle', ...stated },
    ]);
  });
}
