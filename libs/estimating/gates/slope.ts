import type { Known } from '#units/known.js';
import { failed, type GateFrame, type GateResult, passed, unknown } from './gate-result.js';

export interface SlopeTest {
  readonly slopePercent: Known<number>;
  /** Steepest ground on which loose layers and volunteers are planned. */
  readonly limitPercent: number;
}

const FRAME: GateFrame = { kind: 'slope', ask: 'campus civil engineer' };

/** Loose compost and chips creep and wash on steep ground, and barrows run away. */
export function slopeGate({ slopePercent, limitPercent }: SlopeTest): GateResult {
  if (!slopePercent.known)
    return unknown(FRAME, 'Slope is not measured.', 'A level or survey on site.');
  const note = `Slope ${slopePercent.value}% (limit ${limitPercent}%).`;
  return slopePercent.value > limitPercent
    ? failed(FRAME, note, 'Terraces or erosion control designed by an engineer, or meadow by seed.')
    : passed(FRAME, note);
}
