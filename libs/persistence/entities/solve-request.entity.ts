import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { ConflictMember } from '#domain/tier.js';
import type { SolveProgress } from '#planning/solve-request.js';

/** A request for a solve, its progress and its lease. */
@Entity('solve_request')
export class SolveRequestEntity {
  @PrimaryColumn({ type: 'uuid' })
  id!: string;

  @Column({ name: 'campus_id', type: 'uuid' })
  campusId!: string;

  @Column({ name: 'campus_version', type: 'integer' })
  campusVersion!: number;

  @Column({ type: 'integer' })
  seed!: number;

  /** Null only for a plan that came in by a bundle and states none. */
  @Column({ name: 'limit_seconds', type: 'double precision', nullable: true })
  limitSeconds!: number | null;

  @Column({ name: 'limit_work', type: 'double precision', nullable: true })
  limitWork!: number | null;

  @Column({ name: 'limit_gap', type: 'double precision', nullable: true })
  limitGap!: number | null;

  @Column({ name: 'start_from_plan', type: 'uuid', nullable: true })
  startFromPlan!: string | null;

  @Column({ name: 'brought_name', type: 'text', nullable: true })
  broughtName!: string | null;

  /** A plan file as JSON text; read only by who takes the request, since it is long. */
  @Column({ name: 'brought_plan', type: 'text', nullable: true, select: false })
  broughtPlan!: string | null;

  @Column({ type: 'text' })
  state!: string;

  /** The queue's job that stands for this request. */
  @Column({ name: 'job_id', type: 'uuid' })
  jobId!: string;

  @Column({ type: 'integer' })
  attempts!: number;

  @Column({ name: 'cancel_wanted', type: 'boolean' })
  cancelWanted!: boolean;

  /** Set while `solving`, null in every other state (a constraint says so). */
  @Column({ name: 'lease_holder', type: 'uuid', nullable: true })
  leaseHolder!: string | null;

  @Column({ name: 'lease_renewed_at', type: 'timestamptz', nullable: true })
  leaseRenewedAt!: Date | null;

  /** json, not jsonb, here and below: jsonb refuses an escaped NUL. */
  @Column({ type: 'json', nullable: true })
  progress!: SolveProgress | null;

  @Column({ name: 'plan_id', type: 'uuid', nullable: true })
  planId!: string | null;

  @Column({ type: 'text', nullable: true })
  ending!: string | null;

  @Column({ type: 'json' })
  conflict!: ConflictMember[];

  /** A problem as JSON text. */
  @Column({ type: 'text', nullable: true })
  problem!: string | null;

  @Column({ name: 'requested_at', type: 'timestamptz' })
  requestedAt!: Date;

  @Column({ name: 'started_at', type: 'timestamptz', nullable: true })
  startedAt!: Date | null;

  @Column({ name: 'finished_at', type: 'timestamptz', nullable: true })
  finishedAt!: Date | null;
}
