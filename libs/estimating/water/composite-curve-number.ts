export const IMPERVIOUS_CURVE_NUMBER = 98;

/** A part of a watershed. Area in any one unit. */
export interface CoverPart {
  readonly area: number;
  readonly curveNumber: number;
}

/** Area-weighted curve number, not rounded; TR-55 worksheet 2 rounds it to a whole number. */
export function weightedCurveNumber(parts: readonly CoverPart[]): number {
  const area = parts.reduce((sum, part) => sum + part.area, 0);
  return parts.reduce((sum, part) => sum + part.area * part.curveNumber, 0) / area;
}

export interface ImperviousShare {
  readonly perviousCurveNumber: number;
  /** Impervious part of the area, in percent. */
  readonly imperviousPercent: number;
}

/** Impervious area that drains straight into the drainage system: CNp + (P / 100)(98 - CNp). TR-55 figure 2-3. */
export function connectedCurveNumber({
  perviousCurveNumber,
  imperviousPercent,
}: ImperviousShare): number {
  const above = IMPERVIOUS_CURVE_NUMBER - perviousCurveNumber;
  return perviousCurveNumber + (imperviousPercent / 100) * above;
}

/** TR-55 figure 2-4 holds only where less than this percentage is impervious. */
export const UNCONNECTED_BELOW_PERCENT = 30;

/**
 * Part of the impervious area drains over pervious ground: CNp + (P / 100)(98 - CNp)(1 - 0.5 R), R the
 * unconnected part of the impervious area. At 30 % impervious and above the figure does not apply and the
 * connected number is used. Source: TR-55 figure 2-4 (formula from memory; it gives 78.5 where example 2-4
 * reads 78 off the figure).
 */
export function unconnectedCurveNumber(
  share: ImperviousShare,
  unconnectedOfImpervious: number,
): number {
  if (share.imperviousPercent >= UNCONNECTED_BELOW_PERCENT) return connectedCurveNumber(share);
  const added = connectedCurveNumber(share) - share.perviousCurveNumber;
  return share.perviousCurveNumber + added * (1 - 0.5 * unconnectedOfImpervious);
}
