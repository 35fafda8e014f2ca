import type { PlanFile } from '#contracts/plan-file.js';
import { first, giveNothingAway, remove, twoDecimals, type Edit } from './edited-plans.js';

/** The rule and record of the breach that an edit must bring about, and what it says. */
export type Caught = readonly [rule: string, record: string, says: RegExp];
export type Story = readonly [name: string, edit: Edit, caught: Caught];

const site =
  (id: string, change: Partial<PlanFile['plan']['placements'][number]>): Edit =>
  ({ plan }) =>
    Object.assign(
      first(plan.placements, (p) => p.site === id),
      change,
    );

const DECISIONS: readonly Story[] = [
  [
    'a site is moved to a year before its own',
    site('S-2', { year: 'FY2028' }),
    ['eligible-years', 'S-2', /FY28, outside its years FY29 to FY34/],
  ],
  [
    'a site is built twice',
    ({ plan }) => plan.placements.push({ site: 'S-1', buildType: 'edible', year: 'FY2029' }),
    ['built-once', 'S-1', /built 2 times/],
  ],
  [
    'a site becomes what its lead bars',
    ({ plan }) => plan.placements.push({ site: 'S-3', buildType: 'edible', year: 'FY2029' }),
    ['eligible-years', 'S-3', /does not allow the build type edible/],
  ],
  [
    'a site is built where works are to come',
    ({ plan }) => plan.placements.push({ site: 'S-4', buildType: 'pollinator', year: 'FY2029' }),
    ['construction', 'S-4', /Storm drain renewal/],
  ],
  [
    'the site that the committee has fixed is moved',
    site('S-1', { year: 'FY2029' }),
    ['hand-placements', 'S-1', /fixed by hand for FY2028/],
  ],
  [
    'the promised site is left out',
    ({ plan }) => remove(plan.placements, (p) => p.site === 'S-2'),
    ['named-site', 'bank', /"Mill Bank by FY32" is not kept/],
  ],
  [
    'a hire starts before its lead time',
    ({ plan }) => (plan.hires[0]!.year = 'FY2028'),
    ['positions', 'second-gardener', /starts in FY28.*earliest start is FY29/],
  ],
  [
    'a second gardener more is hired than there may be',
    ({ plan }) => (plan.hires[0]!.count = 2),
    ['positions', 'second-gardener', /at most 1/],
  ],
  [
    'more work days are held than the fall takes',
    ({ plan }) => (plan.workDays[0]!.count = 5),
    ['work-days', 'fall-day', /at most 4/],
  ],
];

const HOURS: readonly Story[] = [
  [
    'hours are given by students who are away',
    ({ plan }) => (first(plan.labor, (e) => e.season === 'winter').source = 'students'),
    ['labor', 'winter 2027 (FY28)', /students gives .* and has 0 h/],
  ],
  [
    'more hours are served by the gardener than the season has',
    ({ plan }) => {
      const hidden = first(plan.unserved, (e) => e.taskClass === 'harvest');
      remove(plan.unserved, (e) => e === hidden);
      const { year, season, taskClass } = hidden;
      const served = first(
        plan.labor,
        (e) => e.year === year && e.season === season && e.taskClass === taskClass,
      );
      served.hours = twoDecimals(served.hours + hidden.hours);
    },
    ['labor', 'summer 2028 (opens FY29)', /gardener gives .* and has 150 h/],
  ],
  [
    'unserved hours are hidden',
    ({ plan }) => remove(plan.unserved, (e) => e.season === 'summer'),
    ['labor', 'summer 2028 (opens FY29)', /0 h stated as unserved/],
  ],
  [
    'a hundredth of an hour is dropped',
    ({ plan }) => {
      const entry = first(plan.labor, (e) => e.taskClass === 'plant');
      entry.hours = twoDecimals(entry.hours - 0.01);
    },
    ['labor', 'spring 2028 (FY28)', /plant wants 96 h .* 95\.99 h are served/],
  ],
  [
    'building is left undone',
    ({ plan }) => {
      const entry = first(plan.labor, (e) => e.taskClass === 'plant');
      remove(plan.labor, (e) => e === entry);
      const { year, season, taskClass, hours } = entry;
      plan.unserved.push({ year, season, taskClass, hours });
    },
    ['labor', 'spring 2028 (FY28)', /plant are left unserved/],
  ],
];

const DOLLARS: readonly Story[] = [
  [
    'a dollar moves to a fund that may not pay it',
    ({ plan }) => {
      const build = first(plan.spending, (s) => s.line === 'build' && s.fund === 'capital');
      build.dollars = twoDecimals(build.dollars - 1);
      plan.spending.push({ ...build, fund: 'operating', inflow: 0, dollars: 1 });
    },
    ['funds', 'operating', /may not pay for build of S-1 \(\$1\.00 in FY28\)/],
  ],
  [
    'a cent is missing',
    ({ plan }) => {
      const build = first(plan.spending, (s) => s.line === 'build' && s.site === 'S-2');
      build.dollars = twoDecimals(build.dollars - 0.01);
    },
    ['funds', 'S-2', /building S-2 costs/],
  ],
  [
    'money is spent after it expired',
    ({ plan }) =>
      (first(plan.spending, (s) => s.fund === 'operating' && s.year === 'FY2029').inflow = 0),
    ['funds', 'operating', /spends in FY29 money that may be spent in FY28 to FY28/],
  ],
  [
    'money is spent that never comes',
    ({ plan }) => {
      const gift = first(plan.spending, (s) => s.fund === 'bank-gift');
      const capital = first(plan.spending, (s) => s.site === 'S-2' && s.dollars > 40_000);
      gift.dollars = twoDecimals(gift.dollars + 40_000);
      capital.dollars = twoDecimals(capital.dollars - 40_000);
    },
    ['funds', 'bank-gift', /spends \$49794\.77 of the \$34200\.00 that arrive in FY29/],
  ],
  [
    'the reserve is spent below its floor',
    ({ plan }) => {
      const build = first(
        plan.spending,
        (s) => s.line === 'build' && s.site === 'S-1' && s.dollars > 40_000,
      );
      build.dollars = twoDecimals(build.dollars - 40_000);
      const row = plan.spending.find((s) => s.fund === 'reserve' && s.site === 'S-1');
      if (row) row.dollars = twoDecimals(row.dollars + 40_000);
      else plan.spending.push({ ...build, fund: 'reserve', inflow: 0, dollars: 40_000 });
    },
    ['reserve-floor', 'reserve', /floor|below/],
  ],
];

