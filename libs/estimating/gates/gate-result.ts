import type { GateKind } from '#domain/site.js';

/** A screening test of a site: never scored, so that no score can outweigh it. */
export interface GateResult {
  readonly kind: GateKind;
  readonly status: 'pass' | 'fail' | 'unknown';
  /** What was found, or what is not known. */
  readonly note: string;
  /** What would clear it. Empty only on a pass that needs nothing more. */
  readonly clearedBy: string;
  /** Whom to ask. */
  readonly ask: string;
  /** Date from which a regulator's number is taken; left out where none is used. */
  readonly asOf?: string;
}

/** Part of a result that one kind of gate shares over all its outcomes. */
export type GateFrame = Pick<GateResult, 'kind' | 'ask'> & { readonly asOf?: string };

export function passed(frame: GateFrame, note: string, clearedBy = ''): GateResult {
  return { ...frame, status: 'pass', note, clearedBy };
}

export function failed(frame: GateFrame, note: string, clearedBy: string): GateResult {
  return { ...frame, status: 'fail', note, clearedBy };
}

export function unknown(frame: GateFrame, note: string, clearedBy: string): GateResult {
  return { ...frame, status: 'unknown', note, clearedBy };
}

/** Fail where one failed, else unknown where one is unknown, else pass. Pass for no gates. */
export function overallStatus(gates: readonly Pick<GateResult, 'status'>[]): GateResult['status'] {
  if (gates.some(({ status }) => status === 'fail')) return 'fail';
  return gates.some(({ status }) => status === 'unknown') ? 'unknown' : 'pass';
}
