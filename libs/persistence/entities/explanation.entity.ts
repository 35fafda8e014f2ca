import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A question about a plan or a campus version, the lease of its worker, and its answer. */
@Entity('explanation')
export class ExplanationEntity {
  @PrimaryColumn({ type: 'uuid' })
  id!: string;

  /** Null for a question about a campus version, which is null for one about a plan (a constraint says so). */
  @Column({ name: 'plan_id', type: 'uuid', nullable: true })
  planId!: string | null;

  @Column({ name: 'campus_id', type: 'uuid', nullable: true })
  campusId!: string | null;

  @Column({ name: 'campus_version', type: 'integer', nullable: true })
  campusVersion!: number | null;

  @Column({ type: 'json' })
  question!: object;

  @Column({ type: 'double precision' })
  seconds!: number;

  @Column({ type: 'text' })
  state!: string;

  @Column({ type: 'integer' })
  attempts!: number;

  /** Set while `working`, null in every other state (a constraint says so). */
  @Column({ name: 'lease_holder', type: 'uuid', nullable: true })
  leaseHolder!: string | null;

  @Column({ name: 'lease_renewed_at', type: 'timestamptz', nullable: true })
  leaseRenewedAt!: Date | null;

  @Column({ type: 'json', nullable: true })
  progress!: object | null;

  @Column({ type: 'json', nullable: true })
  answer!: object | null;

  /** A problem as JSON text. */
  @Column({ type: 'text', nullable: true })
  problem!: string | null;

  @Column({ name: 'asked_at', type: 'timestamptz' })
  askedAt!: Date;

  @Column({ name: 'finished_at', type: 'timestamptz', nullable: true })
  finishedAt!: Date | null;
}
