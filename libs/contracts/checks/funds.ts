import { anError, aWarning, type Problem, type ProblemText } from '#domain/problem.js';
import { toFunds } from '../conversion/funds.js';
import { toFiscalYear, toOptionalYear } from '../conversion/values.js';
import type { FileView, FundPart } from './file-view.js';

/** Dates and balances of funds. */
export function fundProblems(view: FileView): Problem[] {
  return view.funds.flatMap((fund) => [
    ...inflowYearProblems(view, fund),
    ...seriesProblems(fund),
    ...floorProblems(view, fund),
    ...emptyProblems(fund),
    ...hopedForProblems(fund),
  ]);
}

function inflowYearProblems({ time }: FileView, fund: FundPart): Problem[] {
  const series = (fund.yearlyInflows ?? []).map(({ from }) => ({
    field: 'yearlyInflows',
    year: from,
  }));
  const single = fund.inflows.map(({ year }) => ({ field: 'inflows', year }));
  return [...single, ...series].flatMap(({ field, year }) => {
    const at = { field: `${field}[${year}]`, value: year };
    const number = toFiscalYear(year);
    if (time && number < time.firstYear) {
      return [
        fundError(fund, { ...at, code: 'FUND-INFLOW-BEFORE-PLAN' }, [
          `Money is said to arrive in ${year}, before the plan begins in FY${time.firstYear}.`,
          'Put what is left of it into openingBalanceDollars.',
        ]),
      ];
    }
    if (number <= (toOptionalYear(fund.expires) ?? Infinity)) return [];
    return [
      fundError(fund, { ...at, code: 'FUND-INFLOW-AFTER-EXPIRY' }, [
        `Money arrives in ${year}, after the fund expires with ${fund.expires}.`,
        'Correct the year, or the expiry.',
      ]),
    ];
  });
}

function seriesProblems(fund: FundPart): Problem[] {
  return (fund.yearlyInflows ?? [])
    .filter(({ from, to }) => to !== undefined && toFiscalYear(to) < toFiscalYear(from))
    .map(({ from, to }) =>
      fundError(
        fund,
        { code: 'FUND-YEARS-INVERTED', field: `yearlyInflows[${from}].to`, value: to },
        [`The series ends in ${to}, before it begins in ${from}.`, 'Swap or correct the years.'],
      ),
    );
}

/** The floor is on the closing balance, so the first year's money must reach it. */
function floorProblems({ time }: FileView, fund: FundPart): Problem[] {
  if (!time) return [];
  const main = toFunds(fund, time)[0];
  const firstYear = (main?.inflows ?? []).filter(({ year }) => year === time.firstYear);
  const onHand = firstYear.reduce((sum, { amount }) => sum + amount, 0);
  if (onHand >= fund.floorDollars * 100) return [];
  return [
    fundError(
      fund,
      { code: 'FUND-FLOOR-TOO-HIGH', field: 'floorDollars', value: fund.floorDollars },
      [
        `The floor is ${inDollars(fund.floorDollars)}, but the first year has only ${inDollars(onHand / 100)}.`,
        'Lower the floor, or add the money that is there.',
      ],
    ),
  ];
}

function inDollars(amount: number): string {
  return `$${amount.toLocaleString('en-US')}`;
}

function emptyProblems(fund: FundPart): Problem[] {
  const amounts = [...fund.inflows, ...(fund.yearlyInflows ?? [])].map((i) => i.amountDollars);
  if ([fund.openingBalanceDollars, ...amounts].some((amount) => amount > 0)) return [];
  return [
    aWarning({ code: 'FUND-EMPTY', record: `fund ${fund.id}`, field: 'inflows' }, [
      'No money is on hand and none arrives.',
      'Add its inflows, or remove the fund.',
    ]),
  ];
}

function hopedForProblems(fund: FundPart): Problem[] {
  if (fund.status !== 'hoped-for' || !fund.counted) return [];
  return [
    aWarning({ code: 'FUND-HOPED-FOR-COUNTED', record: `fund ${fund.id}`, field: 'counted' }, [
      'The plan counts on money that is only hoped for.',
      'Set counted to false, or say the pledge when it is made.',
    ]),
  ];
}

function fundError(
  fund: FundPart,
  place: { code: string; field: string; value: unknown },
  text: ProblemText,
): Problem {
  return anError({ record: `fund ${fund.id}`, ...place }, text);
}
