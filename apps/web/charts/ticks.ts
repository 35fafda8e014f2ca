/** Round steps (1, 2 or 5 times a power of ten) from 0 to at least `highest`, about `wanted` of them. */
export function roundTicks(highest: number, wanted: number): readonly number[] {
  if (!(highest > 0)) return [0, 1];
  const rough = highest / wanted;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((factor) => factor * power >= rough) ?? 10);
  const count = Math.ceil(highest / step);
  return Array.from({ length: count + 1 }, (_, index) => index * step);
}

/** Every how many columns a label fits, where each column is `columnWidth` and a label `labelWidth`. */
export function labelEvery(columnWidth: number, labelWidth: number): number {
  const least = Math.ceil(labelWidth / columnWidth);
  return [1, 2, 5, 10, 20].find((every) => every >= least) ?? least;
}
