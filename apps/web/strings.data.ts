import { counted, wholeNumber } from './format/numbers.js';

/** Every English word that the page itself says. What it says of a plan comes with the plan. */
export const strings = {
  skip: 'Skip to the plan',
  productName: 'Campus plan',
  heading: (first: string, last: string): string => `Landscape plan, ${first} to ${last}`,
  dataOf: (date: string): string => `Campus data of ${date}`,
  chooseCampus: 'Campus',
  choosePlan: 'Plan',
  planSolvedAt: (moment: string): string => `Solved ${moment}`,
  contents: 'On this page',
  advice: 'A solver’s plan is advice: people who know the ground decide.',

  sections: {
    next: 'Next year',
    strip: 'All years',
    care: 'Care by season',
    plan: 'Plan by year',
    hires: 'Hires to ask for',
    promises: 'Promises',
    limits: 'Limits',
    alternatives: 'Other courses',
    unknowns: 'To find out',
    money: 'Money and compost',
    documents: 'For the meeting',
    solve: 'Solve again',
  },

  headline: {
    next: 'Next year',
    firstLimit: 'First limit',
    promise: 'Promise',
    proof: 'How near proven',
    sitesBuilt: (built: number, candidates: number): string =>
      `${wholeNumber(built)} of ${counted(candidates, 'candidate site', 'candidate sites')} built`,
    extent: (area: string, capital: string): string =>
      `${area} sq ft in all, ${capital} of capital in dollars of each year.`,
  },

  tiers: {
    summary: 'How each aim of the solve stands',
    caption: 'The aims of the solve, in order; each is held while the next is improved',
    aim: 'Aim',
    value: 'This plan',
    bound: 'No plan can beat',
    gap: 'Gap',
    proven: 'Proven',
    isProven: 'proven',
    notProven: 'not proven',
    noBound: 'not sought',
    names: {
      'unserved-peak': 'Care left undone in the worst season',
      'unserved-total': 'Care left undone in all seasons',
      benefit: 'Benefit of the sites',
      'recurring-cost': 'Recurring cost in the peak year',
      change: 'Change from the published plan',
    } as Readonly<Record<string, string>>,
    commitment: (id: string): string => `Shortfall of the promise “${id}”`,
  },

  next: {
    lead: (year: string, planting: string): string => `To prepare in ${year}, planted ${planting}.`,
    compared: (others: number, year: string): string =>
      `Compared with ${counted(others, 'other candidate', 'other candidates')} that could be prepared in ${year}.`,
    none: (year: string): string => `No site is to be prepared in ${year}.`,
    noneRemedy:
      'Use the year to clear what is listed under “To find out”, then solve again: each answer can free a site.',
    facts: (zone: string, type: string, area: string): string =>
      `${zone}; ${type}; ${area} sq\u00a0ft.`,
    for: 'Reasons for',
    against: 'Reasons against',
    noneAgainst: 'The plan records no reason against. Ask those who know the ground.',
    source: (text: string): string => `Source: ${text}`,
    cost: 'Cost',
    costRange: (low: string, high: string): string => `${low} to ${high}`,
    costLikely: (likely: string, year: string): string =>
      `Likely ${likely}, in dollars of ${year}.`,
    costClass: 'Class 5 estimate, about −30% to +50%: for planning, not for awarding a contract.',
    costDrawing: (low: string, likely: string, high: string): string =>
      `Cost band from ${low} to ${high}, likely ${likely}`,
    gates: 'Before any work starts',
    noGates: 'No open question is recorded. Locate tickets and site walk still come first.',
    clearedBy: (who: string): string => `Cleared by: ${who}`,
    cautions: 'Cautions',
  },

  strip: {
    title: 'Sites of each year, and how near each resource is to its limit',
    description: (years: number, built: number, missed: number): string =>
      `${counted(years, 'year', 'years')} from left to right, with ` +
      `${counted(built, 'mark', 'marks')} for the sites built. ` +
      (missed === 0
        ? 'The yearly promise is not missed in any year. '
        : `The yearly promise is missed in ${counted(missed, 'year', 'years')}. `) +
      'Below are four bands for money, summer hours, compost and land. The table under the figure holds the same.',
    built: 'Site built',
    proposed: 'Site built; its care rests on a position not yet granted',
    small: 'Small mark: does not count towards the promise',
    blocked: 'Outline: sites that works keep from being prepared, and how many',
    missed: 'Gap in the line: promise missed',
    band: 'Band: the fuller and darker, the more of what there is has been used',
    limit: 'Line: first year that falls short',
    rows: {
      sites: 'Sites',
      blocked: 'Blocked by works',
      hires: 'Hires start',
      money: 'Money',
      summerHours: 'Summer hours',
      compost: 'Compost',
      sitesUsed: 'Candidate sites',
    },
    shortFrom: (year: string): string => `short from ${year}`,
    notShort: 'not short',
    firstLimit: (year: string): string => `first limit ${year}`,
    tableSummary: 'All years as a table',
    caption: 'Sites of each year, and the share of each resource that is used',
    year: 'Year',
    promise: 'Promise',
    kept: 'kept',
    missedInTable: 'missed',
    noPromise: 'none',
    onProposed: 'on a position not yet granted',
    notCounted: 'does not count towards the promise',
    none: 'none',
    nothing: '–',
    unknown: 'not known',
    usedHead: (band: string): string => `${band}, used`,
    sitesLeft: 'Candidate sites left',
  },

  care: {
    choose: 'Season',
    year: 'Year',
    wholeYear: 'Whole year',
    yearHides: (season: string): string => `Annual totals hide the ${season}.`,
    yearCanHide: 'Annual totals can hide a season that falls short.',
    yearShort: (year: string | null): string =>
      year === null
        ? 'Added up over whole years, the hours of those already there never fall short.'
        : `Added up over whole years, the hours of those already there fall short first in ${year}.`,
    seasonShort: (season: string, label: string | null): string =>
      label === null
        ? `In ${season}, the hours of those already there never fall short.`
        : `The hours of those already there fall short first in ${label}.`,
    title: (season: string): string => `${season}: hours of care against the people there`,
    description: (first: string, last: string, short: string | null): string =>
      `Stacked bars from ${first} to ${last}, by age of site, under a line for the hours of those ` +
      'already there and a dashed line with the positions not yet granted. ' +
      (short === null
        ? 'The bars never pass the solid line.'
        : `The bars pass the solid line first in ${short}.`),
    axis: 'Hours',
    ages: { year1: 'Year 1', year2: 'Year 2', year3: 'Year 3', mature: 'Mature' },
    careOf: (age: string): string => `Care, ${age.toLowerCase()}`,
    building: 'Building and supervising',
    supplyNow: 'People already there',
    supplyProposed: 'With positions not yet granted',
    shortNow: 'Undone without them',
    unserved: 'Left undone',
    unservedMark: 'Care left undone',
    afterHorizon: 'after the plan',
    tableSummary: (season: string): string => `${season} hours as a table`,
    caption: (season: string): string => `${season}: effective hours`,
    period: 'Period',
    afterHorizonRow: (label: string): string => `${label} (after the plan)`,
    basis:
      'Hours are planning coefficients, not a staffing entitlement. Work days are counted after the hours of those who lead them.',
    none: 'This plan holds no season.',
  },

  plan: {
    caption:
      'All years of the plan; cost is a class 5 estimate, about −30% to +50%, in dollars of the year',
    year: 'Year',
    site: 'Site',
    zone: 'Zone',
    type: 'Build type',
    area: 'Area, sq\u00a0ft',
    cost: 'Cost band',
    planting: 'Planted',
    none: 'No site',
  },

  hires: {
    caption: 'Positions that the plan rests on and that are not yet granted',
    position: 'Position',
    count: 'How many',
    askBy: 'Ask by',
    starts: 'Starts',
    cost: 'Pay of each, in dollars of the start year',
    ofTerm: {
      recurring: (pay: string): string => `${pay} a year`,
      'one-season': (pay: string): string => `${pay} for the season`,
    },
    none: 'The plan asks for no new position.',
  },

  promises: {
    caption: 'What was promised, and how far this plan keeps it',
    name: 'Promise',
    strength: 'Strength',
    status: 'In this plan',
    keptUntil: 'Kept until',
    missed: 'Missed in',
    notYearly: 'not a yearly promise',
    missedAtOnce: 'missed from the start',
    neverMissed: 'no year',
    none: 'The campus file holds no promise.',
  },

  limits: {
    caption: 'When each resource first falls short, without what is only proposed',
    resource: 'Resource',
    when: 'First short in',
    shortBy: 'Short by',
    what: 'What it means',
    notShort: 'not within the plan',
    none: 'The plan records no limit.',
    units: { dollars: 'dollars' },
  },

  alternatives: {
    caption:
      'What else could be decided, each worked out to the end of the plan; a first look, not solved anew',
    course: 'Course',
    sites: 'Sites built',
    area: 'Area, sq\u00a0ft',
    capital: 'Capital',
    positions: 'Pay of new positions',
    hours: 'Care hours in the busiest season of the last year',
    givenUp: 'Gives up',
    nothing: 'nothing promised',
    basis: 'Dollars are of each year; costs are class 5 estimates.',
    none: 'The plan comes with no other course.',
  },

  unknowns: {
    caption: 'Not yet known; none of it is taken as zero',
    site: 'Site',
    what: 'What to find out',
    clearedBy: 'Who clears it',
    consequence: 'Until then',
    none: 'Nothing is recorded as unknown.',
    ofCampus: 'Whole campus',
  },

  money: {
    yearsSummary: 'Money by year',
    yearsCaption: 'Money by year, in dollars of the year',
    year: 'Year',
    build: 'Building',
    care: 'Care',
    positions: 'New positions',
    compost: 'Compost',
    standing: 'Standing costs',
    received: 'Received',
    lapsed: 'Lapsed',
    closing: 'Carried forward',
    fundSummary: (name: string): string => `Fund: ${name}`,
    fundCaption: (name: string): string => `${name}, in dollars of the year`,
    opening: 'Brought forward',
    spent: 'Spent',
    lapses: 'Money that this plan lets lapse',
    compostSummary: 'Compost by season',
    compostCaption: 'Compost by season, in cubic yards',
    season: 'Season',
    made: 'Made',
    bought: 'Bought',
    builds: 'To new sites',
    topDress: 'To older sites',
    givenAway: 'Given away',
    stock: 'In the yard',
    none: 'The plan holds no money or compost records.',
  },

  documents: {
    brief: 'Administration brief (PDF)',
    briefNote:
      'Two to four pages for a budget or campus committee: the ask, the reasons, the chart above with its table, the limits and what is unknown.',
  },

  solve: {
    lead: 'Looks for a better plan from the campus file as it stands. The plan on this page stays until you choose another.',
    leadFirst: 'The first plan is there within seconds; more time makes it better.',
    time: 'Time allowed',
    times: [
      { seconds: 20, label: '20 seconds' },
      { seconds: 60, label: '1 minute' },
      { seconds: 300, label: '5 minutes' },
      { seconds: 1800, label: '30 minutes' },
    ],
    start: 'Solve',
    cancel: 'Stop and keep the best so far',
    cancelling: 'Stopping; the best plan so far is kept.',
    queued: 'Waiting for the solver.',
    solving: 'Solving.',
    solvingAim: (aim: string): string => `Solving. Now improving: ${aim}.`,
    elapsed: 'Time so far',
    elapsedSeconds: (seconds: number): string => counted(seconds, 'second', 'seconds'),
    best: 'Best so far',
    noneYet: 'none yet',
    bound: 'No plan can beat',
    gap: 'Gap',
    progressLabel: 'Share of the time allowed',
    lost: 'The page has lost touch with the server. The solve goes on there; the page keeps trying.',
    done: 'Solved. The new plan is ready.',
    cancelled: 'Stopped. The best plan so far is kept.',
    cancelledWithout: 'Stopped before a plan was found. Solve again and allow more time.',
    outOfTime: 'The time ran out before a plan was found. Solve again and allow more time.',
    show: 'Show the new plan',
    failed: 'The solve failed.',
    failedRemedy: 'Solve again. If it fails again, check the campus file.',
    conflict: 'These cannot all be kept, so there is no plan:',
    conflictRemedy:
      'Change one of them in the campus file (a lower strength, a later date or a higher limit), load the file, and solve again.',
    conflictUnnamed:
      'No plan can keep every binding promise and limit. Lower the strength of one in the campus file, and solve again.',
  },

  states: {
    loading: 'Loading the plan.',
    noCampus: 'No campus is loaded',
    noCampusRemedy:
      'Load a campus file, or start the program with its demonstration campus. Then look again.',
    noPlan: 'No plan yet',
    firstPlan: 'The first plan is being made',
    firstPlanRemedy: (campus: string): string =>
      `${campus} has no plan so far. The page shows the first one as soon as the solve ends.`,
    noPlanExists: 'No plan can exist',
    noPlanExistsRemedy: (campus: string): string =>
      `No plan for ${campus} keeps every binding promise within its limits.`,
    noPlanRemedy: (campus: string): string =>
      `${campus} is loaded and has no plan. Solve to make the first one.`,
    failed: 'The plan could not be loaded',
    failedRemedy: 'Try again. If it fails again, start the server anew and look at what it prints.',
    offline: 'The server does not answer',
    offlineRemedy:
      'Check the network and that the planner is running where this page came from. Then try again.',
    missingPlan: 'This plan is not here',
    missingPlanRemedy:
      'The address names a plan that the server does not hold. Show the newest one instead.',
    showNewest: 'Show the newest plan',
    retry: 'Try again',
  },
} as const;
