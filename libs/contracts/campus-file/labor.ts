import { z } from 'zod';
import { bySeason, dollars, fiscalYearText, hours, id, provenance, share, text } from './values.js';

export const taskClass = z.enum([
  'prepare',
  'plant',
  'care-food',
  'care-other',
  'harvest',
  'supervise',
]);

const tasks = z.array(taskClass).min(1).max(6);

/** People with the effective hours that they have in each season, before supervision. */
export const poolSchema = z.strictObject({
  id,
  name: text,
  kind: z.enum(['staff', 'student', 'intern', 'course', 'loan', 'contractor']),
  tasks,
  hours: bySeason(hours),
  from: fiscalYearText.optional().describe('First fiscal year in which the pool is there.'),
  to: fiscalYearText.optional().describe('Last fiscal year in which the pool is there.'),
  provenance,
});

/** A kind of volunteer event. */
export const workDaySchema = z.strictObject({
  id,
  name: text,
  season: id,
  events: z.int().min(0).max(200).describe('Most that may be held in the season of one year.'),
  signUps: z.number().min(0).max(5000).describe('Sign-ups for one event.'),
  showRate: share.describe('Share of the sign-ups who come.'),
  hoursLong: z.number().min(0).max(12),
  effectiveness: share.describe('Share of an hour present that counts as an hour of work.'),
  peoplePerLeader: z.number().min(1).max(200),
  tasks,
  provenance,
});

/** A kind of position that the plan may propose, in whole steps. */
export const positionSchema = z.strictObject({
  id,
  name: text,
  term: z.enum(['recurring', 'one-season']),
  tasks,
  startSeason: id,
  leadMonths: z.int().min(0).max(60).describe('Months from the ask to the first day.'),
  hours: bySeason(hours).describe('Hours in a full year of service, by season.'),
  firstYearHours: bySeason(hours).describe('Hours in the fiscal year of the start, by season.'),
  annualDollars: dollars.describe('Loaded cost of a full year in the price year.'),
  firstYearDollars: dollars.describe('Loaded cost of the fiscal year of the start.'),
  oneTimeDollars: dollars.describe('Equipment bought once at the start.'),
  most: z.int().min(0).max(100).describe('Most that may be held at one time.'),
  provenance,
});
