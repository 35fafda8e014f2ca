import { campusFileSchema } from '#contracts/campus-file.schema.js';

/**
 * The body of a campus: documented by the campus file's own schema, but judged by the campus reader,
 * which reports every problem with its record, value and remedy instead of the bare schema's.
 */
export const campusBody = {
  '~standard': {
    ...campusFileSchema.meta({ id: 'CampusFile' })['~standard'],
    validate: (value: unknown) => ({ value }),
  },
} as const;
