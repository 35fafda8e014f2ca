import type { SolveRequestStore } from '#planning/ports/solve-request-store.js';
import type { SolveRequest } from '#planning/solve-request.js';
import type { Database } from '../database.js';
import { SolveRequestEntity } from '../entities/solve-request.entity.js';
import { solveRequestOf } from './solve-request-rows.js';

/** Solve requests in PostgreSQL, for reading; `PostgresSolveQueue` changes them. */
export class PostgresSolveRequestStore implements SolveRequestStore {
  constructor(private readonly database: Database) {}

  find(id: string): Promise<SolveRequest | null> {
    return this.database.read(async (manager) => {
      const row = await manager.findOneBy(SolveRequestEntity, { id });
      return row && solveRequestOf(row);
    });
  }

  listOf(campusId: string): Promise<readonly SolveRequest[]> {
    return this.database.read(async (manager) => {
      const rows = await manager.find(SolveRequestEntity, {
        where: { campusId },
        order: { requestedAt: 'DESC', id: 'ASC' },
      });
      return rows.map(solveRequestOf);
    });
  }
}
