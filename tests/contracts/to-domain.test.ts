import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { canonicalJson, digestOf } from '#contracts/canonical.js';
import { toCalendar } from '#contracts/conversion/calendar.js';
import { receiptsOf, toFunds, type FundPart } from '#contracts/conversion/funds.js';
import { toWorkDay } from '#contracts/conversion/labor.js';
import { toDomain } from '#contracts/to-domain.js';
import { loadCampusFile } from '#planning/load-campus-file.js';

const file = JSON.parse(readFileSync('seeds/mistakes/base.json', 'utf8')) as CampusFile;
const calendar = toCalendar(file.calendar);
const campus = toDomain(file);

const day = file.workDays[0]!;
const fund = (edit: Partial<FundPart>): FundPart => ({
  id: 'gift',
  name: 'Gift',
  kind: 'gift',
  status: 'received',
  counted: true,
  openingBalanceDollars: 0,
  inflows: [],
  carryYears: 'unlimited',
  feePercent: 0,
  careSharePercent: 0,
  restriction: { lines: ['build'], sites: 'any', buildTypes: 'any' },
  floorDollars: 0,
  ...edit,
});

describe('A work day', () => {
  // 50 sign-ups x 0.62 x 3 h at volunteer rates = 93 h; 31 people and 10 to a leader are 4 leaders for 3 h.
  test('brings effective hours and takes whole leaders', () => {
    expect(toWorkDay(day)).toMatchObject({
      hoursEach: 9300,
      leaderHoursEach: 1200,
      peoplePresent: 31,
      leaders: 4,
    });
  });

  test('counts a part of a person as one who must be led', () => {
    const crowd = toWorkDay({ ...day, signUps: 49, peoplePerLeader: 31 });
    expect(crowd).toMatchObject({ peoplePresent: 31, leaders: 1 });
    expect(toWorkDay({ ...day, signUps: 51, peoplePerLeader: 31 })).toMatchObject({
      peoplePresent: 32,
      leaders: 2,
    });
  });
});

describe('Money that arrives', () => {
  // Care share after the fee: $120,000 x 0.95 = $114,000, of which 10 % is $11,400.
  test('is split into fee, care share and the rest at receipt', () => {
    const gift = fund({
      inflows: [{ year: 'FY2029', amountDollars: 120_000 }],
      feePercent: 5,
      careSharePercent: 10,
      expires: 'FY2031',
    });
    const [main, care] = toFunds(gift, calendar);
    expect(main?.inflows).toMatchObject([{ year: 2029, amount: 10_260_000, lastYear: 2031 }]);
    expect(care).toMatchObject({ id: 'gift-care' });
    expect(care?.inflows).toMatchObject([
      { year: 2029, amount: 1_140_000, lastYear: 2040, restriction: { lines: ['care'] } },
    ]);
  });

  test('loses nothing but the fee, to the cent', () => {
    fc.assert(
      fc.property(fc.nat(10_000_000), fc.nat(100), fc.nat(100), (amount, fee, share) => {
        const gift = fund({
          inflows: [{ year: 'FY2028', amountDollars: amount / 100 }],
          feePercent: fee,
          careSharePercent: share,
        });
        const kept = toFunds(gift, calendar).flatMap(({ inflows }) => inflows);
        const total = kept.reduce((sum, inflow) => sum + inflow.amount, 0);
        expect(total).toBe(amount - Math.round((amount * fee) / 100));
      }),
      // A fee of 41 % that ends in half a cent, which 0.41 as a double falls just short of.
      { examples: [[9_803_150, 41, 0]] },
    );
  });

  // $75,000 grown by 2 %: 75,000; 76,500; 78,030; 79,590.60; every second year only the odd ones.
  test('grows from its first year and may skip years', () => {
    const yearly = { from: 'FY2028', to: 'FY2031', amountDollars: 75_000, growthPercent: 2 };
    const amounts = (everyYears: number) =>
      receiptsOf(fund({ yearlyInflows: [{ ...yearly, everyYears }] }), calendar).map(
        ({ year, amount }) => [year, amount],
      );
    expect(amounts(1)).toEqual([
      [2028, 7_500_000],
      [2029, 7_650_000],
      [2030, 7_803_000],
      [2031, 7_959_060],
    ]);
    expect(amounts(2)).toEqual([
      [2028, 7_500_000],
      [2030, 7_803_000],
    ]);
  });

  test('goes on through the tail of the plan, lapses or is carried', () => {
    const yearlyInflows = [{ from: 'FY2028', amountDollars: 10 }];
    const lastYears = (carryYears: FundPart['carryYears']) =>
      toFunds(fund({ yearlyInflows, carryYears }), calendar)[0]?.inflows.map((i) => i.lastYear);
    // Eight years from FY28 and five of tail: FY28 to FY40.
    expect(lastYears(0)).toEqual(Array.from({ length: 13 }, (_, i) => 2028 + i));
    expect(lastYears(2)?.slice(0, 2)).toEqual([2030, 2031]);
    expect(lastYears(2)?.at(-1)).toBe(2040);
    expect(new Set(lastYears('unlimited'))).toEqual(new Set([2040]));
  });

  test('on hand as the plan opens is taxed no second time', () => {
    const [main] = toFunds(fund({ openingBalanceDollars: 500, feePercent: 8 }), calendar);
    expect(main?.inflows).toMatchObject([{ year: 2028, amount: 50_000 }]);
  });
});

