/**
 * One accent on white paper: the brown of contour lines on a survey map. Contrast against white:
 * ink 16.9, gray 7.2, accent 8.4 to 1 (WCAG 2.2 formula, asserted by a test).
 */
export const COLORS = {
  paper: '#ffffff',
  ink: '#1d1d1b',
  gray: '#595752',
  faint: '#b9b5ac',
  accent: '#7a3d10',
  tint: '#f5f2ec',
} as const;

export type ColorName = keyof typeof COLORS;
