/** A breakpoint: a measured value and the worth, 0 to 1, that it has. */
export type Breakpoint = readonly [measure: number, worth: number];

/**
 * Worth of a measure by straight lines between breakpoints; the end worths hold outside them.
 * Breakpoints rise in measure. Throws where they do not, where a worth is outside 0 to 1, or where there are none.
 */
export function worthOf(measure: number, breakpoints: readonly Breakpoint[]): number {
  requireSound(breakpoints);
  const above = breakpoints.findIndex(([at]) => at >= measure);
  const right = breakpoints[above === -1 ? breakpoints.length - 1 : above];
  const left = breakpoints[above - 1];
  if (!right) throw new RangeError('a value function needs a breakpoint');
  if (!left || above === -1) return right[1];
  const part = (measure - left[0]) / (right[0] - left[0]);
  return left[1] + part * (right[1] - left[1]);
}

function requireSound(breakpoints: readonly Breakpoint[]): void {
  breakpoints.forEach(([measure, worth], index) => {
    const before = breakpoints[index - 1];
    if (before && before[0] >= measure) throw new RangeError('breakpoints must rise in measure');
    if (!(worth >= 0 && worth <= 1)) throw new RangeError(`a worth lies from 0 to 1, got ${worth}`);
  });
}
