import type { ProblemText } from '#domain/problem.js';
import { shown } from './issue-text.js';
import type { Issue } from './issues.js';

interface Special {
  /** Path with `*` for a place in a list and for any key. */
  readonly at: string;
  readonly kinds: readonly Issue['kind'][];
  readonly code: string;
  readonly text: (issue: Issue) => ProblemText;
}

/** Fields whose mistake has a name of its own. The first that fits is taken. */
const SPECIALS: readonly Special[] = [
  {
    at: 'positions.*.leadMonths',
    kinds: ['missing', 'type'],
    code: 'POSITION-LEAD-MISSING',
    text: () => [
      'The lead time from the ask to the first day is missing.',
      'Give leadMonths: 10 to 15 months is usual where a budget cycle decides.',
    ],
  },
  {
    at: '*.*.evidence.*.date',
    kinds: ['missing', 'date'],
    code: 'EVIDENCE-UNDATED',
    text: () => [
      'The observation has no date.',
      'Give the day it was made, for example "2027-09-15"; without one it proves nothing.',
    ],
  },
  {
    at: '*.*.facts.ph',
    kinds: ['below', 'above'],
    code: 'FACT-PH-IMPOSSIBLE',
    text: ({ value }) => [
      `A pH of ${shown(value)} cannot be: the scale runs from 0 to 14.`,
      'Look it up in the lab report; garden soils lie between 4.5 and 8.5.',
    ],
  },
  {
    at: '*.*.facts.leadMgPerKg',
    kinds: ['type'],
    code: 'FACT-LEAD-UNIT',
    text: ({ value }) => [
      `${shown(value)} is not a number of mg/kg.`,
      'Give total lead in mg/kg (the same as ppm; 0.02 % is 200), or "unknown".',
    ],
  },
  {
    at: 'commitments.*.test',
    kinds: ['missing', 'type', 'no-such-kind'],
    code: 'COMMIT-NOT-TESTABLE',
    text: notTestable,
  },
  {
    at: 'commitments.*.test.kind',
    kinds: ['missing', 'type', 'no-such-kind', 'choice'],
    code: 'COMMIT-NOT-TESTABLE',
    text: notTestable,
  },
  {
    at: 'workDays.*.peoplePerLeader',
    kinds: ['below'],
    code: 'WORKDAY-LEADER-RATIO',
    text: ({ value }) => [
      `${shown(value)} people to each leader cannot be led.`,
      'Give how many people one leader takes: 8 to 15 is common, 6 with minors.',
    ],
  },
  {
    at: 'calendar.horizonYears',
    kinds: ['below', 'above', 'whole'],
    code: 'CALENDAR-HORIZON',
    text: ({ value }) => [
      `A horizon of ${shown(value)} years cannot be planned.`,
      'Give a whole number of years from 1 to 50.',
    ],
  },
];

function notTestable(): ProblemText {
  return [
    'Nothing says how anyone would tell whether this was kept.',
    'Give it a test that can be measured, with a number and a fiscal year, or leave it out.',
  ];
}

/** Code and words of a mistake that has a name of its own; else undefined. */
export function specialText(issue: Issue): [string, ProblemText] | undefined {
  const special = SPECIALS.find((s) => s.kinds.includes(issue.kind) && fits(s.at, issue));
  return special && [special.code, special.text(issue)];
}

function fits(at: string, { path }: Issue): boolean {
  const keys = at.split('.');
  return keys.length === path.length && keys.every((k, i) => k === '*' || k === path[i]);
}
