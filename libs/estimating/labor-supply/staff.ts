export interface StaffYear {
  /** Paid hours of a full-time year. */
  readonly paidHours: number;
  /** Shares of paid hours that are lost, each 0 to 1. */
  readonly leave: number;
  readonly meetings: number;
  readonly weather: number;
}

/** Hours on the ground: paid x (1 - leave - meetings and training - weather), never below 0. */
export function productiveHours({ paidHours, leave, meetings, weather }: StaffYear): number {
  return paidHours * Math.max(0, 1 - leave - meetings - weather);
}

/** Hours left for work of one's own after leading others, never below 0. */
export function hoursAfterSupervision(productive: number, supervising: number): number {
  return Math.max(0, productive - supervising);
}
