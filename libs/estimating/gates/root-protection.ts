import type { Known } from '#units/known.js';
import { failed, type GateFrame, type GateResult, passed, unknown } from './gate-result.js';

export interface RootTest {
  /** Part of the site inside root protection, 0 to 1; unknown where trees were not measured. */
  readonly protectedShare: Known<number>;
  /** Share above which an arborist must agree. */
  readonly limitShare: number;
  readonly arboristAgreed: Known<boolean>;
}

const FRAME: GateFrame = { kind: 'root-protection', ask: 'campus arborist' };
const KEEP = 'No grade change, tilling or aeration inside; nothing against the trunk.';

/** Passes up to the limit, above it only with an arborist's agreement; a refusal fails. */
export function rootProtectionGate({
  protectedShare,
  limitShare,
  arboristAgreed,
}: RootTest): GateResult {
  if (!protectedShare.known) {
    return unknown(FRAME, 'Trees are not measured.', 'Trunk diameters and positions of all trees.');
  }
  const note = `${Math.round(protectedShare.value * 100)}% of the site lies in root protection.`;
  if (protectedShare.value <= limitShare) return passed(FRAME, note, KEEP);
  if (!arboristAgreed.known) return unknown(FRAME, note, 'An arborist’s review on site.');
  return arboristAgreed.value
    ? passed(FRAME, `${note} An arborist agreed.`, KEEP)
    : failed(FRAME, `${note} An arborist refused.`, 'A smaller or shallower design.');
}
