import type { Figure } from '../../overview/plan-overview.js';
import type { Course } from '../courses/follow-courses.js';

/** Something that could be added or given up, as a changed campus, with what it costs and when to ask. */
export interface Lever {
  readonly course: Course;
  /** The numbers that its name and note tell, beside the dollars. */
  readonly figures: readonly Figure[];
  readonly kind:
    'position' | 'money' | 'compost' | 'volunteers' | 'lighter' | 'simplified' | 'skip';
  /** Dollars over the horizon in the price year, paid by whoever grants it; `null`: not known. */
  readonly dollars: number | null;
  /** Month by which it must be asked for, or decided where nobody is asked. */
  readonly askBy: string;
  /** Whether somebody is asked for it; else it is the institution's own to decide. */
  readonly isAsked: boolean;
  /** What was assumed. */
  readonly note: string;
}

/** Where what a question assumes comes from. */
export const ASSUMED = { basis: 'judgement', source: 'a question, not a plan' } as const;
