/**
 * What is wrong with a value that a person or a file gave. `reject`: the value cannot be right and
 * no estimate is made from it; `warn`: it is unusual, the estimate is made and says so.
 */
export interface Finding {
  readonly field: string;
  readonly value: unknown;
  readonly severity: 'warn' | 'reject';
  readonly problem: string;
  readonly remedy: string;
}

/** Bounds of one input. Both pairs are inclusive; `plausible` lies inside `possible`. */
export interface InputRange {
  readonly unit: string;
  readonly plausible: readonly [low: number, high: number];
  readonly possible: readonly [low: number, high: number];
  readonly remedy: string;
}

/** Judges one number against its range: nothing, one warning or one rejection. */
export function rangeFindings(field: string, value: number, range: InputRange): Finding[] {
  if (!Number.isFinite(value)) {
    return [{ field, value, severity: 'reject', problem: 'is not a number', remedy: range.remedy }];
  }
  if (outside(value, range.possible)) {
    return [finding({ field, value, severity: 'reject', bounds: range.possible, range })];
  }
  if (outside(value, range.plausible)) {
    return [finding({ field, value, severity: 'warn', bounds: range.plausible, range })];
  }
  return [];
}

export function rejected(findings: readonly Finding[]): boolean {
  return findings.some((f) => f.severity === 'reject');
}

interface OutOfRange {
  readonly field: string;
  readonly value: number;
  readonly severity: Finding['severity'];
  readonly bounds: readonly [number, number];
  readonly range: InputRange;
}

function finding({ field, value, severity, bounds, range }: OutOfRange): Finding {
  const word = severity === 'reject' ? 'cannot be right' : 'is unusual';
  return {
    field,
    value,
    severity,
    problem: `${value} ${range.unit} ${word}: expected ${bounds[0]} to ${bounds[1]} ${range.unit}`,
    remedy: range.remedy,
  };
}

function outside(value: number, [low, high]: readonly [number, number]): boolean {
  return value < low || value > high;
}
