import { z } from 'zod';
import { anyOrIds, dollars, fiscalYearText, id, percent, text } from './values.js';

export const costLine = z.enum(['build', 'care', 'positions', 'compost', 'standing']);
export const escalationKind = z.enum(['construction', 'wages', 'supplies']);

const carryYears = z
  .union([z.int().min(0).max(60), z.literal('unlimited')])
  .describe('Fiscal years after its own in which an inflow may still be spent; 0: it lapses.');

/** The same inflow over and over, grown from its first year. */
export const yearlyInflowSchema = z.strictObject({
  from: fiscalYearText,
  to: fiscalYearText.optional().describe('Left out: to the end of the plan and its tail.'),
  everyYears: z.int().min(1).max(50).optional().describe('Left out: every year.'),
  amountDollars: dollars,
  growthPercent: z.number().min(-20).max(20).optional().describe('Per fiscal year. Left out: 0.'),
});

/** A pot of money with rules. */
export const fundSchema = z.strictObject({
  id,
  name: text,
  kind: z.enum([
    'capital',
    'operating',
    'gift',
    'student-fee',
    'reunion-gift',
    'grant',
    'endowment-payout',
    'reserve',
  ]),
  status: z.enum(['received', 'pledged', 'hoped-for']),
  counted: z.boolean().describe('Hoped-for money is shown and not planned on unless true.'),
  openingBalanceDollars: dollars.describe(
    'On hand as the first fiscal year opens, fees and care share already taken off.',
  ),
  inflows: z
    .array(z.strictObject({ year: fiscalYearText, amountDollars: dollars }))
    .max(200)
    .describe('Before fees.'),
  yearlyInflows: z.array(yearlyInflowSchema).max(20).optional().describe('Before fees.'),
  carryYears,
  expires: fiscalYearText.optional().describe('Last fiscal year in which any of it may be spent.'),
  feePercent: percent.describe('Taken off at receipt.'),
  careSharePercent: percent.describe('After the fee, kept for care in a pot of its own.'),
  careShareCarryYears: carryYears.optional().describe('Left out: the care share never lapses.'),
  restriction: z.strictObject({
    lines: z.array(costLine).min(1).max(5),
    sites: anyOrIds,
    buildTypes: anyOrIds,
  }),
  matchRatio: z
    .number()
    .min(0)
    .max(100)
    .optional()
    .describe('Most that it pays for each dollar of other money. Left out: no matching grant.'),
  reimbursement: z
    .strictObject({
      frontedBy: id.describe('The fund that pays first and gets the money back.'),
      lagMonths: z
        .int()
        .min(0)
        .max(120)
        .describe('Months from the end of the preparing season to the payback.'),
    })
    .optional()
    .describe(
      'A grant that pays back what was spent on builds, up to its inflows, which carry the years of that spending. Left out: it pays itself.',
    ),
  floorDollars: dollars.describe('The closing balance never falls below this.'),
  giftId: id
    .optional()
    .describe('The gift that this money is of; two funds with one gift count it twice.'),
});

export const standingCostSchema = z.strictObject({
  id,
  name: text,
  annualDollars: dollars.describe('In the price year.'),
  escalation: escalationKind,
});

const growth = z.number().min(-20).max(20);

/** Yearly price growth in percent, counted from the price year. */
export const escalationSchema = z.strictObject({
  construction: growth,
  wages: growth,
  supplies: growth,
});
