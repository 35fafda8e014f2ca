import type { DataSource, EntityManager } from 'typeorm';
import { retrying, type Repeating } from './retrying.js';

/** What the stores need of the database: short acts that wait out a restart of the store. */
export class Database {
  constructor(readonly source: DataSource) {}

  /** Reads outside a transaction. */
  read<T>(act: (manager: EntityManager) => Promise<T>): Promise<T> {
    return retrying('repeatable', () => act(this.source.manager));
  }

  /** All or nothing. Keep it short: on the embedded store an open transaction holds up everyone. */
  change<T>(repeating: Repeating, act: (manager: EntityManager) => Promise<T>): Promise<T> {
    return retrying(repeating, () => this.source.transaction(act));
  }
}
