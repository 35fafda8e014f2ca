import type { PlanStore, PlanSummary, StoredPlan } from '#planning/ports/plan-store.js';
import type { Database } from '../database.js';
import { PlanEntity } from '../entities/plan.entity.js';
import { planSummary, storedPlan } from './plan-rows.js';

const summaryColumns = {
  id: true,
  campusId: true,
  campusVersion: true,
  seed: true,
  limitSeconds: true,
  limitWork: true,
  limitGap: true,
  solverVersion: true,
  ending: true,
  origin: true,
  solvedAt: true,
} as const;

/** Plans in PostgreSQL, for reading; `PostgresSolveQueue.finish` writes them. */
export class PostgresPlanStore implements PlanStore {
  constructor(private readonly database: Database) {}

  load(id: string): Promise<StoredPlan | null> {
    return this.database.read(async (manager) => {
      const row = await manager.findOneBy(PlanEntity, { id });
      return row && storedPlan(row);
    });
  }

  listOf(campusId: string, campusVersion?: number): Promise<readonly PlanSummary[]> {
    return this.database.read(async (manager) => {
      const rows = await manager.find(PlanEntity, {
        select: summaryColumns,
        where: campusVersion === undefined ? { campusId } : { campusId, campusVersion },
        order: { solvedAt: 'DESC', id: 'ASC' },
      });
      return rows.map(planSummary);
    });
  }
}
