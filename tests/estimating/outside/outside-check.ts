import { describe, expect, test } from 'vitest';

/** How far the expected value can be trusted. */
export type Ground =
  | 'printed'
  | 'printed, quoted from memory'
  | 'exact identity'
  | 'second library'
  | 'common practice, no published source'
  | 'arithmetic done by hand';

/** A value that was not made by this code, and the code that must reproduce it. */
export interface OutsideCheck {
  readonly formula: string;
  readonly what: string;
  readonly ground: Ground;
  readonly source: string;
  readonly unit: string;
  readonly expected: number;
  /** Absolute. */
  readonly tolerance: number;
  readonly actual: () => number;
}

/** Runs each check as a test that names its source. */
export function runOutsideChecks(checks: readonly OutsideCheck[]): void {
  describe('outside checks', () => {
    for (const check of checks) {
      test(`${check.what} [${check.ground}: ${check.source}]`, () => {
        const off = Math.abs(check.actual() - check.expected);
        expect(off, `got ${check.actual()}, expected ${check.expected}`).toBeLessThanOrEqual(
          check.tolerance,
        );
      });
    }
  });
}
