import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Draw, ProgramShape } from './shape.js';

/** Most events of one kind in a year that a campus file may state. */
const MOST_EVENTS = 200;

const DEMO = { sites: 32, years: 35 };
const FACTORS = {
  loose: { money: 1.35, hours: 1.3, compost: 1.5 },
  tight: { money: 1, hours: 1, compost: 1 },
  'knife-edge': { money: 1, hours: 1, compost: 1 },
} as const;
/** What a typical knife-edge site costs in prices of the price year: 8,000 sf at $8. */
const TYPICAL_DOLLARS = 64_000;

type Supply = Pick<
  CampusFile,
  'pools' | 'workDays' | 'positions' | 'funds' | 'standingCosts' | 'compost'
>;

/**
 * Money, hours and compost in the demo's proportions to the sites: what is needed once for each site
 * goes by sites built a year, what is needed ever after by sites. Each is drawn within 5 %.
 */
export function supplyOf(shape: ProgramShape, draw: Draw, demo: CampusFile): Supply {
  const standing = shape.sites / DEMO.sites;
  const yearly = (standing * DEMO.years) / shape.years;
  const { money, hours, compost } = FACTORS[shape.kind];
  const near = (value: number) => value * draw.between(0.95, 1.05);
  return {
    pools: demo.pools.map((pool) => {
      const by = near(standing * hours);
      return {
        ...pool,
        hours: mapped(pool.hours, (h) => Math.max(1, Math.round(h * by))),
      };
    }),
    workDays: demo.workDays.map((day) => ({
      ...day,
      events: Math.min(MOST_EVENTS, Math.max(1, Math.round(day.events * yearly * hours))),
    })),
    positions: demo.positions.map((position) => ({
      ...position,
      most: Math.max(1, Math.round(position.most * standing)),
    })),
    funds: fundsOf(shape, demo, { capital: near(yearly * money), care: near(standing * money) }),
    standingCosts: demo.standingCosts.map((cost) => ({
      ...cost,
      annualDollars: Math.round(cost.annualDollars * standing),
    })),
    compost: compostOf(demo.compost, near(yearly * compost)),
  };
}

/** The demo's general funds and its gift for pollinators; gifts for its own sites are left out. */
function fundsOf(
  shape: ProgramShape,
  demo: CampusFile,
  by: { readonly capital: number; readonly care: number },
): CampusFile['funds'] {
  return demo.funds
    .filter((fund) => fund.counted && fund.restriction.sites === 'any')
    .map((fund) => {
      const factor = fund.kind === 'capital' || fund.kind === 'gift' ? by.capital : by.care;
      const grown = {
        ...fund,
        openingBalanceDollars: Math.round(fund.openingBalanceDollars * factor),
        floorDollars: Math.round(fund.floorDollars * factor),
        inflows: fund.inflows.map((i) => ({
          ...i,
          amountDollars: Math.round(i.amountDollars * factor),
        })),
        ...(fund.yearlyInflows && {
          yearlyInflows: fund.yearlyInflows.map((i) => ({
            ...i,
            amountDollars: Math.round(i.amountDollars * factor),
          })),
        }),
      };
      if (shape.kind !== 'knife-edge' || fund.kind !== 'capital') return grown;
      const whole = Math.max(1, Math.round(shape.sites / shape.years));
      const amountDollars = Math.round(whole * TYPICAL_DOLLARS * 1.01);
      const from = demo.calendar.firstYear;
      return { ...grown, yearlyInflows: [{ from, amountDollars, growthPercent: 4 }] };
    });
}

function compostOf(compost: CampusFile['compost'], by: number): CampusFile['compost'] {
  const grown = (cubicYards: number) => Math.round(cubicYards * by);
  return {
    ...compost,
    madeCubicYards: mapped(compost.madeCubicYards, grown),
    openingStockCubicYards: grown(compost.openingStockCubicYards),
    yardCubicYards: grown(compost.yardCubicYards) + 1,
    mostBoughtCubicYardsPerSeason: grown(compost.mostBoughtCubicYardsPerSeason),
  };
}

function mapped(amounts: Record<string, number>, by: (amount: number) => number) {
  return Object.fromEntries(Object.entries(amounts).map(([key, amount]) => [key, by(amount)]));
}
