import { compostMadeCuYd, foodWasteTons } from '#estimating/compost/food-waste.js';
import { heatTreated } from '#estimating/compost/heat-log.js';
import { sitesTopDressedBesideANewOne, topDressCuYd } from '#estimating/compost/top-dress.js';
import type { OutsideCheck } from './outside-check.js';

const log = (days: number, turned: number): { fahrenheit: number; turned: boolean }[] =>
  Array.from({ length: days }, (_, day) => ({ fahrenheit: 131, turned: day < turned }));
const RULE = { fahrenheit: 131, windrowDays: 15, windrowTurnings: 5, vesselDays: 3 };
const CFR = '40 CFR 503 Appendix B';
const food = (): number =>
  foodWasteTons({ mealsPerDay: 9_000, daysPerYear: 230, poundsPerMeal: 0.25 });
const made = (): number =>
  compostMadeCuYd({
    foodTons: food(),
    capture: 0.6,
    bulkingPerTon: 1,
    massYield: 0.45,
    poundsPerCuYd: 1000,
    shareToProgram: 0.7,
  });

export const compostChecks: readonly OutsideCheck[] = [
  {
    formula: 'compost',
    what: 'food waste of 9,000 meals on 230 days',
    ground: 'arithmetic done by hand',
    source: '9,000 x 230 x 0.25 / 2,000',
    unit: 'short tons',
    expected: 258.75,
    tolerance: 1e-9,
    actual: food,
  },
  {
    formula: 'compost',
    what: 'compost that the program gets of it',
    ground: 'arithmetic done by hand',
    source: '258.75 x 0.6 x 2 x 0.45 x 2 x 0.7',
    unit: 'cu yd',
    expected: 195.6,
    tolerance: 0.05,
    actual: made,
  },
  {
    formula: 'compost',
    what: 'top-dress of 5,000 sf at half an inch',
    ground: 'arithmetic done by hand',
    source: '2,500 / 324',
    unit: 'cu yd',
    expected: 7.716,
    tolerance: 0.0005,
    actual: () => topDressCuYd(5_000, 0.5),
  },
  {
    formula: 'compost',
    what: 'older sites that this dresses beside a new one of 8,500 sf at 4 in',
    ground: 'arithmetic done by hand',
    source: '(195.6 - 104.9) / 7.716',
    unit: 'sites',
    expected: 11.75,
    tolerance: 0.01,
    actual: () =>
      sitesTopDressedBesideANewOne({
        madePerYear: made(),
        newSitePerYear: (8_500 * 4) / 324,
        topDressPerSite: topDressCuYd(5_000, 0.5),
      }),
  },
  {
    formula: 'compost',
    what: 'windrow of 15 days at 131 °F turned 5 times is treated (1), 14 days are not (0)',
    ground: 'printed',
    source: CFR,
    unit: 'yes/no',
    expected: 10,
    tolerance: 0,
    actual: () =>
      10 * Number(heatTreated(log(15, 5), 'windrow', RULE)) +
      Number(heatTreated(log(14, 5), 'windrow', RULE)),
  },
  {
    formula: 'compost',
    what: 'vessel of 3 days at 131 °F is treated (1), 2 days are not (0)',
    ground: 'printed',
    source: CFR,
    unit: 'yes/no',
    expected: 10,
    tolerance: 0,
    actual: () =>
      10 * Number(heatTreated(log(3, 0), 'in-vessel', RULE)) +
      Number(heatTreated(log(2, 0), 'in-vessel', RULE)),
  },
];
