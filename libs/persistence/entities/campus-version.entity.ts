import { Column, Entity, PrimaryColumn } from 'typeorm';

/** One saved version of one campus. A trigger refuses every change. */
@Entity('campus_version')
export class CampusVersionEntity {
  @PrimaryColumn({ name: 'campus_id', type: 'uuid' })
  campusId!: string;

  @PrimaryColumn({ type: 'integer' })
  version!: number;

  @Column({ type: 'text' })
  name!: string;

  /** JSON as text: jsonb would reorder keys, and refuses an escaped NUL. */
  @Column({ type: 'text' })
  document!: string;

  @Column({ name: 'saved_at', type: 'timestamptz' })
  savedAt!: Date;
}
