import { describe, expect, test } from 'vitest';
import { toReimbursement } from '#contracts/conversion/funds.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { smallCampus, smallFile, type SmallFile } from '../support/small-campus.js';
import { TINY_CALENDAR } from '../support/tiny/tiny-campus.js';

const GRANT = {
  id: 'rain-grant',
  name: 'Rain grant',
  kind: 'grant',
  status: 'pledged',
  counted: true,
  openingBalanceDollars: 0,
  inflows: [{ year: 'FY2028', amountDollars: 20_000 }],
  carryYears: 1,
  feePercent: 0,
  careSharePercent: 0,
  restriction: { lines: ['build'], sites: 'any', buildTypes: 'any' },
  matchRatio: 1,
  reimbursement: { frontedBy: 'capital', lagMonths: 12 },
  floorDollars: 0,
};

function told(grant: Record<string, unknown>, change: (file: SmallFile) => void = () => undefined) {
  const file = smallFile();
  change(file);
  file.funds.push({ ...GRANT, ...grant });
  const load = loadCampusFile(file);
  return (load.ok ? load.warnings : load.problems).map(
    ({ code, record, field, severity }) => `${severity} ${code} ${record} ${field}`,
  );
}

describe('a reimbursable grant in a campus file', () => {
  test('is read with the fiscal years until it pays back', () => {
    expect(told({})).toEqual([]);
    const campus = smallCampus((file) => file.funds.push(GRANT));
    expect(campus.funds.find(({ id }) => id === 'rain-grant')).toMatchObject({
      matchRatio: 1,
      reimbursement: { frontedBy: 'capital', lagYears: 1 },
    });
  });

  test('months count from the end of the preparing season', () => {
    // Prepared September to November; the fiscal year ends with June, seven months later.
    const lags = [0, 7, 8, 19, 20, 120].map(
      (lagMonths) => toReimbursement({ frontedBy: 'a', lagMonths }, TINY_CALENDAR).lagYears,
    );
    expect(lags).toEqual([0, 0, 1, 1, 2, 10]);
    const onCalendarYear = { ...TINY_CALENDAR, fiscalYearStartMonth: 1 };
    expect(toReimbursement({ frontedBy: 'a', lagMonths: 1 }, onCalendarYear).lagYears).toBe(0);
    expect(toReimbursement({ frontedBy: 'a', lagMonths: 2 }, onCalendarYear).lagYears).toBe(1);
  });

  const fronted = (frontedBy: string, lagMonths = 12) => ({
    reimbursement: { frontedBy, lagMonths },
  });
  const at = 'fund rain-grant reimbursement.frontedBy';
  test.each<[string, string[], string]>([
    ['by a fund that is not there', told(fronted('capitol')), `error REFERENCE-MISSING ${at}`],
    ['by itself', told(fronted('rain-grant')), `error GRANT-FRONTED-BY-GRANT ${at}`],
    [
      'by a fund that pays no builds',
      told(fronted('operating')),
      `warning GRANT-FRONT-PAYS-NO-BUILD ${at}`,
    ],
    [
      'for longer than the money lasts',
      told(fronted('capital', 36)),
      `warning GRANT-FRONT-LAPSES ${at}`,
    ],
    [
      'by a fund that is not counted',
      told({}, (file) => Object.assign(file.funds[0]!, { counted: false })),
      `warning GRANT-FRONT-NOT-COUNTED ${at}`,
    ],
  ])('fronted %s', (_, problems, wanted) => {
    expect(problems).toContain(wanted);
  });

  test('pays back whole, and builds alone', () => {
    expect(told({ feePercent: 5, careSharePercent: 10 })).toEqual([
      'error GRANT-NOT-PAID-WHOLE fund rain-grant feePercent',
      'error GRANT-NOT-PAID-WHOLE fund rain-grant careSharePercent',
    ]);
    const care = { lines: ['care'], sites: 'any', buildTypes: 'any' };
    expect(told({ restriction: care })).toContain(
      'error GRANT-PAYS-NO-BUILD fund rain-grant restriction.lines',
    );
  });
});
