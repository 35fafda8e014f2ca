import type { Campus } from '#domain/campus.js';
import { COMPONENTS, FOOD_COMPONENTS, type Component } from '#domain/component.js';
import type { Site } from '#domain/site.js';
import type { RainTank, Weather } from '#domain/weather.js';
import { coefficientNode, type Overrides } from '../defaults/coefficients.js';
import { explained, type ExplainedNode, given, sumOf } from '../explained.js';
import { irrigationGallons } from '../water/irrigation.js';
import { demandMet, tankBalance, type TankDay } from '../water/tank.js';

export interface WaterNodes {
  readonly campus: Pick<Campus, 'weather'>;
  readonly site: Pick<Site, 'rainTank'>;
  readonly areas: Readonly<Record<Component, number>>;
  readonly overrides: Overrides;
}

type Planted = Exclude<Component, 'path'>;

const PLANTED = COMPONENTS.filter((c): c is Planted => c !== 'path');

const MONTHS =
  'January February March April May June July August September October November December'.split(
    ' ',
  );

/** Water to apply in a year, and what a tank gives of it; unknown where weather is not recorded. */
export function waterNodes(of: WaterNodes): ExplainedNode[] {
  const { weather } = of.campus;
  if (!weather) {
    const missing = given(
      'evapotranspiration and rain',
      { value: null, unit: 'in' },
      'not recorded: give the weather of the campus',
    );
    const need = { name: 'irrigation in a year', value: null, unit: 'gal/yr' };
    return [explained({ ...need, formula: FORMULA, source: SOURCE, inputs: [missing] })];
  }
  const plantings = plantingsOf(of);
  const months = MONTHS.map((name, month) => {
    const parts = plantings.map((planting) => needNode(planting, weather, month));
    return sumOf(`irrigation in ${name}`, 'gal', parts);
  });
  const year = sumOf('irrigation in a year', 'gal', months);
  return [{ ...year, unit: 'gal/yr' }, ...tankNodes(of, weather, plantings)];
}

const FORMULA =
  'max(0, evapotranspiration x plant factor - rain kept) x area x 0.62338 / efficiency';
const SOURCE = 'plant factor method of ANSI/ASABE S623';

/** What is planted, with all of its need for water that is the same in each month. */
interface Planting {
  readonly component: Planted;
  readonly area: ExplainedNode;
  readonly factor: ExplainedNode;
  readonly kept: ExplainedNode;
  readonly efficiency: ExplainedNode;
}

function plantingsOf({ areas, overrides }: WaterNodes): Planting[] {
  const kept = coefficientNode('water.effective-rain', overrides);
  const efficiency = coefficientNode('water.application-efficiency', overrides);
  return PLANTED.filter((c) => areas[c] > 0).map((component) => ({
    component,
    area: given('area', { value: areas[component], unit: 'sf' }, 'site x share'),
    factor: coefficientNode(`water.plant-factor.${component}`, overrides),
    kept,
    efficiency,
  }));
}

function needNode(planting: Planting, weather: Weather, month: number): ExplainedNode {
  const { component, area, factor, kept, efficiency } = planting;
  const { referenceInches = 0, rainInches = 0 } = weather.months[month] ?? {};
  return explained({
    name: `irrigation of ${component} in ${MONTHS[month] ?? ''}`,
    value: irrigationGallons({
      areaSqFt: area.value ?? 0,
      referenceInches,
      plantFactor: factor.value ?? 0,
      effectiveRainInches: rainInches * (kept.value ?? 0),
      efficiency: efficiency.value ?? 1,
    }),
    unit: 'gal',
    formula: FORMULA,
    source: SOURCE,
    inputs: [
      area,
      given('evapotranspiration', { value: referenceInches, unit: 'in' }, weather.source),
      given('rain', { value: rainInches, unit: 'in' }, weather.source),
      factor,
      kept,
      efficiency,
    ],
  });
}

/** Nothing for a site without a tank. Water of a tank goes to what is not eaten. */
function tankNodes(
  of: WaterNodes,
  weather: Weather,
  plantings: readonly Planting[],
): ExplainedNode[] {
  const tank = of.site.rainTank;
  if (!tank) return [];
  const roof = roofNode(of);
  const inputs = tankInputs({ tank, roof }, weather);
  const days = weather.daily && balanceOf(weather, plantings, { tank, roof });
  const node = (name: string, unit: string, value: number | null): ExplainedNode =>
    explained({
      name,
      value,
      unit,
      formula: 'day by day: rain in, then water drawn, then what is above the brim is lost',
      source: 'not for food plants without treatment; a backflow device where it meets mains',
      inputs,
    });
  const total = (part: keyof TankDay) => days?.reduce((sum, day) => sum + day[part], 0) ?? null;
  return [
    node('rain caught by the tank', 'gal', total('captured')),
    node('tank water used on what is not eaten', 'gal', total('supplied')),
    node('share of that need met', 'share', days ? demandMet(days) : null),
    node('overflow of the tank', 'gal', total('overflow')),
  ];
}

function tankInputs({ tank, roof }: Roofed, { daily, source }: Weather): ExplainedNode[] {
  const record = 'site record';
  return [
    given('tank', { value: tank.gallons, unit: 'gal' }, record),
    given('in it at first', { value: tank.openingGallons, unit: 'gal' }, record),
    given('roof', { value: tank.roofSqFt, unit: 'sf' }, record),
    given('first flush turned away', { value: tank.firstFlushInches, unit: 'in' }, record),
    roof,
    given(
      'days of rain on record',
      { value: daily?.inches.length ?? null, unit: 'days' },
      daily ? `${source}, from ${daily.firstDay}` : 'not recorded: give daily rain',
    ),
  ];
}

const MILLISECONDS_PER_DAY = 86_400_000;

interface Roofed {
  readonly tank: RainTank;
  readonly roof: ExplainedNode;
}

function roofNode({ overrides }: WaterNodes): ExplainedNode {
  return coefficientNode('water.roof-runoff', overrides);
}

/** The need of a month is the same on each of its days. */
function balanceOf(
  { months, daily, source }: Weather,
  plantings: readonly Planting[],
  { tank, roof }: Roofed,
): TankDay[] {
  if (!daily) return [];
  const served = plantings.filter(({ component }) => !FOOD_COMPONENTS.has(component));
  const monthly = months.map((_, month) =>
    served.reduce(
      (sum, planting) => sum + (needNode(planting, { months, source }, month).value ?? 0),
      0,
    ),
  );
  const days = daily.inches.map((rainInches, index) => {
    const date = new Date(Date.parse(daily.firstDay) + index * MILLISECONDS_PER_DAY);
    const month = date.getUTCMonth();
    const inMonth = new Date(Date.UTC(date.getUTCFullYear(), month + 1, 0)).getUTCDate();
    return { rainInches, demandGallons: (monthly[month] ?? 0) / inMonth };
  });
  return tankBalance(
    days,
    { gallons: tank.gallons, openingGallons: tank.openingGallons },
    {
      areaSqFt: tank.roofSqFt,
      runoffShare: roof.value ?? 0,
      firstFlushInches: tank.firstFlushInches,
    },
  );
}
