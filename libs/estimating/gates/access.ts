import type { Known } from '#units/known.js';
import { failed, type GateFrame, type GateResult, passed, unknown } from './gate-result.js';

export interface AccessTest {
  /** Narrowest width on the way of a truck to the tipping point; unknown where not measured. */
  readonly truckWidthFt: Known<number>;
  readonly leastWidthFt: number;
  /** Whether a vault, cellar or tunnel under the way bears the truck. */
  readonly bearsTruck: Known<boolean>;
}

const FRAME: GateFrame = { kind: 'access', ask: 'grounds superintendent' };

/** A truck must get through and be borne; else every yard is wheeled in, which the haul distance prices. */
export function accessGate({ truckWidthFt, leastWidthFt, bearsTruck }: AccessTest): GateResult {
  if (bearsTruck.known && !bearsTruck.value) {
    return failed(
      FRAME,
      'The ground over a structure does not bear a truck.',
      'A structural engineer.',
    );
  }
  if (!truckWidthFt.known)
    return unknown(FRAME, 'No tipping point is recorded.', 'A walk with the driver.');
  const note = `The way is ${truckWidthFt.value} ft wide (${leastWidthFt} ft needed).`;
  if (truckWidthFt.value < leastWidthFt) {
    return failed(FRAME, note, 'Another tipping point, and hauling by hand.');
  }
  if (!bearsTruck.known)
    return unknown(FRAME, note, 'Load limits of vaults and cellars on the way.');
  return passed(FRAME, note);
}