describe('A campus file in the planner’s own units', () => {
  test('has cents, hundredths and shares', () => {
    expect(campus.buildTypes[1]?.costPerSqFt).toBe(950);
    expect(campus.pools[0]?.hours).toEqual({
      summer: 46800,
      fall: 42100,
      winter: 23400,
      spring: 43700,
    });
    expect(campus.compost).toMatchObject({ openingStock: 6000, pricePerYard: 4200 });
    expect(campus.escalation).toEqual({ construction: 0.04, wages: 0.03, supplies: 0.03 });
    expect(campus.calendar).toMatchObject({ firstYear: 2028, priceYear: 2027 });
  });

  test('keeps an unknown fact apart from zero', () => {
    const facts = campus.candidates.find(({ id }) => id === 'S-4')?.facts;
    expect(facts?.leadMgPerKg).toEqual({ known: false });
    expect(facts?.rootProtectedShare).toEqual({ known: true, value: 0 });
  });

  test('plans with the drawn area until the stated one is confirmed', () => {
    const areaOf = (edit: object): number | undefined => {
      const [first, ...others] = file.candidateSites;
      const load = loadCampusFile({ ...file, candidateSites: [{ ...first, ...edit }, ...others] });
      return load.ok ? load.campus.candidates[0]?.areaSqFt : undefined;
    };
    expect(areaOf({})).toBe(8000);
    expect(areaOf({ areaSqFt: 9000 })).toBeGreaterThan(7900);
    expect(areaOf({ areaSqFt: 9000 })).toBeLessThan(8100);
    expect(areaOf({ areaSqFt: 9000, areaConfirmed: true })).toBe(9000);
  });
});

describe('The canonical text', () => {
  test('does not depend on the order of the keys', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (record) => {
        const backward = Object.fromEntries(Object.entries(record).reverse());
        expect(canonicalJson(backward)).toBe(canonicalJson(record));
        // Negative zero is written as 0, by JSON and here.
        expect(JSON.stringify(JSON.parse(canonicalJson(record)))).toHaveLength(
          JSON.stringify(record).length,
        );
      }),
    );
  });

  // SHA-256 of the two bytes {}, by sha256sum of GNU coreutils.
  test('has the digest that another tool gives', () => {
    expect(digestOf({})).toBe(
      'sha-256:44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a',
    );
  });
});
