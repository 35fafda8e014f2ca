import { z } from 'zod';

/**
 * Longitude, then latitude, in degrees (RFC 7946, WGS 84). The bounds are left open here so that
 * swapped or projected coordinates are named as what they are by the boundary checks.
 */
export const positionSchema = z.tuple([z.number(), z.number()]);

/** RFC 7946 polygon: the outer ring first, then holes; the last position repeats the first. */
export const polygonSchema = z.strictObject({
  type: z.literal('Polygon'),
  coordinates: z.array(z.array(positionSchema).min(1).max(5000)).min(1).max(50),
});
