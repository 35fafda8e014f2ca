import type { BuildType } from '#domain/build-type.js';
import { centsToDollars } from '#units/cents.js';
import { type FiscalYear, fiscalYearLabel, yearsLater } from '#units/fiscal-year.js';
import { careTail } from '../cost/care-tail.js';
import { classBand } from '../cost/class-band.js';
import { escalationFactor } from '../cost/escalation.js';
import { coefficientNode, type Overrides } from '../defaults/coefficients.js';
import { explained, type ExplainedNode, given } from '../explained.js';

export interface CostNodes {
  readonly areaSqFt: number;
  readonly type: BuildType;
  readonly costFactor: number;
  readonly growth: number;
  readonly priceYear: FiscalYear;
  readonly yearsFromPriceYear: number;
  readonly overrides: Overrides;
}

/** Low, likely and high cost of a build in dollars of the year of spending; class 5, not for a contract. */
export function capitalNodes(cost: CostNodes): Record<'low' | 'likely' | 'high', ExplainedNode> {
  const { type, areaSqFt, costFactor, growth, priceYear, yearsFromPriceYear } = cost;
  const source = `${type.provenance.basis}: ${type.provenance.source}`;
  const rate = centsToDollars(type.costPerSqFt);
  const factor = escalationFactor(growth, yearsFromPriceYear);
  const unit = dollarsOf(yearsLater(priceYear, yearsFromPriceYear));
  const inputs = [
    given('area', { value: areaSqFt, unit: 'sf' }, 'boundary'),
    given(`unit cost in ${fiscalYearLabel(priceYear)}`, { value: rate, unit: '$/sf' }, source),
    given('factor of this place', { value: costFactor, unit: 'factor' }, 'site record'),
    given('price growth', { value: growth, unit: 'share/yr' }, 'campus record'),
    given('years from the price year', { value: yearsFromPriceYear, unit: 'yr' }, 'plan'),
  ];
  const likely = explained({
    name: 'likely build cost',
    value: areaSqFt * rate * costFactor * factor,
    unit,
    formula: 'area x unit cost x place x (1 + growth)^years',
    inputs,
  });
  const below = coefficientNode('cost.class-5-low', cost.overrides);
  const above = coefficientNode('cost.class-5-high', cost.overrides);
  const band = classBand(likely.value ?? 0, { below: below.value ?? 0, above: above.value ?? 0 });
  return {
    low: bandNode('low build cost', band.low, [likely, below]),
    likely,
    high: bandNode('high build cost', band.high, [likely, above]),
  };
}

function bandNode(
  name: string,
  value: number,
  [likely, range]: readonly [ExplainedNode, ExplainedNode],
): ExplainedNode {
  const formula = 'likely cost x (1 + range of a class 5 estimate)';
  return explained({ name, value, unit: likely.unit, formula, inputs: [likely, range] });
}

/** Unit of money that says of which year it is. */
function dollarsOf(year: FiscalYear): string {
  return `$ of ${fiscalYearLabel(year)}`;
}

export interface TailNodes {
  /** Hours of care and harvest at each age from 1, as nodes. */
  readonly hours: readonly ExplainedNode[];
  readonly suppliesPerYear: number;
  readonly growth: number;
  readonly priceYear: FiscalYear;
  readonly yearsUntilFirst: number;
  readonly overrides: Overrides;
}

/** Ten years (or as many as there are hours) of care: one total in constant and one in nominal dollars. */
export function careTailNodes(tail: TailNodes): Record<'constant' | 'nominal', ExplainedNode> {
  const rate = coefficientNode('cost.care-hour', tail.overrides);
  const years = careTail({
    hoursAtAge: tail.hours.map(({ value }) => value ?? 0),
    dollarsPerHour: rate.value ?? 0,
    suppliesPerYear: tail.suppliesPerYear,
    yearsUntilFirst: tail.yearsUntilFirst,
    growth: tail.growth,
  });
  const supplies = given(
    'supplies and renewals',
    { value: tail.suppliesPerYear, unit: '$/yr' },
    'care coefficients',
  );
  const inputs = [...tail.hours, rate, supplies];
  const node = (name: string, unit: string, dollars: readonly number[]): ExplainedNode =>
    explained({
      name: `${dollars.length} years of care, ${name}`,
      value: dollars.reduce((a, b) => a + b, 0),
      unit,
      formula: 'sum over years of hours x rate + supplies',
      inputs,
    });
  return {
    constant: node(
      'prices held',
      dollarsOf(tail.priceYear),
      years.map((year) => year.constantDollars),
    ),
    nominal: node(
      'prices as they grow',
      '$ of each year',
      years.map((year) => year.nominalDollars),
    ),
  };
}
