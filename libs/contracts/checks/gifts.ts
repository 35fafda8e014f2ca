import { anError, aWarning, type Problem } from '#domain/problem.js';
import type { FileView, FundPart } from './file-view.js';

/** One gift that is counted both as a pledge and as money received. */
export function giftProblems({ funds }: FileView): Problem[] {
  const counted = funds.filter((fund) => fund.counted);
  return counted.flatMap((fund, index) =>
    counted.slice(index + 1).flatMap((other) => pairProblems(fund, other)),
  );
}

function pairProblems(fund: FundPart, other: FundPart): Problem[] {
  if (fund.giftId !== undefined && fund.giftId === other.giftId) return [twice(fund, other)];
  return looksAlike(fund, other) ? [alike(fund, other)] : [];
}

function twice(fund: FundPart, other: FundPart): Problem {
  return anError(
    {
      code: 'GIFT-COUNTED-TWICE',
      record: `fund ${other.id}`,
      field: 'giftId',
      value: other.giftId,
    },
    [
      `The gift ${other.giftId} is counted here as ${other.status} and in fund ${fund.id} as ${fund.status}.`,
      'Count it once: set counted to false on the pledge that has been received.',
    ],
  );
}

/** Same money, same wishes, one promised and one here: most likely one gift. */
function looksAlike(fund: FundPart, other: FundPart): boolean {
  const statuses = [fund.status, other.status].sort().join();
  const twoGifts = fund.giftId !== undefined && other.giftId !== undefined;
  return (
    !twoGifts &&
    statuses === 'pledged,received' &&
    total(fund) === total(other) &&
    JSON.stringify(fund.restriction) === JSON.stringify(other.restriction)
  );
}

function alike(fund: FundPart, other: FundPart): Problem {
  return aWarning(
    {
      code: 'GIFT-COUNTED-TWICE',
      record: `fund ${other.id}`,
      field: 'status',
      value: other.status,
    },
    [
      `Amount and restriction are those of fund ${fund.id}, one pledged and one received.`,
      'If it is one gift, count it once; if it is two, give each a giftId.',
    ],
  );
}

function total({ openingBalanceDollars, inflows, yearlyInflows }: FundPart): number {
  const single = inflows.reduce((sum, { amountDollars }) => sum + amountDollars, 0);
  const series = (yearlyInflows ?? []).reduce((sum, { amountDollars }) => sum + amountDollars, 0);
  return openingBalanceDollars + single + series;
}
