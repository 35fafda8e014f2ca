import 'reflect-metadata';
import { DataSource } from 'typeorm';
import { CampusEntity } from './entities/campus.entity.js';
import { CampusVersionEntity } from './entities/campus-version.entity.js';
import { DecisionEntity } from './entities/decision.entity.js';
import { ExplanationEntity } from './entities/explanation.entity.js';
import { PlanEntity } from './entities/plan.entity.js';
import { SolveRequestEntity } from './entities/solve-request.entity.js';
import { FirstTables1700000000000 } from './migrations/1700000000000-first-tables.js';
import { StartsAndDecisions1700000000001 } from './migrations/1700000000001-starts-and-decisions.js';
import { Explanations1700000000002 } from './migrations/1700000000002-explanations.js';
import { PlansByBundle1700000000003 } from './migrations/1700000000003-plans-by-bundle.js';
import { ExplanationsOfCampuses1700000000004 } from './migrations/1700000000004-explanations-of-campuses.js';

/** Few on purpose: the embedded store works on one statement at a time anyway. */
const connectionsPerProcess = 4;

/** Describes the database at `url`; the caller initializes it. Tables come from migrations only. */
export function dataSourceFor(url: string): DataSource {
  return new DataSource({
    type: 'postgres',
    // Handed to the driver as it is, since it reads every form of address, sockets included.
    extra: { connectionString: url, max: connectionsPerProcess, connectionTimeoutMillis: 10_000 },
    entities: [
      CampusEntity,
      CampusVersionEntity,
      PlanEntity,
      SolveRequestEntity,
      DecisionEntity,
      ExplanationEntity,
    ],
    migrations: [
      FirstTables1700000000000,
      StartsAndDecisions1700000000001,
      Explanations1700000000002,
      PlansByBundle1700000000003,
      ExplanationsOfCampuses1700000000004,
    ],
    synchronize: false,
    installExtensions: false,
    migrationsTransactionMode: 'all',
    // A connection that ends while idle is replaced by the pool; the next statement tells.
    poolErrorHandler: () => undefined,
  });
}
