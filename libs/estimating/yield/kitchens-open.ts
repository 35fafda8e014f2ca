/** Pounds that ripen on a day, by ISO date. */
export interface HarvestDay {
  readonly date: string;
  readonly pounds: number;
}

/** Days (included at both ends, ISO dates) on which kitchens serve. */
export interface OpenDays {
  readonly starts: string;
  readonly ends: string;
}

export interface KitchenPounds {
  readonly whileOpen: number;
  readonly whileClosed: number;
}

/** Parts a harvest into what ripens while kitchens serve and what ripens while they are closed. */
export function poundsWhileOpen(
  harvest: readonly HarvestDay[],
  open: readonly OpenDays[],
): KitchenPounds {
  let whileOpen = 0;
  let whileClosed = 0;
  for (const { date, pounds } of harvest) {
    if (open.some(({ starts, ends }) => date >= starts && date <= ends)) whileOpen += pounds;
    else whileClosed += pounds;
  }
  return { whileOpen, whileClosed };
}
