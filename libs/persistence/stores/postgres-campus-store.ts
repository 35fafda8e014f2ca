import { randomUUID } from 'node:crypto';
import type { EntityManager } from 'typeorm';
import type { JsonDocument } from '#planning/json-document.js';
import type {
  CampusStore,
  CampusSummary,
  ReplaceOutcome,
  StoredCampus,
} from '#planning/ports/campus-store.js';
import type { Database } from '../database.js';
import { CampusEntity } from '../entities/campus.entity.js';
import { CampusVersionEntity } from '../entities/campus-version.entity.js';
import { fromText, toText } from './json-text.js';

/** Campuses in PostgreSQL. The newest version's number stands in `campus`, every document beside it. */
export class PostgresCampusStore implements CampusStore {
  constructor(private readonly database: Database) {}

  add({ name, document }: { name: string; document: JsonDocument }): Promise<CampusSummary> {
    const first = { id: randomUUID(), name, version: 1, savedAt: new Date() };
    return this.database.change('repeatable', async (manager) => {
      await manager
        .createQueryBuilder()
        .insert()
        .into(CampusEntity)
        .values(first)
        .orIgnore()
        .execute();
      await insertVersion(manager, first, document);
      return first;
    });
  }

  replace(change: {
    id: string;
    expectedVersion: number;
    name: string;
    document: JsonDocument;
  }): Promise<ReplaceOutcome> {
    const { id, name, expectedVersion, document } = change;
    const next = { id, name, version: expectedVersion + 1, savedAt: new Date() };
    return this.database.change('once', async (manager) => {
      const saved = await manager.update(CampusEntity, { id, version: expectedVersion }, next);
      if (saved.affected !== 1) return refusal(manager, id);
      await insertVersion(manager, next, document);
      return { kind: 'saved', campus: next };
    });
  }

  list(): Promise<readonly CampusSummary[]> {
    return this.database.read(async (manager) => {
      const rows = await manager.find(CampusEntity, { order: { savedAt: 'DESC', id: 'ASC' } });
      return rows.map(({ id, name, version, savedAt }) => ({ id, name, version, savedAt }));
    });
  }

  load(id: string, version?: number): Promise<StoredCampus | null> {
    return this.database.read(async (manager) => {
      const row = await manager.findOne(CampusVersionEntity, {
        where: version === undefined ? { campusId: id } : { campusId: id, version },
        order: { version: 'DESC' },
      });
      return row && storedCampus(row);
    });
  }
}

async function insertVersion(
  manager: EntityManager,
  { id, ...version }: CampusSummary,
  document: JsonDocument,
): Promise<void> {
  await manager
    .createQueryBuilder()
    .insert()
    .into(CampusVersionEntity)
    .values({ ...version, campusId: id, document: toText(document) })
    .orIgnore()
    .execute();
}

async function refusal(manager: EntityManager, id: string): Promise<ReplaceOutcome> {
  const row = await manager.findOneBy(CampusEntity, { id });
  return row === null
    ? { kind: 'unknown-campus' }
    : { kind: 'version-conflict', current: row.version };
}

function storedCampus(row: CampusVersionEntity): StoredCampus {
  const { campusId, name, version, savedAt, document } = row;
  return { id: campusId, name, version, savedAt, document: fromText(document) };
}
