import { ended } from './format/ended.js';
import { counted, wholeNumber } from './format/numbers.js';

const FIELD_NAMES: Readonly<Record<string, string>> = {
  name: 'Name',
  zone: 'Zone',
  areaSqFt: 'Stated area, sq\u00a0ft',
  areaConfirmed: 'Where the two areas differ',
  buildTypes: 'What it may become',
  buildType: 'Build type',
  plantedCalendarYear: 'Planted in calendar year',
  earliest: 'Earliest year',
  latest: 'Latest year',
  costFactor: 'Cost against the usual (1 is usual)',
  gates: 'Screening gates',
  boundary: 'Boundary',
  'facts.cover': 'Cover',
  'facts.soil': 'Soil',
  'facts.ph': 'pH',
  'facts.organicMatterPercent': 'Organic matter, %',
  'facts.leadMgPerKg': 'Lead, mg/kg',
  'facts.slopePercent': 'Slope, %',
  'facts.sunHours': 'Sun, hours a day',
  'facts.walkersPerDay': 'People walking by, a day',
  'facts.waterFeet': 'To water, ft',
  'facts.kitchenFeet': 'To a kitchen, ft',
  'facts.truckAccess': 'A truck can reach it',
  'facts.rootProtectedShare': 'Within root protection areas (share)',
};

