/** Gift packages trace to the ledger of the plan: sums are taken again from its entries. */
import { describe, expect, test } from 'vitest';
import { yearAt } from '#domain/calendar.js';
import { careHoursPer1000SqFt } from '#estimating/care-hours/decay.js';
import { giftPackages } from '#explain/documents/gifts/compute-gifts.js';
import { COMPONENTS } from '#domain/component.js';
import { moneyNeeds } from '#estimating/plan-needs/money-needs.js';
import { demoSource } from '../../support/plan-source.js';

const source = demoSource('strained');
const { campus, plan } = source;
const ground = source.ground();
const placements = plan.decisions.placements.slice(0, 6);

describe.each(placements)('the packages of $site', ({ site, buildType }) => {
  const { packages } = giftPackages(ground, site);
  const whole = packages.find(({ title }) => title.startsWith('The place'))!;
  const exactOf = (start: string) => whole.lines.find(({ label }) => label.includes(start))!.exact;

  test('the build is what the plan spends on building it, from all funds, to the cent', () => {
    const cents = plan.spending
      .filter((entry) => entry.line === 'build' && entry.site === site)
      .reduce((sum, { amount }) => sum + amount, 0);
    expect(Math.round(exactOf('Building') * 100)).toBe(cents);
  });

  test('supplies are the first ten years of the care ledger', () => {
    const bills = moneyNeeds(campus, plan.decisions).care.filter((cost) => cost.site === site);
    const cents = bills.slice(0, 10).reduce((sum, { amount }) => sum + amount, 0);
    expect(Math.round(exactOf('supplies') * 100)).toBe(cents);
  });

  test('no part is rounded by more than $100, and parts add up to the gift', () => {
    for (const { dollars, lines, careDollars } of packages) {
      for (const line of lines) {
        expect(line.dollars).toBeGreaterThanOrEqual(line.exact - 1e-6);
        expect(line.dollars - line.exact).toBeLessThan(100);
      }
      expect(dollars).toBe(lines.reduce((sum, line) => sum + line.dollars, 0));
      const care = lines.filter(({ use }) => use === 'care');
      expect(careDollars).toBe(care.reduce((sum, line) => sum + line.dollars, 0));
    }
  });

  test('a year of care is m(a) of every component at year 20, by the formula of the trade', () => {
    const area = campus.candidates.find(({ id }) => id === site)!.areaSqFt;
    const { shares } = campus.buildTypes.find(({ id }) => id === buildType)!;
    const hours = COMPONENTS.reduce((sum, c) => {
      const care = campus.care[c];
      const crop = care.bearing[Math.min(20, care.bearing.length) - 1] ?? 0;
      const yearly = careHoursPer1000SqFt(care, 20) + care.harvestHours * crop;
      return sum + (area / 1000) * shares[c] * yearly;
    }, 0);
    // $39.10 an hour: the planning default of cost.care-hour.
    const [byHand] = packages[0]!.lines;
    expect(byHand!.exact).toBeCloseTo(hours * 39.1, -1);
  });
});

test('the care ledger that packages quote is what the plan spends on care', () => {
  const { horizonYears } = campus.calendar;
  const last = yearAt(campus.calendar, horizonYears - 1);
  const billed = moneyNeeds(campus, plan.decisions).care.filter((c) => c.yearIndex < horizonYears);
  const spent = plan.spending.filter(({ line, year }) => line === 'care' && year <= last);
  const sum = (entries: readonly { readonly amount: number }[]) =>
    entries.reduce((total, { amount }) => total + amount, 0);
  expect(sum(spent)).toBe(sum(billed));
});

test('an endowment is a year of care over the payout: 4.5 %, the planning default', () => {
  const { packages, payoutShare } = giftPackages(ground, placements[0]!.site);
  const year = packages[0]!.lines.reduce((sum, { exact }) => sum + exact, 0);
  expect(payoutShare).toBe(0.045);
  expect(packages.at(-1)!.lines[0]!.exact).toBeCloseTo(year / 0.045, 6);
});
