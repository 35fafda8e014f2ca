import type { Breach } from '#domain/breach.js';
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';

/** Judges a finished plan by one rule, in whole cents and hundredths. Empty: the rule is kept. */
export type Check = (campus: Campus, plan: Plan) => Breach[];
