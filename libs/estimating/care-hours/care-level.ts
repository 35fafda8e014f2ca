/** Agreed intensity of care. */
export type CareLevel = 'A' | 'B' | 'C';

/** What a visitor sees at each level. */
export const CARE_LEVEL_TEXT: Readonly<Record<CareLevel, string>> = {
  A: 'Weeds are removed before they seed, beds are edged, every crop is picked and dead stems are cut.',
  B: 'Weeds show between visits, edges blur by late summer, the main crops are picked.',
  C: 'Weeds seed, paths stay open, only what is unsafe is dealt with; harvest is not promised.',
};

/** Part of full care that each level asks for. */
export type LevelShares = Readonly<Record<CareLevel, number>>;

/** Hours at a level: full hours x the level's share. */
export function hoursAtLevel(fullHours: number, level: CareLevel, shares: LevelShares): number {
  return fullHours * shares[level];
}

/** The level that the hours served amount to: A from its share on, else B from its share on, else C. */
export function levelReached(servedShare: number, shares: LevelShares): CareLevel {
  if (servedShare >= shares.A) return 'A';
  return servedShare >= shares.B ? 'B' : 'C';
}
