import { failed, type GateFrame, type GateResult, passed, unknown } from './gate-result.js';

/** Works that may take the ground, in fiscal years (both included). */
export interface Works {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly certaintyPercent: number;
  /** Part of the site inside the works, 0 to 1. */
  readonly overlapShare: number;
}

export interface ConstructionTest {
  readonly buildYear: number;
  readonly works: readonly Works[];
  /** Overlap up to this share is let pass. */
  readonly overlapLimit: number;
  /** Certainty from which works bar building outright, in percent. */
  readonly hardAtPercent: number;
}

const FRAME: GateFrame = { kind: 'construction', ask: 'facilities planning' };

/** Fails in the years of sure works, is unknown in those of unsure ones and in the year on either side of them. */
export function constructionGate(test: ConstructionTest): GateResult {
  const near = test.works.filter(
    ({ from, to, overlapShare }) =>
      overlapShare > test.overlapLimit && test.buildYear >= from - 1 && test.buildYear <= to + 1,
  );
  const sure = near.find(
    ({ from, to, certaintyPercent }) =>
      certaintyPercent >= test.hardAtPercent && test.buildYear >= from && test.buildYear <= to,
  );
  if (sure) {
    const note = `${sure.name} takes the site in fiscal years ${sure.from} to ${sure.to}.`;
    return failed(FRAME, note, 'Another year, or a change of the works.');
  }
  const unsure = near[0];
  if (unsure) {
    const note = `${unsure.name} is ${unsure.certaintyPercent}% certain for fiscal years ${unsure.from} to ${unsure.to}.`;
    return unknown(FRAME, note, 'A confirmed schedule and footprint.');
  }
  return passed(FRAME, noWorks(test));
}

function noWorks({ buildYear, works, overlapLimit }: ConstructionTest): string {
  const other = works.filter(({ overlapShare }) => overlapShare > overlapLimit);
  const none = `No works on the site in fiscal year ${buildYear}.`;
  const elsewhen = other.map(({ name, from, to }) => `${name} in fiscal years ${from} to ${to}`);
  return other.length === 0 ? none : `${none} In other years: ${elsewhen.join('; ')}.`;
}

export interface Stranding {
  readonly capital: number;
  readonly plantedYear: number;
  readonly worksFrom: number;
  readonly certaintyPercent: number;
  /** Years of use after which the capital is taken as repaid. */
  readonly paybackYears: number;
}

/**
 * Capital expected to be lost: capital x unused part of the payback life x certainty.
 * Built in year 28 and taken in year 31 with a payback of 7 years, 4/7 is unused.
 */
export function strandedDollars(stranding: Stranding): number {
  const used = Math.max(0, stranding.worksFrom - stranding.plantedYear);
  const unused = Math.max(0, 1 - used / stranding.paybackYears);
  return stranding.capital * unused * (stranding.certaintyPercent / 100);
}
