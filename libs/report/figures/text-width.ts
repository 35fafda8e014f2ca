/**
 * About how wide a label is, in points, erring on the wide side: 0.56 of the size per character,
 * 0.6 in bold. (The widest digits and common letters of the report's sans face are 0.50 and 0.54
 * of the size; capitals reach 0.65, narrow letters 0.25.) Good for keeping labels apart, not for
 * setting text.
 */
export function roughTextWidth(
  text: string,
  size: number,
  weight: 'regular' | 'bold' = 'regular',
): number {
  return [...text].length * size * (weight === 'bold' ? 0.6 : 0.56);
}
