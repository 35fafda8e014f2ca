import { chanceOfAtLeast, type Turnout } from './turnout.js';

export interface WorkDayNeed {
  /** Person-hours to be done, at the rates of whoever comes. */
  readonly workHours: number;
  /** Length of a work day. Above 0. */
  readonly dayHours: number;
  /**
   * Part of an hour at the rate that a volunteer's hour is worth. 1 where the rates are by-hand
   * volunteer rates already; the effectiveness share only where they are staff rates.
   */
  readonly effectiveness: number;
}

/** Turnouts (one person at one work day) that the work takes: ceil(hours / (length x effectiveness)). */
export function turnoutsNeeded({ workHours, dayHours, effectiveness }: WorkDayNeed): number {
  return Math.ceil(workHours / (dayHours * effectiveness) - 1e-9);
}

export interface SignUpNeed extends Omit<Turnout, 'signUps'> {
  readonly present: number;
  /** Wanted chance that enough come, above 0 and below 1 (0.8 for P80). */
  readonly confidence: number;
}

/** Fewest sign-ups with which at least `present` come at the confidence; Infinity where no number does. */
export function signUpsNeeded(need: SignUpNeed): number {
  const { present, confidence, showRate, showSpread } = need;
  if (present <= 0) return 0;
  if (showRate <= 0) return Infinity;
  const enough = (signUps: number): boolean =>
    chanceOfAtLeast(present, { signUps, showRate, showSpread }) >= confidence;
  let most = present;
  while (!enough(most)) {
    if (most > 1e5) return Infinity;
    most *= 2;
  }
  let least = present;
  while (least < most) {
    const middle = Math.floor((least + most) / 2);
    if (enough(middle)) most = middle;
    else least = middle + 1;
  }
  return most;
}

export interface DaysNeed extends Turnout {
  readonly turnouts: number;
  readonly confidence: number;
}

/**
 * Work days of equal sign-up with which the turnouts are reached at the confidence. Days are counted
 * as independent, so a weather-bound season needs one in reserve.
 */
export function workDaysNeeded(need: DaysNeed): number {
  for (let days = 1; days <= 200; days += 1) {
    const turnout = {
      ...need,
      signUps: need.signUps * days,
      showSpread: need.showSpread / Math.sqrt(days),
    };
    if (chanceOfAtLeast(need.turnouts, turnout) >= need.confidence) return days;
  }
  return Infinity;
}
