export interface Sessions {
  readonly sessions: number;
  readonly attendance: number;
  readonly hoursEach: number;
}

/** Contact hours: sessions x people x hours. Passers-by are not contact. */
export function contactHours({ sessions, attendance, hoursEach }: Sessions): number {
  return sessions * attendance * hoursEach;
}
