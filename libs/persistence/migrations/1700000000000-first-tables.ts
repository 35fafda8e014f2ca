import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Campuses with every version, plans, and solve requests. Plain SQL that PostgreSQL 15 understands. */
export class FirstTables1700000000000 implements MigrationInterface {
  readonly name = 'FirstTables1700000000000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of [campus, campusVersion, plan, solveRequest, ...indexes, ...frozen]) {
      await runner.query(statement);
    }
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('DROP TABLE solve_request, plan, campus_version, campus');
    await runner.query('DROP FUNCTION refuse_change');
  }
}

const campus = `
  CREATE TABLE campus (
    id uuid PRIMARY KEY,
    name text NOT NULL,
    version integer NOT NULL CHECK (version >= 1),
    saved_at timestamptz NOT NULL
  )`;

const campusVersion = `
  CREATE TABLE campus_version (
    campus_id uuid NOT NULL REFERENCES campus,
    version integer NOT NULL CHECK (version >= 1),
    name text NOT NULL,
    document text NOT NULL,
    saved_at timestamptz NOT NULL,
    PRIMARY KEY (campus_id, version)
  )`;

const solvedFrom = `
    id uuid PRIMARY KEY,
    campus_id uuid NOT NULL,
    campus_version integer NOT NULL,
    seed integer NOT NULL,
    limit_seconds double precision NOT NULL CHECK (limit_seconds > 0),
    limit_work double precision,
    limit_gap double precision,
    FOREIGN KEY (campus_id, campus_version) REFERENCES campus_version`;

const plan = `
  CREATE TABLE plan (
    ${solvedFrom},
    solver_version text NOT NULL,
    ending text NOT NULL,
    document text NOT NULL,
    overview text NOT NULL,
    solved_at timestamptz NOT NULL
  )`;

const solveRequest = `
  CREATE TABLE solve_request (
    ${solvedFrom},
    state text NOT NULL CHECK (state IN ('queued', 'solving', 'done', 'failed', 'cancelled')),
    job_id uuid NOT NULL,
    attempts integer NOT NULL CHECK (attempts >= 0),
    cancel_wanted boolean NOT NULL,
    lease_holder uuid,
    lease_renewed_at timestamptz,
    progress json,
    plan_id uuid REFERENCES plan,
    ending text,
    conflict json NOT NULL,
    problem text,
    requested_at timestamptz NOT NULL,
    started_at timestamptz,
    finished_at timestamptz,
    CHECK ((state = 'solving') = (lease_holder IS NOT NULL)),
    CHECK ((lease_holder IS NULL) = (lease_renewed_at IS NULL)),
    CHECK ((state IN ('done', 'failed', 'cancelled')) = (finished_at IS NOT NULL)),
    CHECK ((state = 'failed') = (problem IS NOT NULL))
  )`;

const indexes = [
  'CREATE INDEX plan_of_campus ON plan (campus_id, solved_at)',
  'CREATE INDEX solve_request_of_campus ON solve_request (campus_id, requested_at)',
  `CREATE INDEX solve_request_open ON solve_request (state, requested_at)
     WHERE state IN ('queued', 'solving')`,
];

/** A solved plan and a saved version are records: no code path may change them, not even by mistake. */
const frozen = [
  `CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
     BEGIN RAISE EXCEPTION 'rows of % are never changed or deleted', TG_TABLE_NAME; END $$`,
  `CREATE TRIGGER plan_is_frozen BEFORE UPDATE OR DELETE ON plan
     FOR EACH ROW EXECUTE FUNCTION refuse_change()`,
  `CREATE TRIGGER campus_version_is_frozen BEFORE UPDATE OR DELETE ON campus_version
     FOR EACH ROW EXECUTE FUNCTION refuse_change()`,
];
