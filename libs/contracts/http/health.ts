import { z } from 'zod';

export const healthReply = z.strictObject({ status: z.literal('ok') }).meta({ id: 'Health' });
