export type SoilGroup = 'A' | 'B' | 'C' | 'D';

type Row = Readonly<Record<SoilGroup, number>>;

function cn(A: number, B: number, C: number, D: number): Row {
  return { A, B, C, D };
}

/**
 * Runoff curve numbers by cover and hydrologic soil group, average condition, initial abstraction 0.2 S.
 * Source: TR-55 tables 2-2a and 2-2c (1986), read in copies. No row exists for sheet-mulched food beds: taking
 * woods-grass, brush or meadow for them is an assumption and is labeled so.
 */
export const CURVE_NUMBERS = {
  'lawn, good (grass above 75 %)': cn(39, 61, 74, 80),
  'lawn, fair (50 to 75 %)': cn(49, 69, 79, 84),
  'lawn, poor (below 50 %)': cn(68, 79, 86, 89),
  'paved, roof': cn(98, 98, 98, 98),
  gravel: cn(76, 85, 89, 91),
  dirt: cn(72, 82, 87, 89),
  'newly graded': cn(77, 86, 91, 94),
  meadow: cn(30, 58, 71, 78),
  'brush, poor': cn(48, 67, 77, 83),
  'brush, fair': cn(35, 56, 70, 77),
  'brush, good': cn(30, 48, 65, 73),
  'woods-grass, poor': cn(57, 73, 82, 86),
  'woods-grass, fair': cn(43, 65, 76, 82),
  'woods-grass, good': cn(32, 58, 72, 79),
  'woods, poor': cn(45, 66, 77, 83),
  'woods, fair': cn(36, 60, 73, 79),
  'woods, good': cn(30, 55, 70, 77),
} as const satisfies Readonly<Record<string, Row>>;

export type Cover = keyof typeof CURVE_NUMBERS;

export function curveNumber(cover: Cover, soil: SoilGroup): number {
  return CURVE_NUMBERS[cover][soil];
}