const COMPOST: readonly Story[] = [
  [
    'a purchase is removed',
    ({ plan }) => remove(plan.compostPurchases, (p) => p.year === 'FY2028'),
    ['compost', 'fall 2027 (FY28)', /does not balance .* \+ 0 bought/],
  ],
  [
    'the yard holds more than it can',
    giveNothingAway,
    ['compost', 'summer 2034 (opens FY35)', /would hold .* it holds 0 to 40 cy/],
  ],
  [
    'more is bought than the season allows',
    ({ plan }) => (plan.compostPurchases[0]!.cubicYards = 101),
    ['compost', 'fall 2027 (FY28)', /101 cy bought.*at most 100 cy/],
  ],
  [
    'food ground is given compost that is not certified',
    ({ plan }) => {
      for (const row of plan.compost) {
        row.certified = { givenAwayCubicYards: 0, stockCubicYards: 0 };
      }
    },
    ['compost', 'summer 2027 (opens FY28)', /certified compost does not balance/],
  ],
  [
    'a season of compost is listed twice',
    ({ plan }) => plan.compost.push({ ...plan.compost[0]! }),
    ['compost', 'summer 2027 (opens FY28)', /more than one/],
  ],
];

const FILE: readonly Story[] = [
  [
    'a tier is better on paper than in the plan',
    ({ tiers }) => (first(tiers, (t) => t.name === 'benefit').value += 1),
    ['tiers', 'benefit', /recomputed it is/],
  ],
  [
    'a tier is left out',
    ({ tiers }) => remove(tiers, (t) => t.name === 'unserved-peak'),
    ['tiers', 'unserved-peak', /where unserved-peak in hours is due/],
  ],
  [
    'a plan that is not proven ends as proven',
    (file) => (file.ending = 'proven'),
    ['tiers', 'ending', /ends as proven, which its tiers do not bear out/],
  ],
  [
    'a tier is called proven against its own bound',
    ({ tiers }) => (first(tiers, (t) => t.name === 'benefit').proven = true),
    ['tiers', 'benefit', /claims more or less proof/],
  ],
  [
    'a gap is made smaller on paper',
    ({ tiers }) => (first(tiers, (t) => t.name === 'benefit').gap = 0),
    ['tiers', 'benefit', /claims more or less proof/],
  ],
  [
    'a tier is invented',
    ({ tiers }) => tiers.push({ ...first(tiers, (t) => t.name === 'benefit'), name: 'beauty' }),
    ['tiers', 'beauty', /no such tier/],
  ],
  [
    'a site is renamed to one that is not there',
    site('S-1', { site: 'S-9' }),
    ['plan-file', 'placements FY2028 S-9', /no site called S-9/],
  ],
  [
    'money comes from a fund that is not there',
    ({ plan }) => (first(plan.spending, (s) => s.fund === 'capital').fund = 'windfall'),
    ['plan-file', 'spending FY2028 S-1 windfall build', /no fund called windfall/],
  ],
  [
    'a work day lies after all planned years',
    ({ plan }) => (plan.workDays.at(-1)!.year = 'FY2050'),
    ['plan-file', 'workDays FY2050 fall-day', /outside what is planned, FY2028 to FY2040/],
  ],
  [
    'half a cent is stated',
    ({ plan }) => (first(plan.spending, (s) => s.line === 'standing').dollars += 0.005),
    ['plan-file', 'spending FY2028 operating standing', /more than two decimals/],
  ],
];

export const DEMO_STORIES: readonly Story[] = [
  [
    'an intern comes before the lead time',
    ({ plan }) => (plan.hires[0]!.year = 'FY2028'),
    ['positions', 'extra-intern', /starts in FY28/],
  ],
  [
    'a fall of work days is removed',
    ({ plan }) =>
      remove(plan.workDays, (w) => w.workDay === 'fall-sunday-shift' && w.year === 'FY2029'),
    ['labor', 'fall 2028 (FY29)', /supervise wants|fall-sunday-shift gives/],
  ],
  [
    'a gift is spent on a site it was not given for',
    ({ plan }) => {
      const build = first(plan.spending, (s) => s.site === 'TVU-03');
      Object.assign(build, { fund: 'reunion-gift-2028', inflow: 0 });
    },
    ['funds', 'reunion-gift-2028', /may not pay for build of TVU-03/],
  ],
  [
    'money that is only hoped for is spent',
    ({ plan }) => {
      const build = first(plan.spending, (s) => s.fund === 'capital-allotment');
      Object.assign(build, { fund: 'later-reunion-gifts', inflow: 0 });
    },
    ['funds', 'later-reunion-gifts', /no money numbered 0 that the plan may spend/],
  ],
];

export const SMALL_STORIES: readonly Story[] = [
  ...DECISIONS,
  ...HOURS,
  ...DOLLARS,
  ...COMPOST,
  ...FILE,
];