/** Every English word that the page itself says. What it says of a plan comes with the plan. */
export const strings = {
  skip: 'Skip to the content',
  productName: 'Campus plan',
  heading: (first: string, last: string): string => `Landscape plan, ${first} to ${last}`,
  dataOf: (date: string): string => `Campus data of ${date}`,
  chooseCampus: 'Campus',
  campusSaved: (name: string, moment: string): string => `${name}, saved ${moment}`,
  choosePlan: 'Plan',
  planFrom: {
    solved: (moment: string): string => `Solved ${moment}`,
    bundle: (moment: string): string => `From a bundle, ${moment}`,
  },
  contents: 'On this page',
  advice: 'A solver’s plan is advice: people who know the ground decide.',

  views: {
    label: 'Views',
    names: {
      home: 'Home',
      sites: 'Sites',
      plan: 'Plan',
      next: 'Next year',
      'what-if': 'What if',
      meeting: 'For the meeting',
      'set-up': 'Set-up',
    },
  },

  sections: {
    next: 'The choice',
    strip: 'All years',
    change: 'Try a change',
    others: 'What else could be chosen',
    ranking: 'How the candidates are suited',
    decision: 'Record the decision',
    compare: 'Two plans compared',
    care: 'Care by season',
    plan: 'Plan by year',
    hires: 'Hires to ask for',
    promises: 'Promises',
    limits: 'Limits',
    alternatives: 'Other courses',
    unknowns: 'To find out',
    money: 'Money',
    compost: 'Compost',
    documents: 'Documents',
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
    remedies: {
      findOut:
        'Use the year to clear what is listed under “To find out”, then solve again: each answer can free a site.',
      limits:
        'Nothing is recorded as unknown, so money, people or a promise stands against it: “What one more of each would buy”, under “What if”, tells what would help.',
      noCandidate: 'The campus has no candidate site. Add one under “Set-up”, then solve again.',
    },
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
    clearedBy: (who: string): string => `Cleared by: ${ended(who)}`,
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
    drag: 'Drag a mark to another year to see what gives; Escape leaves it where it is. The form below does the same by keys.',
    dragged: (site: string, year: string): string => `${site} to ${year}`,
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
    theWholeYear: 'the whole year',
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
    tableSummary: (season: string): string => `Hours of ${season} as a table`,
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
    change: 'Change',
    move: 'Move or bar',
    moveSite: (site: string): string => `Move or bar ${site}`,
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
    caption:
      'What was promised, and how far this plan keeps it; the last two columns are for promises of each year',
    name: 'Promise',
    strength: 'Strength',
    status: 'In this plan',
    keptUntil: 'Kept until',
    missed: 'Missed in',
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
    underOne: 'under 1',
    units: { dollars: 'dollars' },
  },

  alternatives: {
    differenceCaption:
      'This plan, and under it what each other course changes; a first look, each worked out to the end, not solved anew',
    hoursIn: (hours: string, season: string): string => `${hours} in ${season}`,
    nothingMore: 'nothing more than this plan',
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
    site: 'Site or fund',
    what: 'What to find out',
    clearedBy: 'Who clears it',
    consequence: 'Until then',
    none: 'Nothing is recorded as unknown.',
    ofCampus: 'Whole campus',
  },

  money: {
    all: 'All funds together',
    yearsSummary: 'Money by what it is spent on',
    yearsCaption: 'Money by year and what it is spent on, in dollars of the year',
    year: 'Year',
    build: 'Building',
    care: 'Care',
    positions: 'New positions',
    compost: 'Compost',
    standing: 'Standing costs',
    received: 'Received',
    lapsed: 'Lapsed',
    closing: 'Carried forward',
    floor: 'Floor: it never holds less',
    floorHead: 'Floor',
    fundSummary: (name: string): string => `Fund: ${name}`,
    fundTitle: (name: string): string => `${name}: what comes in, is spent and is carried forward`,
    fundDescription: (first: string, last: string, floor: string | null): string =>
      `Stacked bars from ${first} to ${last} of what is carried forward, lapses and is spent, ` +
      'with a line for what is received. ' +
      (floor === null ? '' : `A dashed line marks the floor of ${floor}. `) +
      'The table holds the same.',
    fundSums: (received: string, spent: string, lapsed: string | null): string =>
      `Over the plan, ${received} received and ${spent} spent` +
      (lapsed === null ? '.' : `; ${lapsed} lapsed.`),
    tableSummary: (name: string): string => `${name} as a table`,
    fundCaption: (name: string): string => `${name}, in dollars of the year`,
    axis: 'Dollars',
    opening: 'Brought forward',
    spent: 'Spent',
    paidBack: 'Paid back',
    lapses: 'Gifts and grants that this plan lets lapse',
    paybacks: 'Money fronted for grants',
    paysBack: 'Paid back to who fronted it',
    none: 'The plan holds no money records.',
  },

  compost: {
    title: (period: string): string => `${period}: compost used, bought and in the yard`,
    description: (first: string, last: string, bought: string | null): string =>
      `Stacked bars from ${first} to ${last} of compost used and given away, ` +
      'with lines for what is made and for what is left in the yard. ' +
      (bought === null
        ? 'None is bought. '
        : `What is bought hangs below the axis, first in ${bought}. `) +
      'The table holds the same.',
    axis: 'Cubic yards',
    firstBought: (year: string, total: string): string =>
      `Compost is bought first in ${year}, ${total} cu\u00a0yd in all.`,
    neverBought: 'The program’s own compost is enough in every year: none is bought.',
    tableSummary: (period: string): string => `Compost of ${period} as a table`,
    caption: (period: string): string => `${period}: compost in cubic yards`,
    period: 'Period',
    season: 'Season',
    used: 'Used',
    gradesSummary: 'Compost by grade and season',
    certifiedCaption: 'Certified compost by season, in cubic yards',
    otherCaption: 'Other compost by season, in cubic yards: not for food ground',
    made: 'Made',
    bought: 'Bought',
    builds: 'To new sites',
    topDress: 'To older sites',
    givenAway: 'Given away',
    stock: 'Left in the yard',
    none: 'The plan holds no compost records.',
  },

  documents: {
    brief: 'Administration brief (PDF)',
    briefNote:
      'Each is written from this plan at the moment it is downloaded, in colors that also read in gray.',
    asPdf: (title: string): string => `${title} (PDF)`,
    ofSites: (count: number): string =>
      counted(count, 'document of a single site', 'documents of single sites'),
  },

  problems: {
    error: 'To mend',
    warning: 'To look at',
    found: (value: string): string => `Found: ${value}.`,
  },

  home: {
    heading: (year: string): string => `Next year: ${year}`,
    toNext: 'The reasons, and the decision',
    toPlan: 'All years of the plan',
    findOut: 'What to find out first',
    allUnknowns: (count: number): string => `All ${wholeNumber(count)} open questions`,
    due: (month: string): string => `Due in ${month}`,
    askNow: (position: string, askBy: string, starts: string): string =>
      `Ask for: ${position}. The request was due by ${askBy}, to start in ${starts}.`,
    askNext: (position: string, askBy: string, starts: string): string =>
      `The next position to ask for: ${position}, by ${askBy}, to start in ${starts}.`,
    usualBasis:
      'What is usual in this month on a July to June year: common practice, no source. Your own calendar comes first.',
  },

  change: {
    lead: 'Fix a site to a year or bar it from one, and see within seconds what gives. The plan on this page stays until you keep the new one.',
    site: 'Site',
    chooseSite: 'Choose a site',
    what: 'What to do',
    kinds: {
      fixed: 'Prepare it in',
      forbidden: 'Not in',
      never: 'Not at all',
      free: 'Leave it to the solver',
    },
    year: 'Year',
    chooseYear: 'Choose a year',
    reason: 'Why',
    try: 'See what gives',
    draggedReason: 'Tried out: dragged to this year.',
    saving: 'Saving the change, then solving.',
    solving: 'Solving again from this plan. This takes a few seconds.',
    solved: 'Solved with the change.',
    noPlan: 'No plan with this change was found.',
    noPlanRemedy:
      'The time was over before a plan was found. That does not mean that there is none: allow a minute, or undo the change.',
    longer: 'Allow a minute',
    undo: 'Undo the change',
    undone: 'Undone. The plan from before is on the page.',
    keep: 'Keep it: show the new plan',
    placed: 'Placed by hand',
    nonePlaced: 'Nothing is placed by hand.',
    placedAs: (kind: 'fixed' | 'forbidden', year: string | null): string => {
      if (kind === 'fixed') return `is fixed to ${year ?? 'the plan'}.`;
      return year === null ? 'is barred from every year.' : `is barred from ${year}.`;
    },
    free: 'Leave it to the solver',
    freeSite: (site: string): string => `Leave it to the solver: ${site}`,
  },

  changes: {
    caption: 'What gives: only what is different',
    what: 'What',
    before: 'Before',
    after: 'After',
    nothing: 'Nothing else changes: both plans are the same in sites, promises, limits and money.',
    preparedAs: (year: string, buildType: string): string => `${year}, ${buildType}`,
    notBuilt: 'not built',
    noSuch: 'not there',
    none: 'none',
    promise: (name: string): string => `Promise: ${name}`,
    missedIn: (status: string, years: string): string => `${status}; missed in ${years}`,
    limit: (resource: string): string => `First short of ${resource}`,
    built: 'Sites built',
    capital: 'Capital, in dollars of each year',
    hire: (position: string, starts: string): string => `Position: ${position}, from ${starts}`,
    asked: (count: string, askBy: string): string => `${count}, to ask for by ${askBy}`,
    undone: 'Care left undone over all years',
    lapse: (name: string, year: string): string => `Lapses in ${year}: ${name}`,
  },

  sites: {
    heading: 'Sites',
    caption: 'Sites of the campus',
    filter: 'Which sites to show',
    find: 'Find',
    show: 'Show',
    shows: {
      all: 'all sites',
      planned: 'in the plan',
      'not planned': 'not in the plan',
      open: 'with open questions',
      planted: 'planted already',
    },
    everyZone: 'every zone',
    none: 'The campus has no site yet.',
    toSetUp: 'Add one, or bring your own from a file',
    shown: (shown: string, all: string): string => `${shown} of ${all}`,
    showAll: (left: string): string => `Show ${left}`,
    site: 'Site',
    zone: 'Zone',
    area: 'Area, sq\u00a0ft',
    planned: 'Prepared in',
    cost: 'Likely cost',
    unknown: 'Open gates',
    notPlanned: 'not planned',
    plantedIn: (year: string): string => `planted ${year}`,
    choose: 'Open a site from the list or the map to see what is known of it.',
    unknownSite: (id: string): string =>
      `The campus has no site ${id}. Choose one from the list; the address may be of an earlier version.`,
  },

  map: {
    title: (count: number): string =>
      `Map of the campus with ${counted(count, 'site', 'sites')}; the list holds the same`,
    keys: 'Map. Arrow keys move it, plus and minus change the scale, zero shows all of it.',
    closer: 'Closer',
    farther: 'Farther',
    whole: 'Whole campus',
    north: 'N',
    feet: (feet: string): string => `${feet} ft`,
    key: {
      planned: 'In the plan',
      notPlanned: 'Not in the plan',
      unknown: 'Dashed edge: a gate is unknown',
      planted: 'Planted already',
      works: 'Works expected on it',
      roots: 'Root protection area, where trees are recorded',
      zone: 'Edge of a zone',
      prefix: (prefix: string): string => `Numbers on the map follow ${prefix}`,
    },
  },

  record: {
    facts: (zone: string, area: string): string => `${zone}; ${area} sq\u00a0ft.`,
    planned: (year: string, low: string, high: string): string =>
      `In the plan for ${year}, at ${low} to ${high} in dollars of that year.`,
    notPlanned: 'Not in the plan.',
    planted: (year: string): string => `Planted in ${year}.`,
    works: (names: readonly string[]): string => `Works expected here: ${names.join(', ')}.`,
    fact: 'Fact',
    value: 'Value',
    factsCaption: 'What is known of the ground',
    unknown: 'unknown',
    yes: 'yes',
    no: 'no',
    factNames: {
      cover: { name: 'Cover', unit: '' },
      soil: { name: 'Soil', unit: '' },
      ph: { name: 'pH', unit: '' },
      organicMatterPercent: { name: 'Organic matter', unit: '%' },
      leadMgPerKg: { name: 'Lead', unit: 'mg/kg' },
      slopePercent: { name: 'Slope', unit: '%' },
      sunHours: { name: 'Sun, May 1 to September 15', unit: 'hours a day' },
      walkersPerDay: { name: 'People walking by', unit: 'a day' },
      waterFeet: { name: 'To water', unit: 'ft' },
      kitchenFeet: { name: 'To a kitchen', unit: 'ft' },
      truckAccess: { name: 'A truck can reach it', unit: '' },
      rootProtectedShare: { name: 'Within root protection areas', unit: 'share' },
    },
    gate: 'Gate',
    status: 'Status',
    gateNote: 'What was found',
    clearedBy: 'What clears it, and who decides',
    gatesCaption: 'Screening gates',
    otherGatesCaption: 'Gates not on record yet, and what the measures say of those that are',
    measured: 'What the measures say',
    statedAbove: 'on record above',
    ask: (whom: string): string => `Whom to ask: ${whom}.`,
    asOf: (date: string): string => `(Rule as of ${date}.)`,
    noGates: 'No screening gate is recorded. Locate and site walk still come first.',
    statuses: { pass: 'passes', fail: 'fails', unknown: 'unknown' },
    gateNames: {
      contamination: 'Contamination',
      utilities: 'Utilities',
      construction: 'Building works',
      'root-protection': 'Tree roots',
      slope: 'Slope',
      access: 'Truck access',
      heritage: 'Heritage',
      'flood-or-wetland': 'Flood or wetland',
      'fire-lane': 'Fire lane',
      structure: 'Vaults and structures',
      accessibility: 'Accessible route',
    },
    cautions: {
      locate:
        'Have public and campus utilities located and marked before any digging or aeration. A drawn boundary is no locate.',
      soil: 'A soil result here is a screening, not a clearance. Environmental health and safety decides what may be eaten.',
      roots:
        'No grade change, tilling or compost within root protection areas; keep chips off the trunks and ask the arborist.',
      estimate:
        'Costs are class 5 estimates, about −30% to +50%: for planning, not for awarding a contract.',
    },
    estimate: 'Estimate',
    estimateLead: (year: string): string =>
      `In prices of ${year}. Open a number to see what it is made of, down to the defaults and their sources.`,
    asType: 'As build type',
    estimateSections: {
      takeoff: 'Takeoff',
      hours: 'Hours',
      money: 'Money',
      water: 'Water',
      benefits: 'Benefits',
    },
    dossier: 'Site dossier (PDF)',
    suitability: 'Suitability, before gates and plan',
    formula: (formula: string): string => `Worked out: ${formula}`,
    source: (source: string): string => `Source: ${source}`,
    evidence: 'Evidence',
    evidenceCaption: 'Who found out what, when and how',
    noEvidence: 'No evidence is recorded.',
    method: 'Method',
    observer: 'By',
    date: 'On',
    expires: 'Holds until',
    noExpiry: 'no date given',
  },

  edit: {
    open: 'Edit the site',
    goOn: 'Go on editing: what you typed was kept',
    form: (id: string): string => `Edit ${id}`,
    lead: 'What you type is kept in this browser until it is saved.',
    fieldName: (field: string): string => FIELD_NAMES[field] ?? field,
    anyYear: 'any year',
    areaConfirmed: 'the stated one holds',
    areaNotConfirmed: 'the drawn one holds',
    facts: 'What is known of the ground',
    unitTyped: (unit: string): string => (unit === 'share' ? 'as a share: 0.25 is 25%' : unit),
    factsLead: 'Leave a fact empty while it is unknown. Unknown is never taken as zero.',
    gates: 'Screening gates',
    addGate: 'Add a gate',
    chooseGate: 'Choose one',
    remove: 'Remove',
    removeGate: (name: string): string => `Remove the gate ${name}`,
    boundary: 'Boundary',
    paste: 'GeoJSON of the boundary: a polygon, or a feature that holds one',
    draw: 'Draw it on the map',
    drawLead: 'Click each corner in turn, or use the keys.',
    drawKeys:
      'Drawing. Arrow keys move the cross by 10 feet, with Shift by 1 foot; Enter sets a corner, Backspace takes the last one away.',
    drawTitle: 'The surroundings of the site, with the boundary as it is drawn',
    corners: (count: number): string =>
      `${counted(count, 'corner', 'corners')}${count < 3 ? '; a boundary needs at least three' : ''}`,
    closeRing: 'Close the boundary and use it',
    lessCorner: 'Take the last corner away',
    stopDrawing: 'Stop drawing',
    findings: 'What the check finds',
    drawnArea: (area: string): string => `The drawn boundary holds ${area} sq\u00a0ft.`,
    noDrawnArea: 'The boundary cannot be measured.',
    noFindings: 'The check finds nothing to mend.',
    save: 'Save the site',
    drop: 'Stop editing and drop what I typed',
    saving: 'Saving.',
    saved: 'Saved. The plan still rests on the earlier version; solve again to use this one.',
    notSaved: 'Not saved. What you typed is still here.',
    undo: 'Undo the last save of this site',
    undone: 'Undone. The site is as it was before.',
    conflict: 'Somebody else changed this site while you did',
    conflictLead:
      'Choose for each field which of the two should stand, and save. Nothing of either is lost until then.',
    conflictSame: 'Both of you made the same change. Saving changes nothing more.',
    was: (text: string): string => `It was: ${text}`,
    whose: { theirs: 'Theirs:', mine: 'Yours:' },
    empty: 'empty or unknown',
    longText: (start: string, length: number): string =>
      `${start} … (${counted(length, 'character', 'characters')})`,
    saveMerged: 'Save the merged site',
  },

  question: {
    ask: 'Work it out',
    again: 'Work it out again',
    longer: 'Take two minutes for it',
    asking: 'Waiting for the solver.',
    working: (message: string): string => `Working: ${message}.`,
    progress: 'Share of the answer that is worked out',
    failed: 'It could not be worked out.',
    skipped: (what: string): string => `Left out, as the time was over: ${what}.`,
  },

  others: {
    lead: 'Each choice for next year is forced in turn, the rest is planned again with the same effort, and the plans are compared.',
    caption: 'Choices for next year, the recommended one first',
    choice: 'Choice',
    standing: 'Where it stands',
    standings: {
      recommended: 'recommended',
      tied: 'cannot be told apart',
      'found-worse': 'found worse',
      worse: 'proven worse',
      impossible: 'proven impossible',
      'not-found': 'not found',
    },
    what: 'What that rests on',
    hours: 'Most care hours in a main season',
    against: 'Against it',
    none: 'nothing on record',
    could: 'Tests that could change the answer',
    couldCaption: 'Sites that nothing may be built on next year until something is found out',
    site: 'Site',
    findOut: 'What to find out',
    ifPassed: 'Had it passed',
    notWorkedOut: 'not worked out',
    notKnown: 'not known',
  },

  conflicts: {
    heading: 'What stands against what, and what would help',
    lead: 'Each set of promises and limits that cannot all be kept is found and proven, and each way out is planned and priced.',
    set: 'Set',
    against: 'What cannot all be kept',
    setsCaption: 'Sets of promises and limits that cannot all be kept',
    repair: 'Repair',
    asks: 'What it takes',
    sites: 'Sites built',
    change: 'What to change in the campus file',
    repairsCaption: 'Repairs, the one that gives up least first',
    notWorkedOut: 'not worked out',
    changes: {
      aim: (promise: string): string => `Set the strength of “${promise}” to “intended”.`,
      openYears: 'Take out the year through which the published plan is frozen.',
      inflow: (dollars: string, year: string): string => `${dollars} in ${year}`,
      addFund: (inflows: string): string =>
        `Add a fund that may pay anything and never lapses, with ${inflows}.`,
      hours: (hours: string, season: string): string => `${hours} hours each ${season}`,
      addPeople: (hours: string, year: string): string =>
        `Add people who may do any work, with ${hours}, from ${year} on.`,
      giveCompost: (yards: string): string =>
        `Set the price of compost to nothing and the most bought in a season to ${yards} cubic yards.`,
    },
  },

  whatIfQuestions: {
    promises: 'What each promise costs',
    promisesLead:
      'Each promise is let go in turn and the whole planned again; only the difference is told.',
    promisesCaption: 'Promises, with and without',
    promise: 'Promise',
    strength: 'Strength',
    difference: 'Without it',
    without: (promise: string): string => `Without “${promise}”`,
    skipCaption: 'The yearly promise skipped in some years',
    years: 'Years skipped',
    limits: 'How long the promise can be kept',
    limitsLead:
      'The yearly promise is followed to the year in which it can no longer be kept, with one resource limited at a time and with all together.',
    limitsCaption: 'To which year the promise can be kept',
    resource: 'Limited',
    kept: 'Kept through',
    impossible: 'Proven impossible through',
    notProven: 'not proven',
    noneFound: 'no plan found',
    additions: 'What one more of each would buy',
    additionsLead: 'One thing is added at a time and the whole planned again.',
    additionsCaption: 'Additions compared',
    addition: 'Addition',
    cost: 'Cost over the plan',
    perYear: 'For each promised year bought',
    unknown: 'not known',
    notWorkedOut: 'not worked out',
    buysNone: 'buys none',
    noPrice: 'no price known',
    buys: 'What it buys',
  },

  futures: {
    heading: 'In other futures',
    lead: 'The plan meets a thousand sampled futures in which people, money, prices, works and weather do not keep to it.',
    sure: { 0: 'none', 1: 'all' },
    met: (futures: string, recourse: string): string =>
      `${futures} ${futures === '1' ? 'future' : 'futures'} met. ${recourse}`,
    metAgain: (futures: string, recourse: string): string =>
      `${futures} of them met again. ${recourse}`,
    fiscal: (year: number): string => `FY${String(year % 100).padStart(2, '0')}`,
    care: 'Care wanted against the people there',
    neverShort: 'In no season is care more likely than not left undone.',
    firstShort: (season: string, share: string): string =>
      `Care is more likely than not left undone first in ${season}. Share of the futures: ${share}.`,
    careTitle: (season: string): string =>
      `${season}: hours of care wanted and hours there, as they range over the futures`,
    careDescription:
      'Two bands over the years, each from the hours that one future in ten falls below to those that one in ten exceeds, with a line in the middle. Where the band of care wanted lies over the band of hours there, care is left undone. The table holds the same.',
    careTable: (season: string): string => `Hours of ${season} in the futures as a table`,
    careCaption: (season: string): string =>
      `${season}: effective hours; one future in ten lies below “low”, one in ten above “high”`,
    period: 'Period',
    wanted: 'Wanted',
    there: 'There',
    wantedBand: 'Care wanted: middle, and from 1 future in 10 to 9 in 10',
    thereBand: 'Hours there: middle, and from 1 future in 10 to 9 in 10',
    low: (what: string): string => `${what}, low`,
    middle: (what: string): string => `${what}, middle`,
    high: (what: string): string => `${what}, high`,
    undone: 'Left undone, high',
    short: 'Care left undone in',
    error: 'Sampling error, hours',
    promises: 'Promises kept',
    promise: 'Promise',
    asItIs: (futures: number): string =>
      `Plan kept as it is (${counted(futures, 'future', 'futures')})`,
    mended: (futures: number): string =>
      `Plan made anew each year (${counted(futures, 'future', 'futures')})`,
    planKeeps: 'The plan itself keeps this promise.',
    planBreaks: (year: string): string => `The plan itself breaks this promise in ${year}.`,
    keptTitle: (promise: string): string =>
      `Share of the futures in which this is kept through each year: ${promise}`,
    keptDescription:
      'A line that falls over the years, within the band that sampling leaves open (95 of 100 samples). The table holds the same.',
    keptTable: 'The promise by year as a table',
    keptCaption: (promise: string): string =>
      `${promise}: share of the futures in which it is kept through the year, and between what sampling leaves open`,
    through: 'Kept through',
    gifts: 'Gifts and grants',
    giftsCaption: 'Money given, in the share of the futures; in brackets what sampling leaves open',
    gift: 'Gift or grant',
    giftDollars: 'Dollars',
    comes: 'It comes in',
    lost: 'It comes and some lapses in',
    lostInPlan: 'Lapses in the plan itself',
    odds: 'What the futures are drawn with',
    oddsCaption: (seed: number): string =>
      `Planning numbers of the draws, seed ${String(seed)}; the campus file can replace each`,
    oddsKey: 'Name in the campus file',
    oddsValue: 'Value',
    oddsSource: 'Source',
    eachYear: ' a year',
    held: 'The same in every future',
    leftOut: (what: string): string => `Left out: ${what}`,
  },

  why: {
    heading: 'Why here, and why not sooner or later',
    lead: 'Each other place is forced, the rest is planned again, and the plans are compared.',
    caption: 'Other places for this site',
    place: 'Place',
    what: 'What it changes',
  },

  ranking: {
    lead: (draws: string): string =>
      `Points weigh what a site is like; gates stand apart, and no score outweighs one. ` +
      `The points are weighed in ${draws} other plausible ways as well: in nine of ten of them the rank lies between the two in brackets, and the share of them that puts a site among the best three is told beside it.`,
    caption: 'Candidates by suitability',
    rank: 'Rank',
    rankBetween: (rank: string, low: string, high: string): string => `${rank} (${low} to ${high})`,
    site: 'Site',
    points: 'Points of 100',
    pointsBetween: (least: string, most: string): string => `${least} to ${most}`,
    topThree: 'Among the best three',
    gates: 'Gates',
    gateStates: { pass: 'pass', fail: 'one fails', unknown: 'one is unknown' },
    planned: 'Prepared in',
    made: 'Made of',
    open: 'Its parts',
    contribution: (criterion: string, points: string, most: string): string =>
      `${criterion}: ${points} of ${most} points`,
    contributionUnknown: (criterion: string, most: string): string =>
      `${criterion}: unknown, so 0 to ${most} points`,
    all: (count: number): string => `All ${wholeNumber(count)} candidates`,
    basis:
      'A score compares candidates; it does not decide. Points from facts that are unknown are given as a range.',
  },

  decision: {
    lead: 'A solver’s plan is advice. What people decide is recorded here with their name and reason, beside the plan it was decided on, and cannot be changed afterwards.',
    site: 'Site',
    what: 'Decision on',
    about: (site: string, year: string): string => `${site} in ${year}`,
    verdict: 'Decision',
    verdicts: { approved: 'approved', 'put off': 'put off', refused: 'refused' },
    by: 'Decided by',
    reason: 'Reason',
    dissent: 'Dissent',
    dissentLabel: 'Who disagreed and why (leave empty if nobody did)',
    noDissent: 'none on record',
    when: 'Recorded',
    record: 'Record the decision',
    otherSite: (site: string, name: string): string => `${site} ${name} (not as planned)`,
    recorded: 'Recorded.',
    unlike: (site: string, year: string): string =>
      `The plan does not prepare ${site} in ${year} yet.`,
    toFollow: 'Place it there, and see what gives',
    notRecorded: 'Not recorded. What you typed is still here.',
    caption: 'Decisions on plans of this campus, newest first',
    none: 'No decision is on record yet.',
  },

  whatIf: {
    heading: 'What if',
    lead: 'Each other course is told by what it would change. To try a change of your own, move or bar a site under “Plan”.',
    onlyPlan:
      'There is one plan so far. Solve again, or try a change under “Plan”, and the two can be compared here.',
    compareWith: 'Compare the plan on the page with',
    choosePlan: 'Choose a plan',
    planOf: {
      solved: (moment: string, version: number): string =>
        `solved ${moment}, campus version ${version}`,
      bundle: (moment: string, version: number): string =>
        `from a bundle, ${moment}, campus version ${version}`,
    },
    thisPlan: 'This plan',
    otherPlan: 'The other plan',
    compareCaption: 'Only what is different between the two plans',
  },

  meeting: {
    heading: 'For the meeting',
    lead: 'One page at a time. Arrow keys, Page Up and Page Down turn it, Home and End go to the ends, F fills the screen.',
    story: 'The story',
    storyRole: 'slides',
    place: (place: number, count: number): string => `${place} of ${count}`,
    back: 'Back',
    forward: 'Forward',
    fullScreen: 'Fill the screen',
    years: (sites: string, lastYear: string): string => `${sites} to ${lastYear}`,
    cost: (range: string): string => `Cost: ${range}.`,
    otherwise: 'What else could be decided',
    givesUp: (what: string): string => `Gives up: ${what}.`,
    unknown: (count: number): string =>
      count === 0
        ? 'Nothing is recorded as unknown'
        : `${counted(count, 'thing', 'things')} not known yet`,
    certain: 'How sure this is',
  },

  setUp: {
    heading: 'Set-up',
    lead: 'Ten minutes from nothing to a first plan: a campus, its sites with six facts each, and a list of what to find out.',
    start: 'A campus to start from',
    onDesk: (name: string): string => `On the desk now: ${name}.`,
    sample: 'The sample campus',
    sampleLead: 'An invented university with 32 candidate sites, to look around and try things on.',
    loadSample: 'Load the sample campus',
    ownFile: 'A campus file of your own',
    ownFileLead:
      'A JSON file as the command line reads it. Nothing is saved while it has an error.',
    chooseFile: 'Campus file',
    adding: 'Reading the file.',
    added: (name: string): string => `${name} is loaded.`,
    notJson: 'This file is not JSON. Choose the campus file itself, not a PDF or a workbook.',
    toFirstPlan: 'Make its first plan',
    importSites: 'Bring your own sites, or a campus bundle',
    importLead:
      'Sites as a CSV file, a workbook (XLSX) or GeoJSON; or a bundle (ZIP), which puts this campus and its plans back as they were saved. First comes a dry run that tells what each row would do; nothing is saved until you say so, and then all of it or nothing.',
    importColumns:
      'To begin, download the sites of this campus in the same form, and change or add rows:',
    exports: { csv: 'CSV', xlsx: 'workbook', geojson: 'GeoJSON' },
    bundle: {
      keep: 'To keep a copy of this campus, or hand it over, download it with all plans made from its present state:',
      download: 'campus bundle',
      plans: 'Plans in the bundle',
      outcomes: {
        new: (name: string): string =>
          `${name}: comes in if it passes the checks of the campus; they are made when you save.`,
        unchanged: (name: string): string => `${name}: is here already and stays as it is.`,
        rejected: (name: string): string => `${name}: is left out.`,
      },
      checking: (name: string): string => `${name}: being checked.`,
      kept: (name: string): string => `${name}: passed every check and is kept.`,
      refused: (name: string): string => `${name}: not kept.`,
      show: 'Show it',
    },
    importFile: 'File with sites, or a bundle',
    dryRunning: 'Reading the file; nothing is saved.',
    dryRunDone: (name: string, counts: string): string => `Dry run of ${name}: ${counts}.`,
    count: {
      new: (n: number): string => `${wholeNumber(n)} new`,
      changed: (n: number): string => `${wholeNumber(n)} changed`,
      unchanged: (n: number): string => `${wholeNumber(n)} unchanged`,
      removed: (n: number): string => `${wholeNumber(n)} removed`,
      rejected: (n: number): string => `${wholeNumber(n)} to mend`,
    },
    canApply: 'All of it can be taken.',
    cannotApply:
      'Nothing can be saved while a row is to be mended. Correct the rows in the file and choose it again.',
    apply: 'Save these sites',
    applyBundle: 'Save what the bundle holds',
    applied: (version: number): string =>
      `Saved as version ${wholeNumber(version)} of the campus. Solve again to plan with it.`,
    appliedBundle: (version: number): string =>
      `The campus is now as in the bundle, at version ${wholeNumber(version)}.`,
    importCaption: 'What the file would do, row by row',
    importPlace: 'Where',
    importRecord: 'Record',
    importOutcome: 'What it does',
    importDetail: 'Details',
    outcomes: {
      new: 'new',
      changed: 'changed',
      unchanged: 'unchanged',
      removed: 'removed',
      rejected: 'to mend',
    },
    importChange: (field: string, from: string, to: string): string =>
      from === '' ? `${field}: ${to}` : `${field}: ${from} becomes ${to}`,
    unchangedRows: (n: number): string => `${counted(n, 'row', 'rows')} unchanged, not listed.`,
    addSite: 'Add a site with six facts',
    addSiteLead:
      'Area, build type, earliest year, cost and gates are enough to plan with; summer hours follow from the build type. Everything else starts as unknown.',
    id: 'Short name, such as TVU-40',
    idForm: 'Letters, digits, hyphens, points and underscores, no spaces, at most 60',
    name: 'Name',
    zone: 'Zone',
    area: 'Area, sq\u00a0ft',
    buildType: 'Build type',
    earliest: 'Earliest year',
    costFactor: 'Cost against the usual (1 is usual)',
    gates: 'Known to pass (the others are unknown)',
    boundary: 'Boundary as GeoJSON (empty: a square of this area stands in)',
    hoursAndCost:
      'Summer hours and cost come from the build type and the planning defaults until you measure better; each is shown with its source on the site’s record.',
    choose: 'Choose one',
    saveSite: 'Add the site',
    siteAdded: (id: string): string => `${id} is added.`,
    toSite: 'Open its record',
    newSite: {
      passNote: 'Stated to pass when the site was added; put the evidence on record.',
      unknownNote: 'Not looked at yet.',
      clearedBy: {
        contamination:
          'A soil result below the screening level, read by environmental health and safety (EHS), who decides.',
        utilities: 'A utility locate, and the campus utility records.',
        construction: 'Facilities planning: no works are expected on the ground.',
        access: 'Grounds: a truck can reach and turn, or the haul is accepted.',
      },
      standIn:
        'The boundary is a square of the stated area that stands in until the site is drawn.',
    },
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
      'Change one of them in the campus file (a lower strength, a later date or a higher limit), load the file, and solve again. Other promises and limits may stand against each other as well; the question below finds them all and prices what would help.',
    conflictUnnamed:
      'No plan can keep every binding promise and limit. Lower the strength of one in the campus file, and solve again.',
  },

  states: {
    loading: 'Loading the plan.',
    loadingView: 'Loading.',
    lostTouch:
      'The server does not answer. What you typed is kept in this browser; the page keeps asking.',
    toSetUp: 'Set up a campus',
    noCampus: 'No campus is loaded',
    noCampusRemedy:
      'Load a campus file, or start the program with its demonstration campus. Then look again.',
    noPlan: 'No plan yet',
    firstPlan: 'The first plan is being made',
    firstPlanRemedy: (campus: string): string =>
      `${campus} has no plan so far. The page shows the first one as soon as the solve ends.`,
    outdated: 'The plan no longer reads',
    outdatedRemedy: (campus: string): string =>
      `An earlier version of the program stored it. ${campus} itself is kept: solve to make a new plan.`,
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
    notLoaded: 'This part of the page could not be loaded',
    notLoadedRemedy:
      'The program may have been renewed since this page was opened. Reload the page; what you typed is kept in this browser.',
    reload: 'Reload the page',
  },
} as const;
