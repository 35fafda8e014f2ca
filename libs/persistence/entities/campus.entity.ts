import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A campus; its documents are in `campus_version`. */
@Entity('campus')
export class CampusEntity {
  @PrimaryColumn({ type: 'uuid' })
  id!: string;

  @Column({ type: 'text' })
  name!: string;

  /** Newest version, 1 or more. Saving is a conditional update of this column. */
  @Column({ type: 'integer' })
  version!: number;

  @Column({ name: 'saved_at', type: 'timestamptz' })
  savedAt!: Date;
}
