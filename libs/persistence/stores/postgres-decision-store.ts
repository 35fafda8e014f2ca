import type { Decision, DecisionStore, NewDecision } from '#planning/ports/decision-store.js';
import type { Database } from '../database.js';
import { DecisionEntity } from '../entities/decision.entity.js';

/** Decisions in PostgreSQL. */
export class PostgresDecisionStore implements DecisionStore {
  constructor(private readonly database: Database) {}

  record(decision: NewDecision): Promise<Decision> {
    const row = { ...decision, decidedAt: new Date() };
    return this.database.change('repeatable', async (manager) => {
      await manager
        .createQueryBuilder()
        .insert()
        .into(DecisionEntity)
        .values(row)
        .orIgnore()
        .execute();
      return row;
    });
  }

  listOf(campusId: string): Promise<readonly Decision[]> {
    return this.database.read(async (manager) => {
      const rows = await manager.find(DecisionEntity, {
        where: { campusId },
        order: { decidedAt: 'DESC', id: 'ASC' },
      });
      // A constraint holds the verdict to these.
      return rows.map((row) => ({ ...row, verdict: row.verdict as Decision['verdict'] }));
    });
  }
}
